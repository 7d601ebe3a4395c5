import type { Kind, Records, Trial } from '../codecs/notebook/records.ts';
import type { LoggedChange, Operation } from './store.ts';

/** Which field of which kind names a record of another: what may not be left dangling. */
export const references = [
	{ kind: 'plans', field: 'personId', target: 'people' },
	{ kind: 'sessions', field: 'personId', target: 'people' },
	{ kind: 'sessions', field: 'holdId', target: 'holds' },
	{ kind: 'trials', field: 'sessionId', target: 'sessions' },
	{ kind: 'trials', field: 'gripId', target: 'grips' }
] as const;

export type Reference = (typeof references)[number];

/**
 * What one transaction can do. Between its calls nothing else may be waited for: a browser’s
 * transaction ends when it is left alone.
 */
export interface Transaction {
	get<K extends Kind>(kind: K, ids: readonly string[]): Promise<(Records[K] | undefined)[]>;
	/** Up to `count` records with ids after the given one, by id. */
	page<K extends Kind>(kind: K, after: string | null, count: number): Promise<Records[K][]>;
	/** Up to `count` trials of a session after the given one, by number, then id. */
	trialsOf(sessionId: string, after: Trial | null, count: number): Promise<Trial[]>;
	/** How many records name this one. */
	referring(reference: Reference, id: string): Promise<number>;
	write(changes: readonly { kind: Kind; id: string; record: unknown }[]): Promise<void>;
	/** Up to `count` operations below a number, newest first. */
	operations(count: number, below?: number): Promise<Operation[]>;
	operation(seq: number): Promise<Operation | undefined>;
	addOperation(operation: Omit<Operation, 'seq'>): Promise<number>;
	putOperation(operation: Operation): Promise<void>;
	/** Keeps what an operation changed, page by page. */
	addChanges(seq: number, page: number, changes: readonly LoggedChange[]): Promise<void>;
	/** One page of it; none beyond the last. */
	changes(seq: number, page: number): Promise<LoggedChange[] | undefined>;
	/** Forgets operations up to a number, and their changes. */
	forget(upTo: number): Promise<void>;
}

/** Where the notebook lies: runs work as one transaction, which is kept whole or not at all. */
export interface Backend {
	readonly kept: boolean;
	run<T>(mode: 'readonly' | 'readwrite', work: (tx: Transaction) => Promise<T>): Promise<T>;
	close(): void;
}
