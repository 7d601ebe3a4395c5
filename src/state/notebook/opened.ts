import type { StorageFault } from '#storage/stores/fault.ts';
import type { NotebookStore } from '#storage/stores/store.ts';

/** An opened notebook, and why it is only one in memory, if it is. */
export type Opened = { store: NotebookStore; fault: StorageFault | null };
