import { mostVotes, readVotes, writeVotes, type Votes } from '#storage/codecs/votes.ts';
import { forget, keep, readKept } from '#storage/stores/kept-text.ts';

/** What one room answers in one lesson: counted by the coach, kept on this device and nowhere else. */
export class VoteState {
	counts = $state.raw<Readonly<Record<string, number>>>({});
	mark = $state.raw<number | undefined>();
	sketch = $state.raw<readonly number[] | undefined>();
	/** False once something could not be kept: it lasts until the page is closed. */
	kept = $state(true);

	readonly #name: string;

	constructor(lesson: string) {
		this.#name = `votes.${lesson}`;
	}

	/** Reads what this device keeps; called once in the browser. */
	load(): void {
		const votes = readVotes(readKept(this.#name));
		if (!votes) return;
		this.counts = votes.counts;
		this.mark = votes.mark;
		this.sketch = votes.sketch;
	}

	countOf(option: string): number {
		return this.counts[option] ?? 0;
	}

	get total(): number {
		return Object.values(this.counts).reduce((sum, count) => sum + count, 0);
	}

	/** Sets one option's count; anything but a whole number of hands is left aside. */
	setCount(option: string, count: number): void {
		if (!Number.isInteger(count)) return;
		const held = Math.min(mostVotes, Math.max(0, count));
		this.counts = { ...this.counts, [option]: held };
		this.#keep();
	}

	setMark(mark: number): void {
		this.mark = mark;
		this.#keep();
	}

	setSketch(sketch: readonly number[]): void {
		this.sketch = sketch;
		this.#keep();
	}

	/** Starts over with the next room. */
	clear(): void {
		this.counts = {};
		this.mark = undefined;
		this.sketch = undefined;
		forget(this.#name);
	}

	#keep(): void {
		const { counts, mark, sketch } = this;
		const votes: Votes = { counts: { ...counts }, mark, sketch: sketch && [...sketch] };
		this.kept = keep(this.#name, writeVotes(votes));
	}
}
