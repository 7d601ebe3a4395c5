import { csvLines } from '../codecs/csv/export-csv.ts';
import { jsonPieces } from '../codecs/notebook/json.ts';
import type { Notebook } from '../codecs/notebook/records.ts';
import { pause } from '../stores/pause.ts';

const PIECES = 200;

/** Writes the notebook as a file, with pauses so that the page stays awake. */
export async function exportFile(
	notebook: Notebook,
	format: 'json' | 'csv',
	exportedAt: Date
): Promise<Blob> {
	const parts: string[] = [];
	const pieces = format === 'csv' ? csvLines(notebook) : jsonPieces(notebook, exportedAt);
	let count = 0;
	for (const piece of pieces) {
		parts.push(piece);
		if (++count % PIECES === 0) await pause();
	}
	const type = format === 'csv' ? 'text/csv' : 'application/json';
	return new Blob(parts, { type: `${type};charset=utf-8` });
}
