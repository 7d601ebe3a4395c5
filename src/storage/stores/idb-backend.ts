import { openDB } from 'idb';
import type { IDBPDatabase, IDBPTransaction } from 'idb';
import { SCHEMA_VERSION, kinds } from '../codecs/notebook/records.ts';
import { migrations } from '../codecs/notebook/migrate.ts';
import type { Migration } from '../codecs/notebook/migrate.ts';
import type { Backend } from './backend.ts';
import { StorageFault, faultFrom } from './fault.ts';
import { idbTransaction } from './idb-transaction.ts';
import { upgradeStores } from './idb-upgrade.ts';

const stores = [...kinds, 'operations', 'changes'] as const;

export type IdbOptions = {
	name: string;
	/** Version and steps are the records’ own; tests give others. */
	version?: number;
	steps?: readonly Migration[];
};

/** The notebook in the browser’s database, on this device. Opens it; rejects with a StorageFault. */
export async function idbBackend(options: IdbOptions): Promise<Backend> {
	let ended: StorageFault | null = null;
	let connection: Promise<IDBPDatabase> | null = null;

	function connect(): Promise<IDBPDatabase> {
		connection ??= openAt(options, {
			outdated: () => (ended = new StorageFault('newer-schema')),
			// The browser dropped the connection; the next call opens another.
			lost: () => (connection = null)
		}).catch((error: unknown) => {
			connection = null;
			throw error;
		});
		return connection;
	}

	if (typeof indexedDB === 'undefined') throw new StorageFault('unavailable');
	await connect();

	return {
		kept: true,
		async run(mode, work) {
			if (ended) throw ended;
			const database = await connect();
			// Strict: "committed" then means written to disk, not only handed to the system.
			let tx;
			try {
				tx = database.transaction(stores, mode, { durability: 'strict' });
			} catch (error) {
				throw ended ?? faultFrom(error);
			}
			const done = tx.done.then(
				() => null,
				(error: unknown) => ({ error })
			);
			let result;
			try {
				result = await work(idbTransaction(tx as IDBPTransaction<unknown, string[], typeof mode>));
			} catch (error) {
				abort(tx);
				const end = await done;
				// A request fails with "aborted" when the whole transaction did: its reason says more.
				const isAbort = error instanceof DOMException && error.name === 'AbortError';
				throw faultFrom(isAbort && end ? end.error : error);
			}
			const end = await done;
			if (end) throw faultFrom(end.error);
			return result;
		},
		close() {
			ended ??= new StorageFault('aborted', 'the notebook was closed');
			connection?.then(
				(database) => database.close(),
				() => {}
			);
		}
	};
}

function abort(tx: { abort(): void }): void {
	try {
		tx.abort();
	} catch {
		// It has ended already; its own reason is awaited next.
	}
}

function openAt(
	{ name, version = SCHEMA_VERSION, steps = migrations }: IdbOptions,
	on: { outdated: () => void; lost: () => void }
): Promise<IDBPDatabase> {
	return new Promise((resolve, reject) => {
		let failed: unknown = null;
		let gaveUp = false;
		const opening = async () =>
			openDB(name, version, {
				upgrade(db, oldVersion, _newVersion, tx) {
					// Its failure reaches us through the opening itself.
					tx.done.catch(() => {});
					upgradeStores(db, tx, oldVersion, version, steps).catch((error: unknown) => {
						failed = error;
						abort(tx);
					});
				},
				blocked() {
					gaveUp = true;
					reject(new StorageFault('blocked'));
				},
				blocking(_current, _blocked, event) {
					// A newer tab wants to change the database: make way at once, or it waits for ever.
					on.outdated();
					(event.target as IDBDatabase).close();
				},
				terminated: on.lost
			});
		// The browser may also throw at once, before any promise: asynchronous, both look alike.
		opening().then(
			// Opened after all, when nobody waits any more: let go, so as not to block others.
			(db) => (gaveUp ? db.close() : resolve(db)),
			(error: unknown) =>
				reject(failed ? new StorageFault('damaged', String(failed)) : openingFault(error))
		);
	});
}

/** While opening, this name means a browser that keeps nothing, as some private windows do. */
function openingFault(error: unknown): StorageFault {
	const name = error instanceof DOMException ? error.name : '';
	if (name === 'InvalidStateError') {
		return new StorageFault('unavailable', (error as Error).message, { cause: error });
	}
	return faultFrom(error);
}
