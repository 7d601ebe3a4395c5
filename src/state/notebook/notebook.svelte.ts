import type {
	Grip,
	Hold,
	Kind,
	Person,
	PlanRecord,
	Records,
	Session,
	Trial
} from '#storage/codecs/notebook/records.ts';
import { StorageFault, faultFrom } from '#storage/stores/fault.ts';
import { put } from '#storage/stores/store.ts';
import type {
	ApplyOptions,
	Change,
	NotebookStore,
	Notice,
	Operation
} from '#storage/stores/store.ts';
import type { Opened } from './opened.ts';
import { TrialIndex } from './trial-index.ts';

/** A change the device did not take: kept here, so that it can be tried again or downloaded. */
export type Unsaved = { label: string; changes: readonly Change[] };

/** Faults of the device rather than of what was written: such a change is worth another try. */
const worthAnotherTry = new Set(['full', 'aborted', 'blocked', 'unavailable', 'damaged']);

type Small = Exclude<Kind, 'trials'>;
const small: readonly Small[] = ['people', 'holds', 'grips', 'plans', 'sessions'];
const RECENT = 20;

/** The notebook as the pages see it: what the device holds, kept fresh across tabs. */
export class NotebookState {
	status = $state<'closed' | 'opening' | 'ready' | 'failed'>('closed');
	/** false: in memory only. */
	kept = $state(true);
	/** What went wrong last, in words for people; null once something worked again. */
	fault = $state.raw<StorageFault | null>(null);
	unsaved = $state.raw<readonly Unsaved[]>([]);
	people = $state.raw<readonly Person[]>([]);
	holds = $state.raw<readonly Hold[]>([]);
	grips = $state.raw<readonly Grip[]>([]);
	plans = $state.raw<readonly PlanRecord[]>([]);
	sessions = $state.raw<readonly Session[]>([]);
	/** Newest first. */
	recent = $state.raw<readonly Operation[]>([]);
	#writing = $state(0);
	#version = $state(0);
	#trials = new TrialIndex();
	#store: NotebookStore | undefined;
	#reading: Promise<void> = Promise.resolve();
	#open: () => Promise<Opened>;

	constructor(open: () => Promise<Opened>) {
		this.#open = open;
	}

	readonly writing = $derived(this.#writing > 0);
	readonly empty = $derived(
		this.people.length + this.holds.length + this.grips.length + this.sessions.length === 0
	);
	readonly undoable = $derived(this.recent.find(({ undone }) => !undone));
	readonly redoable = $derived(
		this.recent.findLast(({ undone, abandoned }) => undone && !abandoned)
	);

	/** Amendments follow one another. */
	#amending: Promise<unknown> = Promise.resolve();

	/** Opens the notebook once; later calls do nothing unless the first failed. */
	async open(): Promise<void> {
		if (this.status === 'opening' || this.status === 'ready') return;
		this.status = 'opening';
		try {
			const { store, fault } = await this.#open();
			this.#store = store;
			this.kept = store.kept;
			this.fault = fault;
			store.subscribe((notice) => void this.#refresh(notice));
			await this.#refresh({ touched: null, from: 'here' });
			this.status = 'ready';
		} catch (error) {
			this.fault = faultFrom(error);
			this.status = 'failed';
		}
	}

	/** The store itself, for what reads or writes much at once. */
	get store(): NotebookStore {
		if (!this.#store) throw new StorageFault('aborted', 'the notebook is not open yet');
		return this.#store;
	}

	get trialCount(): number {
		return this.#version >= 0 ? this.#trials.size : 0;
	}

	trialsOf(sessionId: string): readonly Trial[] {
		return this.#version >= 0 ? this.#trials.ofSession(sessionId) : [];
	}

	trial(id: string): Trial | undefined {
		return this.#version >= 0 ? this.#trials.get(id) : undefined;
	}

	/** Makes a change. True: it is on the device (or in memory, where that is all there is). */
	async apply(
		label: string,
		changes: readonly Change[],
		options: ApplyOptions = {}
	): Promise<boolean> {
		// What waits goes first: later changes may lean on it.
		if (this.unsaved.length > 0 && !(await this.retry())) {
			this.unsaved = [...this.unsaved, { label, changes }];
			return false;
		}
		return this.#try({ label, changes }, options);
	}

	/**
	 * Changes some fields of a record as it stands when its turn comes: two fields left quickly one
	 * after the other both count, though the page still showed the older record for the second.
	 */
	amend<K extends Kind>(
		label: string,
		kind: K,
		id: string,
		changes: Partial<Records[K]> | ((now: Records[K]) => Partial<Records[K]>)
	): Promise<boolean> {
		const turn = this.#amending.then(async () => {
			const now = await this.#latest(kind, id);
			if (now === undefined) return false;
			const changed = typeof changes === 'function' ? changes(now) : changes;
			return this.apply(label, [put(kind, { ...now, ...changed })]);
		});
		this.#amending = turn.catch(() => {});
		return turn;
	}

	/** A record with what the device has not taken yet. */
	async #latest<K extends Kind>(kind: K, id: string): Promise<Records[K] | undefined> {
		const waiting = this.unsaved
			.flatMap(({ changes }) => changes)
			.findLast((one) => one.kind === kind && one.id === id);
		if (waiting) return (waiting.record ?? undefined) as Records[K] | undefined;
		return this.store.get(kind, id);
	}

