import type { PlanRecord, Session, Trial } from '#storage/codecs/notebook/records.ts';
import { newTrial } from '#storage/codecs/notebook/new-records.ts';
import { put, remove } from '#storage/stores/store.ts';
import type { NotebookState } from '../notebook/notebook.svelte.ts';
import { HangClock } from './hang-clock.svelte.ts';
import { nextTrial } from './next-trial.ts';
import type { NextTrial } from './next-trial.ts';
import { likelyReach, loadFrom, partsFor } from './reach.ts';
import type { Reach } from './reach.ts';
import type { Memory, Remembered } from './remembered.ts';
import { linesToCome, orderText, plannedLines } from './sheet-lines.ts';

const anyWish: Remembered['wish'] = { kind: 'test', gripId: null, from: null };

type Deps = { now: () => number; newId: () => string; memory: Memory };

/** What stands on the line that is not logged yet. */
export type Line = Reach &
	Pick<Trial, 'order' | 'kind' | 'gripId' | 'ropeDegrees' | 'ropeSide' | 'brushed' | 'note'>;

/** A second tap this soon after a logged trial is the same finger, not the next hang. */
export const TWIN_TAP_MS = 400;

/** Logging one session: the next line, what is changed on it, and what was logged last. */
export class SessionLog {
	readonly clock: HangClock;
	sessionId = $state<string | null>(null);
	/** The trial logged last here, whose details are asked for. */
	lastLogged = $state<string | null>(null);
	/** Where no plan says it: which kind and grip come next. */
	wish = $state.raw<Remembered['wish']>(anyWish);
	#changes = $state.raw<{ order: number; changes: Partial<Trial> } | null>(null);
	#busy = false;
	#loggedAt = -Infinity;

	readonly #notebook: NotebookState;
	readonly #deps: Deps;

	constructor(notebook: NotebookState, deps: Deps) {
		this.#notebook = notebook;
		this.#deps = deps;
		this.clock = new HangClock(deps.now, deps.memory);
	}

	/** Takes up what the device remembers; call when the notebook is open. */
	load(): void {
		const { memory } = this.#deps;
		const sessions = this.#notebook.sessions;
		const remembered = memory.get('session');
		const latest = [...sessions].sort((one, other) => (one.day < other.day ? 1 : -1))[0];
		this.sessionId = sessions.find(({ id }) => id === remembered)?.id ?? latest?.id ?? null;
		const line = memory.get('line');
		this.#changes = line && line.session === this.sessionId ? line : null;
		this.wish = memory.get('wish') ?? anyWish;
		this.clock.load();
	}

	choose(sessionId: string): void {
		this.sessionId = sessionId;
		this.#deps.memory.set('session', sessionId);
		this.lastLogged = null;
		this.setWish(anyWish);
		this.#setChanges(null);
		this.clock.clear();
	}

	readonly session: Session | undefined = $derived.by(() =>
		this.#notebook.sessions.find(({ id }) => id === this.sessionId)
	);
	readonly person = $derived.by(() =>
		this.#notebook.people.find(({ id }) => id === this.session?.personId)
	);
	readonly hold = $derived.by(() =>
		this.#notebook.holds.find(({ id }) => id === this.session?.holdId)
	);
	readonly plan: PlanRecord | undefined = $derived.by(() =>
		this.#notebook.plans.find(({ id }) => id === this.session?.planId)
	);
	readonly trials: readonly Trial[] = $derived.by(() =>
		this.session ? this.#notebook.trialsOf(this.session.id) : []
	);
	readonly bodyKg = $derived(this.session?.bodyMassKg ?? this.person?.bodyMassKg ?? null);
	readonly warmUps = $derived(this.trials.filter(({ kind }) => kind === 'warm-up'));
	readonly next: NextTrial | null = $derived.by(() =>
		this.session ? nextTrial(this.#notebook, this.session, this.person, this.#wished) : null
	);
	/** Planned lines after the next one. */
	readonly toCome = $derived(
		this.plan ? linesToCome(plannedLines(this.plan.plan), this.trials, this.wish.from).slice(1) : []
	);
	readonly lastTrial = $derived(this.trials.at(-1));
	/** When the last hang was logged, whatever its number. */
	readonly restFrom = $derived(
		this.trials.reduce<number | null>(
			(latest, { loggedAt }) =>
				loggedAt !== null && loggedAt > (latest ?? -Infinity) ? loggedAt : latest,
			null
		)
	);

	/** Warm-ups come before the first trial, and not after it. */
	readonly started = $derived(this.trials.at(-1)?.kind !== 'warm-up' && this.trials.length > 0);

	get #wished(): Remembered['wish'] {
		const { kind, gripId, from } = this.wish;
		return {
			from,
			kind: this.started && kind === 'warm-up' ? 'test' : kind,
			gripId: gripId ?? this.lastTrial?.gripId ?? this.#notebook.grips[0]?.id ?? null
		};
	}

