import type { Notebook } from '../codecs/notebook/records.ts';

const FILE_MARK = /^file-(person|hold|grip)-/;

/**
 * A table typed by hand brings names, not ids. Where exactly one person, hold or grip here bears
 * such a name, it is meant, and stays as it is.
 */
export function adoptLabels(
	existing: Notebook,
	read: Notebook
): { notebook: Notebook; remarks: string[] } {
	const remarks: string[] = [];
	const notebook = { ...read };
	const renamed = new Map<string, string>();
	for (const kind of ['people', 'holds', 'grips'] as const) {
		const here = new Set(existing[kind].map(({ id }) => id));
		const keep = (record: { id: string; label: string }): boolean => {
			if (!FILE_MARK.test(record.id) || here.has(record.id)) return true;
			const meant = existing[kind].filter(({ label }) => label === record.label);
			if (meant.length !== 1) return true;
			renamed.set(record.id, meant[0]!.id);
			remarks.push(`“${record.label}” is taken to be the one already here.`);
			return false;
		};
		(notebook[kind] as { id: string; label: string }[]) = read[kind].filter(keep);
	}
	const meant = (id: string) => renamed.get(id) ?? id;
	notebook.sessions = read.sessions.map((session) => ({
		...session,
		personId: meant(session.personId),
		holdId: meant(session.holdId)
	}));
	notebook.trials = read.trials.map((trial) => ({ ...trial, gripId: meant(trial.gripId) }));
	return { notebook, remarks };
}
