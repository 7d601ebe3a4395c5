import type { Memory } from './remembered.ts';

/** Seconds before the hang begins. */
export const COUNT_IN = 5;

/** The hang clock: counts in, then runs until it is stopped. It keeps moments, not a running sum, so
 * a locked phone or a reload costs it nothing. */
export class HangClock {
	#run = $state.raw<{ start: number; stop: number | null } | null>(null);
	#now: () => number;
	#memory: Memory;

	constructor(now: () => number, memory: Memory) {
		this.#now = now;
		this.#memory = memory;
	}

	/** Takes up a run that a reload interrupted. */
	load(): void {
		const run = this.#memory.get('clock');
		this.#run = run && Number.isFinite(run.start) ? run : null;
	}

	start(countIn: number = COUNT_IN): void {
		this.#set({ start: this.#now() + countIn * 1000, stop: null });
	}

	stop(): void {
		if (!this.#run) return;
		const now = this.#now();
		// Stopped while counting in: there was no hang.
		this.#set(now < this.#run.start ? null : { ...this.#run, stop: this.#run.stop ?? now });
	}

	clear(): void {
		this.#set(null);
	}

	get running(): boolean {
		return this.#run !== null && this.#run.stop === null;
	}

	get idle(): boolean {
		return this.#run === null;
	}

	/** Seconds since the hang began, negative while counting in; null: not started. */
	secondsAt(now: number): number | null {
		return this.#run ? ((this.#run.stop ?? now) - this.#run.start) / 1000 : null;
	}

	/**
	 * The time to write beside an outcome: the clock's, to a tenth. A hang held beyond its target was
	 * held for the target; how much longer it could have lasted is not known.
	 */
	secondsFor(held: boolean, target: number | null): number | null {
		const seconds = this.secondsAt(this.#now());
		if (seconds === null || seconds < 0) return held ? target : null;
		const rounded = Math.round(seconds * 10) / 10;
		return held && target !== null ? Math.min(rounded, target) : rounded;
	}

	#set(run: { start: number; stop: number | null } | null): void {
		this.#run = run;
		this.#memory.set('clock', run);
	}
}
