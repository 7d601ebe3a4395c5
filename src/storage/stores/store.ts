import type { AnyRecord, Kind, Notebook, Records, Trial } from '../codecs/notebook/records.ts';

/** One record to write, or (record null) to delete. */
export type Change = { [K in Kind]: { kind: K; id: string; record: Records[K] | null } }[Kind];

/** A change that was made: one step of the log, with its way back. */
export type LoggedChange = {
	kind: Kind;
	id: string;
	before: AnyRecord | null;
	after: AnyRecord | null;
};

/** Changes made together, all or none; the unit of undoing. */
export type Operation = {
	/** Rises with every operation. */
	seq: number;
	/** What was done, for people: "Deleted trial 7". */
	label: string;
	/** ms since 1970. */
	at: number;
	undone: boolean;
	/** Undone, and something else was done since: redo passes it over. */
	abandoned: boolean;
	/** Records it touched. */
	count: number;
};

/** What listeners are told: which records moved (null: many, read all anew), and from where. */
export type Notice = {
	touched: { kind: Kind; id: string }[] | null;
	from: 'here' | 'elsewhere';
};

export type ApplyOptions = {
	/** Called now and then during long changes. */
	progress?: (done: number, total: number) => void;
	/** Stops the change as long as it is not committed; nothing of it is kept. */
	signal?: AbortSignal;
};

/**
 * The notebook on this device. A promise that resolves means that the change is committed; one that
 * rejects (always with a StorageFault) means that nothing of it was kept.
 */
export interface NotebookStore {
	/** false: this notebook lives in memory only and goes with the page. */
	readonly kept: boolean;
	get<K extends Kind>(kind: K, id: string): Promise<Records[K] | undefined>;
	/** All records of a kind, by id. */
	list<K extends Kind>(kind: K): Promise<Records[K][]>;
	/** Trials of one session, by number. */
	trialsOf(sessionId: string): Promise<Trial[]>;
	/** Everything, as it stood at one moment. */
	notebook(): Promise<Notebook>;
	/** Makes all changes or none. null: nothing differed, so nothing was done. */
	apply(
		label: string,
		changes: readonly Change[],
		options?: ApplyOptions
	): Promise<Operation | null>;
	/** Newest first. */
	operations(limit?: number): Promise<Operation[]>;
	/** Takes back the newest operation not yet undone, or the one named. */
	undo(seq?: number): Promise<Operation>;
	/** Does again what was undone last, or the one named. */
	redo(seq?: number): Promise<Operation>;
	/** Forgets what could be undone, so that deleted records are gone for good. */
	forgetHistory(): Promise<void>;
	/** Told of every committed change, here or in another tab. Returns the way to stop. */
	subscribe(listener: (notice: Notice) => void): () => void;
	close(): void;
}

export const put = <K extends Kind>(kind: K, record: Records[K]): Change =>
	({ kind, id: record.id, record }) as Change;

export const remove = (kind: Kind, id: string): Change => ({ kind, id, record: null }) as Change;
