import { keepTypedTexts, takeTypedTexts, type TypedText } from '#storage/stores/typed-texts.ts';
import { retype, watchTyping } from './typed-fields.ts';

/** Least time between two questions whether there is a newer site, ms. */
const hour = 3_600_000;
/** Time that pages take at most to write their address or their store after a change, ms. */
const settling = 600;

/** Whether the site is kept on this device, and whether a newer one waits. */
class OfflineState {
	/** The whole site is on this device. */
	ready = $state(false);
	/** This browser, or this way of serving the site, cannot keep it. */
	impossible = $state(false);
	/** A newer version is fetched and waits; it is taken up only when the person asks. */
	updateWaits = $state(false);
	/** Texts typed before a reload whose field is not on the page any more. */
	homeless = $state.raw<readonly TypedText[]>([]);

	#registration: ServiceWorkerRegistration | undefined;
	#typed: () => readonly TypedText[] = () => [];
	#asked = Date.now();

	/** Starts watching; called once in the browser. */
	async watch(): Promise<void> {
		this.#typed = watchTyping(document);
		if (!('serviceWorker' in navigator)) {
			this.impossible = true;
			return;
		}
		const registration = await navigator.serviceWorker.ready;
		this.#registration = registration;
		this.ready = true;
		this.updateWaits = registration.waiting !== null;
		// One may be on its way already when this page starts to listen.
		this.#follow(registration.installing);
		registration.addEventListener('updatefound', () => this.#follow(registration.installing));
		// Another tab may have taken the newer version up: this page goes on as it is.
		navigator.serviceWorker.addEventListener('controllerchange', () => {
			this.updateWaits = registration.waiting !== null;
		});
		document.addEventListener('visibilitychange', () => void this.#ask());
	}

	/** Types again what was typed before a reload; called when the page stands. */
	bringBack(): void {
		this.homeless = retype(takeTypedTexts(), document);
	}

	/** Takes up the newer version and reloads; what was typed comes along. */
	update(): void {
		const waiting = this.#registration?.waiting;
		if (!waiting) return;
		navigator.serviceWorker.addEventListener(
			'controllerchange',
			() => setTimeout(() => this.#reload(), settling),
			{
				once: true
			}
		);
		waiting.postMessage('update-now');
	}

	#reload(): void {
		if (keepTypedTexts(this.#typed())) location.reload();
		// Nothing could be kept: the newer version comes with the next visit instead.
		else this.updateWaits = false;
	}

	#follow(coming: ServiceWorker | null): void {
		coming?.addEventListener('statechange', () => {
			if (coming.state === 'installed') {
				this.updateWaits = this.#registration?.waiting != null;
			}
		});
	}

	/** A page that stays open for days asks now and then, when someone looks at it again. */
	async #ask(): Promise<void> {
		if (document.visibilityState !== 'visible' || Date.now() - this.#asked < hour) return;
		this.#asked = Date.now();
		// Without a network there is no answer, and none is needed.
		await this.#registration?.update().catch(() => undefined);
	}
}

export const offline = new OfflineState();
