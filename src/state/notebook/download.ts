import { exportFile } from '#storage/import/export-file.ts';
import { kinds, emptyNotebook } from '#storage/codecs/notebook/records.ts';
import type { AnyRecord, Notebook } from '#storage/codecs/notebook/records.ts';
import type { NotebookState } from './notebook.svelte.ts';

/** Everything there is, with what the device did not take on top: nothing typed is left out. */
export async function wholeNotebook(state: NotebookState): Promise<Notebook> {
	const stored = await state.store.notebook();
	const whole = emptyNotebook();
	for (const kind of kinds) {
		const records = new Map<string, AnyRecord>(stored[kind].map((one) => [one.id, one]));
		for (const { changes } of state.unsaved) {
			for (const change of changes) {
				if (change.kind !== kind) continue;
				if (change.record) records.set(change.id, change.record);
				else records.delete(change.id);
			}
		}
		(whole[kind] as AnyRecord[]) = [...records.values()];
	}
	return whole;
}

/** Hands the notebook to the browser as a file to keep. */
export async function downloadNotebook(
	state: NotebookState,
	format: 'json' | 'csv',
	now: Date
): Promise<void> {
	const blob = await exportFile(await wholeNotebook(state), format, now);
	const address = URL.createObjectURL(blob);
	const link = document.createElement('a');
	link.href = address;
	link.download = `trials-${now.toISOString().slice(0, 10)}.${format}`;
	link.click();
	// Some browsers read the address only after the click has returned.
	setTimeout(() => URL.revokeObjectURL(address), 60_000);
}
