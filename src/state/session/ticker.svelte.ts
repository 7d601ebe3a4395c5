/** The present moment, ms since 1970, for what is shown of it; stands still while nobody looks. */
export class Ticker {
	now = $state(Date.now());
	#timer: ReturnType<typeof setInterval> | undefined;

	/** Takes the moment at once: what was just begun must not be shown a tick too early. */
	look(): void {
		this.now = Date.now();
	}

	/** Runs while a component lives; returns the way to stop. */
	run(everyMs = 200): () => void {
		this.look();
		this.#timer = setInterval(() => this.look(), everyMs);
		// A phone that wakes must not show the moment at which it fell asleep.
		const wake = () => this.look();
		document.addEventListener('visibilitychange', wake);
		return () => {
			clearInterval(this.#timer);
			document.removeEventListener('visibilitychange', wake);
		};
	}
}
