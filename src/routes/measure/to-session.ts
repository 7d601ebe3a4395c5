import type { NotebookState } from '#state/notebook/notebook.svelte.ts';
import type { Session } from '#storage/codecs/notebook/records.ts';

/** Adds a measured line to a session's note: a way for results that have no field of their own. */
export function toSessionNote(notebook: NotebookState, { id }: Session, line: string) {
	return {
		label: 'Write it to the session’s note',
		write: () =>
			notebook.amend('Measured for the session', 'sessions', id, ({ note }) => ({
				note: (note === '' ? line : `${note}\n${line}`).slice(0, 4000)
			}))
	};
}
