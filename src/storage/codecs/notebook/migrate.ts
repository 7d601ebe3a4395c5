import { SCHEMA_VERSION, kinds } from './records.ts';
import type { Kind } from './records.ts';

/** A record of an older version: nothing is known of it but that it is an object. */
export type OldRecord = { [field: string]: unknown };

/** One step: turns a record of version `from` into one of version `from + 1`. */
export type Migration = { from: number; record: (kind: Kind, old: OldRecord) => OldRecord };

/**
 * Steps from every older version. Version 1 is the first that was ever kept, so there are none
 * yet; a change of the records adds one here, a fixture of the version left behind, and its test.
 */
export const migrations: readonly Migration[] = [];

/** Brings one record from a version up to the present one, step by step. */
export function migrateRecord(
	kind: Kind,
	record: OldRecord,
	from: number,
	to: number = SCHEMA_VERSION,
	steps: readonly Migration[] = migrations
): OldRecord {
	let result = record;
	for (let version = from; version < to; version++) {
		const step = steps.find((candidate) => candidate.from === version);
		if (!step) throw new Error(`No way leads from version ${version} of the notebook to the next`);
		result = step.record(kind, result);
	}
	return result;
}

/** Brings every list of an older notebook up to the present version. */
export function migrateLists(
	lists: Partial<Record<Kind, unknown[]>>,
	from: number,
	to: number = SCHEMA_VERSION,
	steps: readonly Migration[] = migrations
): Partial<Record<Kind, unknown[]>> {
	return Object.fromEntries(
		kinds
			.filter((kind) => lists[kind] !== undefined)
			.map((kind) => [
				kind,
				lists[kind]!.map((record) =>
					// What is no object cannot be migrated; validation names it afterwards.
					typeof record === 'object' && record !== null && !Array.isArray(record)
						? migrateRecord(kind, record as OldRecord, from, to, steps)
						: record
				)
			])
	);
}
