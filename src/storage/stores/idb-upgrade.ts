import type { IDBPDatabase, IDBPTransaction } from 'idb';
import { kinds } from '../codecs/notebook/records.ts';
import type { Kind } from '../codecs/notebook/records.ts';
import { migrateRecord } from '../codecs/notebook/migrate.ts';
import type { Migration, OldRecord } from '../codecs/notebook/migrate.ts';
import { references } from './backend.ts';
import type { LoggedChange } from './store.ts';

type Upgrade = IDBPTransaction<unknown, string[], 'versionchange'>;

/**
 * Lays out a new database, or brings every record of an older one up to the present version: the
 * log of changes too, or undo would bring back records of the old shape.
 */
export async function upgradeStores(
	database: IDBPDatabase,
	tx: Upgrade,
	from: number,
	to: number,
	steps: readonly Migration[]
): Promise<void> {
	if (from === 0) {
		for (const kind of kinds) database.createObjectStore(kind, { keyPath: 'id' });
		for (const { kind, field } of references) {
			tx.objectStore(kind).createIndex(field, field);
		}
		tx.objectStore('trials').createIndex('number', ['sessionId', 'order', 'id']);
		database.createObjectStore('operations', { keyPath: 'seq', autoIncrement: true });
		database.createObjectStore('changes', { keyPath: ['seq', 'page'] });
		return;
	}
	const migrated = (kind: Kind, record: unknown) =>
		record === null ? null : migrateRecord(kind, record as OldRecord, from, to, steps);
	for (const kind of kinds) {
		for await (const cursor of tx.objectStore(kind)) {
			await cursor.update(migrated(kind, cursor.value));
		}
	}
	for await (const cursor of tx.objectStore('changes')) {
		const page = cursor.value as { changes: LoggedChange[] };
		await cursor.update({
			...page,
			changes: page.changes.map((change) => ({
				...change,
				before: migrated(change.kind, change.before),
				after: migrated(change.kind, change.after)
			}))
		});
	}
}
