import { seededRandom } from '#core/statistics/random.ts';
import type { StoryRanges } from '#core/trials/story-ranges.ts';
import type { GripLimits } from '#workers/stories-messages.ts';
import { analysedOf, type Analysed, type Typed } from './analysed.ts';
import { capBeyond, hangsToCome, heaviestHeld, storyForNext, suggested } from './candidates.ts';
import { curveLoads, optionsOf } from './options.ts';
import { gripsAt, settledPick, type Pick, type Records } from './pick.ts';
import { timesOf, type TimesFound } from './times.ts';
import { Stopped, type StoriesClient } from './stories-client.ts';

/** What was found for one grip. */
export type GripFound = { of: Analysed; ranges: StoryRanges; limits: GripLimits };
export type Next = ReturnType<typeof suggested>;

/** What a person's trials say of a grip: chosen here, computed in a worker. */
export class LimitsState {
	asked = $state.raw<Partial<Pick>>({});
	typed = $state.raw<Typed>({ bestGuess: null, ownMaximum: null });
	found = $state.raw<GripFound | undefined>();
	/** Undefined while it is not known or may not be said. */
	next = $state.raw<Next | undefined>();
	/** How long holds last; undefined while it is not known, or where the times do not allow an answer. */
	times = $state.raw<TimesFound | undefined>();
	/** This person's other grips on this hold. */
	others = $state.raw<readonly GripFound[]>([]);
	status = $state<'idle' | 'working' | 'done' | 'failed' | 'stopped'>('idle');
	/** Fits done of those that tell the stories apart; undefined while there is nothing to count. */
	progress = $state.raw<{ done: number; of: number } | undefined>();
	failure = $state('');
	/** What was read for what was found, and for what was finished. */
	#foundFrom = $state.raw<readonly unknown[]>([]);
	#doneFrom: readonly unknown[] = [];
	#notebook: Records;
	#client: StoriesClient;
	#make: () => StoriesClient;
	#run = 0;

	constructor(notebook: Records, make: () => StoriesClient) {
		this.#notebook = notebook;
		this.#make = make;
		this.#client = make();
	}

