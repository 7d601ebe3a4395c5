import { kinds } from '../codecs/notebook/records.ts';
import type { Kind, Notebook } from '../codecs/notebook/records.ts';
import { references } from './backend.ts';
import { remove } from './store.ts';
import type { Change } from './store.ts';

/** Records of the invented demo notebook are told by their ids. */
export const DEMO_PREFIX = 'demo-';

/**
 * Lists every deletion that deleting some records means: a person takes their sessions and plans
 * along, a session its trials, a grip or hold whatever was done with it. Show its length before
 * asking; apply it as one operation, so that one undo brings all of it back.
 */
export function deletionOf(
	notebook: Notebook,
	roots: readonly { kind: Kind; id: string }[]
): Change[] {
	const gone = new Map<Kind, Set<string>>(kinds.map((kind) => [kind, new Set()]));
	for (const { kind, id } of roots) {
		if (notebook[kind].some((record) => record.id === id)) gone.get(kind)!.add(id);
	}
	// The kinds stand in the order in which they lean on one another, so one pass is enough.
	for (const kind of kinds) {
		for (const { field, target } of references.filter((one) => one.kind === kind)) {
			for (const record of notebook[kind] as unknown as Record<string, string>[]) {
				if (gone.get(target)!.has(record[field]!)) gone.get(kind)!.add(record.id!);
			}
		}
	}
	return [...kinds].reverse().flatMap((kind) => [...gone.get(kind)!].map((id) => remove(kind, id)));
}

/** Everything of the demo, and whatever was added to it. */
export function demoDeletion(notebook: Notebook): Change[] {
	return deletionOf(
		notebook,
		kinds.flatMap((kind) =>
			notebook[kind].filter(({ id }) => id.startsWith(DEMO_PREFIX)).map(({ id }) => ({ kind, id }))
		)
	);
}

/** Everything there is. */
export function everyDeletion(notebook: Notebook): Change[] {
	return [...kinds].reverse().flatMap((kind) => notebook[kind].map(({ id }) => remove(kind, id)));
}
