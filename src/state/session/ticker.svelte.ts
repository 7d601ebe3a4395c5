/** The present moment, ms since 1970, for what is shown of it; stands still while nobody looks. */
export class Ticker {
	now = $state(Date.now());
	#timer: ReturnType<typeof setInterval> | undefined;

	/** Runs while a component lives; returns the way to stop. */
	run(everyMs = 200): () => void {
		this.now = Date.now();
		this.#timer = setInterval(() => (this.now = Date.now()), everyMs);
		// A phone that wakes must not show the moment at which it fell asleep.
		const wake = () => (this.now = Date.now());
		document.addEventListener('visibilitychange', wake);
		return () => {
			clearInterval(this.#timer);
			document.removeEventListener('visibilitychange', wake);
		};
	}
}
