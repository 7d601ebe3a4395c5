import type { AnyRecord, Kind } from '../codecs/notebook/records.ts';
import { references } from './backend.ts';
import type { Transaction } from './backend.ts';
import { StorageFault } from './fault.ts';
import { sameRecord } from './same-record.ts';
import type { ApplyOptions, Change, LoggedChange, Operation } from './store.ts';

/** Records written between two looks at the clock and the cancel signal. */
export const CHUNK = 64;

/** How far a chunk has come, and whether to go on. */
function report({ progress, signal }: ApplyOptions, done: number, total: number): void {
	if (signal?.aborted) throw new StorageFault('cancelled');
	progress?.(done, total);
}

/** Writes changes and logs each with its way back; null when nothing differed. */
export async function writeChanges(
	tx: Transaction,
	changes: readonly Change[],
	head: Pick<Operation, 'label' | 'at'>,
	options: ApplyOptions
): Promise<{ operation: Operation; logged: LoggedChange[] } | null> {
	let operation: Operation | null = null;
	const logged: LoggedChange[] = [];
	let page = 0;
	for (let from = 0; from < changes.length; from += CHUNK) {
		report(options, from, changes.length);
		const chunk = changes.slice(from, from + CHUNK);
		const before = await getEach(tx, chunk);
		const moved = chunk
			.map((change, i): LoggedChange => ({
				kind: change.kind,
				id: change.id,
				before: before[i] ?? null,
				after: change.record
			}))
			.filter((change) => !sameRecord(change.before, change.after));
		if (moved.length === 0) continue;
		if (!operation) {
			await abandonUndone(tx);
			const rest = { ...head, undone: false, abandoned: false, count: 0 };
			operation = { ...rest, seq: await tx.addOperation(rest) };
		}
		await tx.write(moved.map(({ kind, id, after }) => ({ kind, id, record: after })));
		await tx.addChanges(operation.seq, page++, moved);
		for (const change of moved) logged.push(change);
	}
	report(options, changes.length, changes.length);
	if (!operation) return null;
	await checkReferences(tx, logged);
	operation.count = logged.length;
	await tx.putOperation(operation);
	return { operation, logged };
}

/** Walks an operation back (undo) or forth (redo), if what it left behind still stands. */
export async function replay(
	tx: Transaction,
	operation: Operation,
	way: 'undo' | 'redo'
): Promise<LoggedChange[]> {
	const walked: LoggedChange[] = [];
	for (let page = 0; ; page++) {
		const logged = await tx.changes(operation.seq, page);
		if (!logged) break;
		const turned = logged.map((change): LoggedChange =>
			way === 'redo' ? change : { ...change, before: change.after, after: change.before }
		);
		const present = await getEach(tx, turned);
		for (const [i, change] of turned.entries()) {
			if (!sameRecord(present[i] ?? null, change.before)) throw new StorageFault('changed-since');
		}
		await tx.write(turned.map(({ kind, id, after }) => ({ kind, id, record: after })));
		for (const change of turned) walked.push(change);
	}
	await checkReferences(tx, walked);
	await tx.putOperation({ ...operation, undone: way === 'undo', abandoned: false });
	return walked;
}

/**
 * The operation that undo takes: the newest in force. Redo takes the oldest of those undone after
 * it, but none that was abandoned.
 */
export async function nextToWalk(
	tx: Transaction,
	way: 'undo' | 'redo'
): Promise<Operation | undefined> {
	let undone: Operation | undefined;
	for await (const operation of newestFirst(tx)) {
		if (!operation.undone) return way === 'undo' ? operation : undone;
		if (!operation.abandoned) undone = operation;
	}
	return way === 'undo' ? undefined : undone;
}

/** Once something new is done, what was undone before it cannot be done again by redo. */
async function abandonUndone(tx: Transaction): Promise<void> {
	for await (const operation of newestFirst(tx)) {
		if (!operation.undone) return;
		if (!operation.abandoned) await tx.putOperation({ ...operation, abandoned: true });
	}
}

async function* newestFirst(tx: Transaction): AsyncGenerator<Operation> {
	for (let below: number | undefined; ;) {
		const page: Operation[] = await tx.operations(10, below);
		yield* page;
		if (page.length < 10) return;
		below = page.at(-1)!.seq;
	}
}

/** Reads the records that changes name, in their order. */
async function getEach(
	tx: Transaction,
	changes: readonly { kind: Kind; id: string }[]
): Promise<(AnyRecord | undefined)[]> {
	const result: (AnyRecord | undefined)[] = new Array(changes.length);
	for (const kind of new Set(changes.map((change) => change.kind))) {
		const places = changes.flatMap((change, i) => (change.kind === kind ? i : []));
		const found = await tx.get(
			kind,
			places.map((i) => changes[i]!.id)
		);
		for (const [n, place] of places.entries()) result[place] = found[n];
	}
	return result;
}

/** Whatever was written must find what it belongs to, and nothing may need what was deleted. */
async function checkReferences(tx: Transaction, changes: readonly LoggedChange[]): Promise<void> {
	for (const reference of references) {
		const wanted = new Set<string>();
		for (const { kind, after } of changes) {
			if (kind === reference.kind && after) {
				wanted.add((after as unknown as Record<string, string>)[reference.field]!);
			}
		}
		const ids = [...wanted];
		for (const [i, record] of (await tx.get(reference.target, ids)).entries()) {
			if (!record) {
				throw new StorageFault('missing-reference', `${reference.field} ${ids[i]} is not there`);
			}
		}
		for (const { kind, id, after } of changes) {
			if (kind !== reference.target || after) continue;
			const count = await tx.referring(reference, id);
			if (count > 0) throw new StorageFault('referenced', `${count} ${reference.kind}`);
		}
	}
}
