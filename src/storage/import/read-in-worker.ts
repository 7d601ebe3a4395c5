import { emptyNotebook } from '../codecs/notebook/records.ts';
import type { AnyRecord } from '../codecs/notebook/records.ts';
import type { Draft, Progress } from '../codecs/notebook/draft.ts';
import { StorageFault } from '../stores/fault.ts';
import type { Reply, Request } from './messages.ts';

const makeWorker = (): Worker =>
	new Worker(new URL('./import.worker.ts', import.meta.url), { type: 'module' });

/**
 * Reads a file in a worker. Aborting the signal ends the worker at once, and rejects with a
 * StorageFault of kind 'cancelled'; nothing has been written.
 */
export async function readInWorker(
	file: Blob,
	today: string,
	options: { progress?: Progress; signal?: AbortSignal } = {},
	make: () => Worker = makeWorker
): Promise<Draft> {
	const { progress, signal } = options;
	const bytes = await file.arrayBuffer();
	if (signal?.aborted) throw new StorageFault('cancelled');
	const worker = make();
	const draft: Draft = {
		format: 'csv',
		notebook: emptyNotebook(),
		problems: [],
		rows: 0,
		refused: 0
	};
	const cancel = new AbortController();
	try {
		return await new Promise<Draft>((resolve, reject) => {
			signal?.addEventListener('abort', () => reject(new StorageFault('cancelled')), {
				signal: cancel.signal
			});
			worker.onerror = (event) => reject(new Error(event.message || 'The file could not be read.'));
			worker.onmessage = ({ data }: MessageEvent<Reply>) => {
				if (data.kind === 'progress') progress?.(data.done, data.total);
				else if (data.kind === 'records') {
					(draft.notebook[data.list] as AnyRecord[]).push(...data.records);
				} else if (data.kind === 'problems') draft.problems.push(...data.problems);
				else if (data.kind === 'failed') reject(new Error(data.reason));
				else {
					const { format, rows, refused } = data;
					resolve({ ...draft, format, rows, refused });
				}
			};
			const request: Request = { kind: 'read', id: 1, bytes, today };
			worker.postMessage(request, [bytes]);
		});
	} finally {
		cancel.abort();
		worker.terminate();
	}
}
