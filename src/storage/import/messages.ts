import type { Draft, Problem } from '../codecs/notebook/draft.ts';
import { kinds } from '../codecs/notebook/records.ts';
import type { AnyRecord, Kind } from '../codecs/notebook/records.ts';
import { readFile } from './read-file.ts';

/** What the worker is asked. */
export type Request = { kind: 'read'; id: number; bytes: ArrayBuffer; today: string };

/** What it answers: records and problems come in pieces, so that no single one holds up the page. */
export type Reply =
	| { kind: 'progress'; id: number; done: number; total: number }
	| { kind: 'records'; id: number; list: Kind; records: AnyRecord[] }
	| { kind: 'problems'; id: number; problems: Problem[] }
	| { kind: 'done'; id: number; format: Draft['format']; rows: number; refused: number }
	| { kind: 'failed'; id: number; reason: string };

const PIECE = 500;

/** The worker's work, apart from the worker. */
export function answer(request: Request, post: (reply: Reply) => void): void {
	const { id } = request;
	try {
		const draft = readFile(new Uint8Array(request.bytes), request.today, (done, total) =>
			post({ kind: 'progress', id, done, total })
		);
		for (const list of kinds) {
			for (const records of pieces<AnyRecord>(draft.notebook[list])) {
				post({ kind: 'records', id, list, records });
			}
		}
		for (const problems of pieces(draft.problems)) post({ kind: 'problems', id, problems });
		post({
			kind: 'done',
			id,
			format: draft.format,
			rows: draft.rows,
			refused: draft.refused
		});
	} catch (error) {
		post({ kind: 'failed', id, reason: error instanceof Error ? error.message : String(error) });
	}
}

function* pieces<T>(list: readonly T[]): Generator<T[]> {
	for (let from = 0; from < list.length; from += PIECE) yield list.slice(from, from + PIECE);
}
