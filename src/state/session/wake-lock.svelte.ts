/** Keeps the screen awake while a session is on it, where the browser can. */
export class WakeLock {
	held = $state(false);
	#lock: WakeLockSentinel | undefined;
	#wanted = false;

	/** Asks, and asks again whenever the page comes back into view. Returns the way to stop. */
	keep(): () => void {
		this.#wanted = true;
		const again = () => void this.#ask();
		document.addEventListener('visibilitychange', again);
		again();
		return () => {
			this.#wanted = false;
			document.removeEventListener('visibilitychange', again);
			void this.#lock?.release();
		};
	}

	async #ask(): Promise<void> {
		if (!('wakeLock' in navigator) || document.visibilityState !== 'visible' || this.held) return;
		try {
			const lock = await navigator.wakeLock.request('screen');
			this.#lock = lock;
			this.held = true;
			lock.addEventListener('release', () => (this.held = false));
			if (!this.#wanted) void lock.release();
		} catch {
			// Low battery, or the person said no: the session works without.
		}
	}
}
