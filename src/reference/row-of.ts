import type { Row } from './types.ts';

// Apart from the list of works, so that a page that reads one row does not load them all.
/** The row of a table with this key; a RangeError that names the keys there are. */
export function rowOf<T extends Row>(table: readonly T[], key: string): T {
	const row = table.find((candidate) => candidate.key === key);
	if (!row) {
		const keys = table.map((candidate) => candidate.key).join(', ');
		throw new RangeError(`key: no row "${key}", expected one of ${keys}`);
	}
	return row;
}
