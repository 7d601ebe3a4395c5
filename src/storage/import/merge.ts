import { emptyNotebook, kinds } from '../codecs/notebook/records.ts';
import type { AnyRecord, Kind, Notebook } from '../codecs/notebook/records.ts';
import type { Draft, Problem } from '../codecs/notebook/draft.ts';
import { references } from '../stores/backend.ts';
import { pause } from '../stores/pause.ts';
import { sameRecord } from '../stores/same-record.ts';
import { put } from '../stores/store.ts';
import type { Change } from '../stores/store.ts';
import { adoptLabels } from './adopt-labels.ts';

/** What an import would do, before anything is written. */
export type Merge = {
	/** Records not here yet. */
	fresh: Change[];
	/** Records here already, word for word. */
	same: number;
	/** Records here already that the file has otherwise. */
	differing: { kind: Kind; id: string; mine: AnyRecord; theirs: AnyRecord }[];
	/** What the reading said, and what merging adds. */
	problems: Problem[];
	/** Rows or records that stay out. */
	refused: number;
};

const SLICE = 500;

/**
 * Compares what a file holds with what is here, record by record, by id. Reading a file twice finds
 * everything the same the second time. Pauses now and then so that the page stays awake.
 */
export async function planMerge(existing: Notebook, draft: Draft): Promise<Merge> {
	const merge: Merge = {
		fresh: [],
		same: 0,
		differing: [],
		problems: [...draft.problems],
		refused: draft.refused
	};
	const { notebook, remarks } = adoptLabels(existing, draft.notebook);
	for (const reason of remarks) {
		merge.problems.push({ severity: 'flagged', row: null, field: null, reason });
	}
	const known = emptyIds();
	for (const kind of kinds) for (const { id } of existing[kind]) known[kind].add(id);
	let looked = 0;
	for (const kind of kinds) {
		const mine = new Map<string, AnyRecord>(existing[kind].map((record) => [record.id, record]));
		for (const theirs of notebook[kind]) {
			if (++looked % SLICE === 0) await pause();
			const lost = danglingOf(kind, theirs, known);
			if (lost) {
				merge.refused++;
				merge.problems.push({
					severity: 'refused',
					row: null,
					field: `${kind} ${theirs.id}`,
					reason: `belongs to ${lost}, which is neither in the file nor here`
				});
				continue;
			}
			known[kind].add(theirs.id);
			const here = mine.get(theirs.id);
			if (!here) merge.fresh.push(put(kind, theirs));
			else if (sameRecord(here, theirs)) merge.same++;
			else merge.differing.push({ kind, id: theirs.id, mine: here, theirs });
		}
	}
	return merge;
}

/** The changes of a merge, for one `apply`. Where both sides differ, `keep` leaves what is here. */
export function mergeChanges(merge: Merge, differing: 'keep' | 'take'): Change[] {
	return differing === 'keep'
		? merge.fresh
		: [...merge.fresh, ...merge.differing.map(({ kind, theirs }) => put(kind, theirs))];
}

function emptyIds(): Record<Kind, Set<string>> {
	return Object.fromEntries(
		Object.keys(emptyNotebook()).map((kind) => [kind, new Set<string>()])
	) as Record<Kind, Set<string>>;
}

function danglingOf(
	kind: Kind,
	record: AnyRecord,
	known: Record<Kind, Set<string>>
): string | undefined {
	const fields = record as unknown as Record<string, string>;
	const lost = references.find(
		(reference) => reference.kind === kind && !known[reference.target].has(fields[reference.field]!)
	);
	return lost && `${lost.field} ${fields[lost.field]}`;
}