	/** Says which kind and grip come next where no plan does. */
	setWish(wish: Partial<Remembered['wish']>): void {
		this.wish = { ...this.wish, ...wish };
		this.#deps.memory.set('wish', this.wish);
	}

	/** The line as it would be logged now. */
	readonly line: Line | null = $derived.by(() => {
		const next = this.next;
		if (!next) return null;
		const before = this.lastTrial;
		// Without a plan the load that hung last is the one on the scale now.
		const asked = next.loadKg ?? (next.planned || next.ended ? null : (before?.loadKg ?? null));
		const reached = likelyReach(asked, this.bodyKg, before?.reached);
		const ropeSide = next.ropeSide ?? before?.ropeSide ?? null;
		const alike = this.trials.findLast(
			(trial) => trial.ropeSide === ropeSide && trial.loadKg === asked
		);
		return {
			...partsFor(asked, reached, this.bodyKg),
			order: next.order,
			kind: next.kind,
			gripId: next.gripId,
			ropeDegrees: ropeSide === 'plumb' ? null : (alike?.ropeDegrees ?? null),
			ropeSide,
			brushed: before?.brushed ?? null,
			note: '',
			...(this.#changes?.order === next.order ? this.#changes.changes : {})
		};
	});

	/** Changes the line; what follows from a part follows at once. */
	change(changes: Partial<Line>): void {
		const line = this.line;
		if (!line) return;
		const all = { ...line, ...changes };
		const follow: Partial<Line> =
			'loadKg' in changes || 'reached' in changes
				? all.reached === 'both'
					? {}
					: partsFor(all.loadKg, all.reached, this.bodyKg)
				: 'addedKg' in changes || 'counterweightKg' in changes
					? { loadKg: loadFrom(all, this.bodyKg) ?? all.loadKg }
					: {};
		const before = this.#changes?.order === line.order ? this.#changes.changes : {};
		const merged = { ...before, ...changes, ...follow };
		this.#setChanges({ order: line.order, changes: merged as Partial<Trial> });
	}

	/** Logs the line with an outcome. False: there is nothing to log yet, or the device refused. */
	async log(outcome: Trial['outcome']): Promise<boolean> {
		const { line, session } = this;
		const now = this.#deps.now();
		if (!line || !session || line.loadKg === null || this.#busy) return false;
		if (Math.abs(now - this.#loggedAt) < TWIN_TAP_MS) return false;
		this.#busy = true;
		const trial = newTrial(this.#deps.newId, {
			...line,
			loadKg: line.loadKg,
			sessionId: session.id,
			outcome,
			seconds: this.clock.secondsFor(outcome === 'held', session.targetSeconds),
			loggedAt: Math.round(now)
		});
		this.#loggedAt = now;
		try {
			const saved = await this.#notebook.apply(
				`${this.nameOf(trial)}: ${outcome === 'unknown' ? 'cause not seen' : outcome}`,
				[put('trials', trial)]
			);
			// What the device refused waits among the unsaved; the line is done all the same.
			if (saved || this.#notebook.unsaved.length > 0) {
				this.clock.clear();
				this.#setChanges(null);
				this.lastLogged = saved ? trial.id : null;
			}
			return saved;
		} finally {
			this.#busy = false;
		}
	}

	/** Corrects a logged trial in place. */
	correct(trial: Trial, changes: Partial<Trial>): Promise<boolean> {
		const label = `Corrected ${this.nameOf(trial).toLowerCase()}`;
		return this.#notebook.amend(label, 'trials', trial.id, changes);
	}

	async delete(trial: Trial): Promise<boolean> {
		const name = this.nameOf(trial).toLowerCase();
		return this.#notebook.apply(`Deleted ${name}`, [remove('trials', trial.id)]);
	}

	/** How a trial's number is written: w1, w2 … for warm-ups, then 1, 2 … */
	numberOf(trial: Pick<Trial, 'order' | 'kind'> & { id?: string }): string {
		const place = this.warmUps.findIndex(({ id }) => id === trial.id);
		return orderText(trial.order, trial.kind, (place < 0 ? this.warmUps.length : place) + 1);
	}

	nameOf(trial: Pick<Trial, 'order' | 'kind'> & { id?: string }): string {
		const number = this.numberOf(trial);
		return trial.kind === 'warm-up' ? `Warm-up ${number.replace(/^w/, '')}` : `Trial ${number}`;
	}

	#setChanges(changes: { order: number; changes: Partial<Trial> } | null): void {
		this.#changes = changes;
		this.#deps.memory.set(
			'line',
			changes && this.sessionId ? { session: this.sessionId, ...changes } : null
		);
	}
}
