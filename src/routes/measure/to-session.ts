import type { NotebookState } from '#state/notebook/notebook.svelte.ts';
import type { Session } from '#storage/codecs/notebook/records.ts';
import { put } from '#storage/stores/store.ts';

/** Adds a measured line to a session's note: a way for results that have no field of their own. */
export function toSessionNote(notebook: NotebookState, session: Session, line: string) {
	return {
		label: 'Write it to the session’s note',
		write: () => {
			// The session as it stands now: it may have moved on since the button was drawn.
			const now = notebook.sessions.find(({ id }) => id === session.id) ?? session;
			const note = now.note === '' ? line : `${now.note}\n${line}`;
			return notebook.apply('Measured for the session', [
				put('sessions', { ...now, note: note.slice(0, 4000) })
			]);
		}
	};
}
