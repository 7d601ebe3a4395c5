import { readJson } from '#storage/codecs/notebook/json.ts';
import { mergeChanges, planMerge } from '#storage/import/merge.ts';
import { DEMO_PREFIX, demoDeletion } from '#storage/stores/deletion.ts';
import type { NotebookState } from './notebook.svelte.ts';

/** Whether anything of the invented demo is in the notebook. */
export const hasDemo = (notebook: NotebookState): boolean =>
	[...notebook.people, ...notebook.sessions].some(({ id }) => id.startsWith(DEMO_PREFIX));

/** Brings in the invented demo, given as its file; what is already there stays as it is. */
export async function loadDemo(notebook: NotebookState, file: string): Promise<string | null> {
	const draft = readJson(file);
	const merge = await planMerge(await notebook.store.notebook(), draft);
	const done = await notebook.apply('Loaded the demo', mergeChanges(merge, 'keep'));
	return done ? (draft.notebook.sessions[0]?.id ?? null) : null;
}

/** Takes the demo away again, and whatever was added to it. */
export async function removeDemo(notebook: NotebookState): Promise<boolean> {
	return notebook.apply('Removed the demo', demoDeletion(await notebook.store.notebook()));
}
