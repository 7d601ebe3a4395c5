/** Whether the site is kept on this device, and whether a newer one waits. */
class OfflineState {
	ready = $state(false);
	/** A newer version is fetched and waits; it is taken up only when the person asks. */
	updateWaits = $state(false);

	#registration: ServiceWorkerRegistration | undefined;

	/** Starts watching; called once in the browser. */
	async watch(): Promise<void> {
		if (!('serviceWorker' in navigator)) return;
		const registration = await navigator.serviceWorker.ready;
		this.#registration = registration;
		this.ready = true;
		this.updateWaits = registration.waiting !== null;
		registration.addEventListener('updatefound', () => {
			const coming = registration.installing;
			coming?.addEventListener('statechange', () => {
				if (coming.state === 'installed') this.updateWaits = registration.waiting !== null;
			});
		});
	}

	/** Takes up the newer version and reloads. */
	update(): void {
		const waiting = this.#registration?.waiting;
		if (!waiting) return;
		navigator.serviceWorker.addEventListener('controllerchange', () => location.reload(), {
			once: true
		});
		waiting.postMessage('update-now');
	}
}

export const offline = new OfflineState();
