import { NotebookState } from './notebook.svelte.ts';

/** The one notebook of this device; its store is fetched and opened when a page asks for it. */
export const sharedNotebook = new NotebookState(() =>
	import('#storage/stores/open-store.ts').then(({ openNotebookOrMemory }) => openNotebookOrMemory())
);
