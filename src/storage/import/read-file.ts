import { decodeBytes } from '../codecs/csv/decode-bytes.ts';
import { readCsv } from '../codecs/csv/read-csv.ts';
import type { Draft, Progress } from '../codecs/notebook/draft.ts';
import { readJson } from '../codecs/notebook/json.ts';
import { emptyNotebook } from '../codecs/notebook/records.ts';

/** Reads a file's bytes, JSON or CSV, into a draft. Never throws for what a file may hold. */
export function readFile(bytes: Uint8Array, today: string, progress?: Progress): Draft {
	let decoded;
	try {
		decoded = decodeBytes(bytes);
	} catch (error) {
		return unread((error as Error).message);
	}
	const text = decoded.text.replace(/^\ufeff/, '');
	if (text.trim() === '') return unread('The file is empty.');
	const draft = text.trimStart().startsWith('{')
		? readJson(text, progress)
		: readCsv(text, today, progress);
	if (decoded.note) {
		draft.problems.unshift({ severity: 'flagged', row: null, field: null, reason: decoded.note });
	}
	return draft;
}

function unread(reason: string): Draft {
	return {
		format: 'csv',
		notebook: emptyNotebook(),
		problems: [{ severity: 'refused', row: null, field: null, reason }],
		rows: 0,
		refused: 0
	};
}