	readonly pick = $derived.by(() => settledPick(this.#notebook, this.asked));
	readonly analysed = $derived.by(
		() => this.pick && analysedOf(this.#notebook, this.pick, this.typed)
	);
	/** Everything that the computation reads. */
	readonly #reads = $derived.by(() => readsOf(this.#notebook, this.pick, this.typed));
	/** True while the pictures belong to an earlier choice or an earlier state of the notebook. */
	readonly stale = $derived(this.found !== undefined && !sameEach(this.#reads, this.#foundFrom));

	choose(patch: Partial<Pick>): void {
		const before = this.pick;
		this.asked = { ...before, ...patch };
		if (this.pick?.gripId !== before?.gripId || this.pick?.personId !== before?.personId)
			this.typed = { bestGuess: null, ownMaximum: null };
	}

	/** Computes everything for what is chosen now, unless that is what was computed last; an earlier
	 * computation is given up. */
	async run(): Promise<void> {
		const analysed = this.analysed;
		const reads = this.#reads;
		if (this.status === 'done' && sameEach(reads, this.#doneFrom)) return;
		const run = ++this.#run;
		this.#client.stop();
		if (!analysed || analysed.trials.length === 0) {
			this.found = this.next = this.times = undefined;
			this.others = [];
			this.#finish(reads);
			return;
		}
		const before = this.found?.of.pick;
		if (before?.gripId !== analysed.pick.gripId || before.personId !== analysed.pick.personId)
			this.found = this.next = this.times = undefined;
		this.status = 'working';
		this.progress = undefined;
		this.others = [];
		try {
			const found = await this.#grip(analysed);
			if (run !== this.#run) return;
			if (this.stale) this.next = this.times = undefined;
			this.found = found;
			this.#foundFrom = reads;
			const next = await this.#nextOf(analysed, found.ranges);
			if (run !== this.#run) return;
			this.next = next;
			const times = await timesOf(this.#client, analysed);
			if (run !== this.#run) return;
			this.times = times;
			for (const { id } of gripsAt(this.#notebook, analysed.pick)) {
				if (id === analysed.pick.gripId) continue;
				const pick = { ...analysed.pick, gripId: id, sessionId: null };
				const other = analysedOf(this.#notebook, pick, { bestGuess: null, ownMaximum: null });
				if (other.trials.length === 0) continue;
				const grip = await this.#grip(other);
				if (run !== this.#run) return;
				this.others = [...this.others, grip];
			}
			this.#finish(reads);
		} catch (error) {
			if (run !== this.#run || error instanceof Stopped) return;
			this.status = 'failed';
			this.failure = error instanceof Error ? error.message : String(error);
		}
	}

	/** A worker of its own for a long simulation, so that neither waits for the other. */
	another(): StoriesClient {
		return this.#make();
	}

	/** Gives the computation up; what was found stays, and `run` begins again. */
	stop(): void {
		this.leave();
		this.status = 'stopped';
	}

	/** Ends the worker when the page is left; what was found stays. */
	leave(): void {
		this.#run++;
		this.#client.stop();
		this.progress = undefined;
		if (this.status === 'working') this.status = 'idle';
	}

	#finish(reads: readonly unknown[]): void {
		this.#doneFrom = reads;
		this.status = 'done';
	}

	async #grip(of: Analysed): Promise<GripFound> {
		const trials = of.trials;
		const options = optionsOf(of);
		const { ranges } = await this.#client.ask(
			{ kind: 'ranges', trials, options },
			{ onprogress: ({ done, of }) => (this.progress = { done, of }) }
		);
		this.progress = undefined;
		const { loads } = curveLoads(of);
		const story = ranges.best.startsWith('falls') || ranges.best.startsWith('rises');
		const grips = [
			{
				grip: of.pick.gripId,
				trials,
				options: story ? { ...options, story: ranges.best } : options
			}
		];
		const { limits } = await this.#client.ask({ kind: 'limits', grips, loads });
		return { of, ranges, limits: limits[0]! };
	}

	async #nextOf(of: Analysed, ranges: StoryRanges): Promise<Next | undefined> {
		const person = this.#notebook.people.find(({ id }) => id === of.pick.personId);
		if (of.ownMaximum === null) return undefined;
		const hangs = hangsToCome(this.#notebook, of);
		const { candidates } = await this.#client.ask({
			kind: 'next',
			trials: of.trials,
			options: {
				...optionsOf(of),
				ownMaximum: of.ownMaximum,
				adult: person?.adult === true,
				story: storyForNext(of, ranges.best),
				heaviestHeld: heaviestHeld(this.#notebook, of)
			},
			candidates: hangs.map(({ load, ropeTerm }) => ({ load, ropeTerm }))
		});
		const cap = capBeyond(this.#notebook, of);
		const rows = candidates.map((row, k) => ({
			...row,
			side: hangs[k]!.side,
			blockedBy: row.blockedBy ?? cap(row.load)
		}));
		const random = seededRandom(of.trials.length + 1);
		return suggested(rows, () => random.uniform());
	}
}

/** What the computation reads: the notebook's lists are replaced, never changed, so the same lists say the same. */
function readsOf(notebook: Records, pick: Pick | undefined, typed: Typed): unknown[] {
	const { people, holds, grips, plans, sessions } = notebook;
	const trials = sessions.map(({ id }) => notebook.trialsOf(id)).filter(({ length }) => length > 0);
	const chosen = [pick?.personId, pick?.holdId, pick?.gripId, pick?.sessionId];
	return [
		...chosen,
		typed.bestGuess,
		typed.ownMaximum,
		people,
		holds,
		grips,
		plans,
		sessions,
		...trials
	];
}

const sameEach = (some: readonly unknown[], others: readonly unknown[]): boolean =>
	some.length === others.length && some.every((one, k) => one === others[k]);