	/** Tries again what the device did not take, in order. */
	async retry(): Promise<boolean> {
		while (this.unsaved.length > 0) {
			const [first, ...rest] = this.unsaved;
			this.unsaved = rest;
			if (!(await this.#try(first!, {}))) {
				// It put itself back at the end; it belongs to the front.
				this.unsaved = [first!, ...rest];
				return false;
			}
		}
		return true;
	}

	discardUnsaved(): void {
		this.unsaved = [];
		this.fault = null;
	}

	undo(seq?: number): Promise<boolean> {
		return this.#guarded(async () => void (await this.store.undo(seq)));
	}

	redo(seq?: number): Promise<boolean> {
		return this.#guarded(async () => void (await this.store.redo(seq)));
	}

	forgetHistory(): Promise<boolean> {
		return this.#guarded(async () => {
			await this.store.forgetHistory();
			this.recent = [];
		});
	}

	clearFault(): void {
		this.fault = null;
	}

	close(): void {
		this.#store?.close();
		this.status = 'closed';
	}

	async #try(step: Unsaved, options: ApplyOptions): Promise<boolean> {
		const done = await this.#guarded(
			async () => void (await this.store.apply(step.label, step.changes, options))
		);
		if (!done && this.fault && worthAnotherTry.has(this.fault.kind)) {
			this.unsaved = [...this.unsaved, step];
		}
		return done;
	}

	async #guarded(work: () => Promise<void>): Promise<boolean> {
		this.#writing++;
		try {
			await work();
			if (this.kept) this.fault = null;
			await this.#reading;
			return true;
		} catch (error) {
			this.fault = faultFrom(error);
			return false;
		} finally {
			this.#writing--;
		}
	}

	/** Reads what moved; one reading after the other, so that an older one never comes last. */
	#refresh(notice: Notice): Promise<void> {
		this.#reading = this.#reading
			.then(() => (notice.touched === null ? this.#readAll() : this.#read(notice.touched)))
			.catch((error) => void (this.fault = faultFrom(error)));
		return this.#reading;
	}

	async #readAll(): Promise<void> {
		for (const kind of small) await this.#readList(kind);
		this.#trials.replaceAll(await this.store.list('trials'));
		this.recent = await this.store.operations(RECENT);
		this.#version++;
	}

	async #read(touched: readonly { kind: Kind; id: string }[]): Promise<void> {
		const ids = touched.filter(({ kind }) => kind === 'trials').map(({ id }) => id);
		const trials = await Promise.all(ids.map((id) => this.store.get('trials', id)));
		for (const kind of small) {
			if (touched.some((one) => one.kind === kind)) await this.#readList(kind);
		}
		this.recent = await this.store.operations(RECENT);
		ids.forEach((id, place) => this.#trials.set(id, trials[place]));
		this.#version++;
	}

	async #readList(kind: Small): Promise<void> {
		(this[kind] as readonly unknown[]) = await this.store.list(kind);
	}
}
