import type { IDBPTransaction } from 'idb';
import type { Kind, Records, Trial } from '../codecs/notebook/records.ts';
import type { Transaction } from './backend.ts';
import type { LoggedChange, Operation } from './store.ts';

type Open = IDBPTransaction<unknown, string[], 'readonly' | 'readwrite'>;

/** One transaction of the browser’s database, in the notebook’s own terms. */
export function idbTransaction(tx: Open): Transaction {
	// In a read-only transaction the writing methods are missing; the store never asks for them.
	const writing = tx as IDBPTransaction<unknown, string[], 'readwrite'>;
	const write = (name: string) => writing.objectStore(name);
	return {
		get: <K extends Kind>(kind: K, ids: readonly string[]) =>
			Promise.all(ids.map((id) => tx.objectStore(kind).get(id) as Promise<Records[K] | undefined>)),
		page: <K extends Kind>(kind: K, after: string | null, count: number) =>
			tx
				.objectStore(kind)
				.getAll(after === null ? null : IDBKeyRange.lowerBound(after, true), count) as Promise<
				Records[K][]
			>,
		trialsOf(sessionId, after, count) {
			const start = after ? [sessionId, after.order, after.id] : [sessionId];
			// An array sorts after every number and text: the end of the session.
			const range = IDBKeyRange.bound(start, [sessionId, []], after !== null);
			return tx.objectStore('trials').index('number').getAll(range, count) as Promise<Trial[]>;
		},
		referring: ({ kind, field }, id) => tx.objectStore(kind).index(field).count(id),
		async write(changes) {
			await each(changes, ({ kind, id, record }): Promise<unknown> =>
				record === null ? write(kind).delete(id) : write(kind).put(record)
			);
		},
		async operations(count, below) {
			const found: Operation[] = [];
			const range = below === undefined ? null : IDBKeyRange.upperBound(below, true);
			let cursor = await tx.objectStore('operations').openCursor(range, 'prev');
			while (cursor && found.length < count) {
				found.push(cursor.value as Operation);
				cursor = await cursor.continue();
			}
			return found;
		},
		operation: (seq) => tx.objectStore('operations').get(seq) as Promise<Operation | undefined>,
		addOperation: async (operation) => (await write('operations').add(operation)) as number,
		async putOperation(operation) {
			await write('operations').put(operation);
		},
		async addChanges(seq, page, changes) {
			await write('changes').put({ seq, page, changes });
		},
		async changes(seq, page) {
			const found = await tx.objectStore('changes').get([seq, page]);
			return (found as { changes: LoggedChange[] } | undefined)?.changes;
		},
		async forget(upTo) {
			if (upTo < 1) return;
			await write('operations').delete(IDBKeyRange.upperBound(upTo));
			await write('changes').delete(IDBKeyRange.upperBound([upTo, Infinity]));
		}
	};
}

/**
 * Asks once for each item, and waits for all. When the transaction ends in the middle, asking throws;
 * the answers still due are then refused too, and nobody else would hear of it.
 */
async function each<Item, Answer>(
	items: readonly Item[],
	ask: (item: Item, index: number) => Promise<Answer>
): Promise<Answer[]> {
	const answers: Promise<Answer>[] = [];
	for (const [index, item] of items.entries()) {
		const answer = ask(item, index);
		answer.catch(() => {});
		answers.push(answer);
	}
	return Promise.all(answers);
}
