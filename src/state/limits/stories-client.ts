import { startStories } from '#workers/start-stories.ts';
import type { StoriesAnswer, StoriesRequest } from '#workers/stories-messages.ts';

type Asked = Exclude<StoriesRequest, { kind: 'cancel' }>;
type Question = Asked extends infer T ? (T extends unknown ? Omit<T, 'id'> : never) : never;
type Progress = Extract<StoriesAnswer, { kind: 'progress' }>;
type Answer<K> = Extract<StoriesAnswer, { kind: K }>;
type Waiting = {
	resolve: (answer: StoriesAnswer) => void;
	reject: (error: Error) => void;
	onprogress?: ((progress: Progress) => void) | undefined;
};

/** The part of a worker that is used here. */
export type Post = {
	postMessage(message: StoriesRequest): void;
	terminate(): void;
	onmessage: ((event: MessageEvent<StoriesAnswer>) => void) | null;
	onerror: ((event: never) => void) | null;
};

/** Thrown to whoever waits for an answer that nobody wants any more. */
export class Stopped extends Error {
	override name = 'Stopped';
}

/** Asks the worker about trials and brings each answer to the one who asked. */
export class StoriesClient {
	#make: () => Post;
	#worker: Post | undefined;
	#id = 0;
	#waiting = new Map<number, Waiting>();

	constructor(make: () => Post) {
		this.#make = make;
	}

	/** Asks; the answer has the question's kind. Rejects with `Stopped` when it was cancelled. */
	ask<K extends Asked['kind']>(
		question: Question & { kind: K },
		o: { onid?: (id: number) => void; onprogress?: (progress: Progress) => void } = {}
	): Promise<Answer<K>> {
		const id = ++this.#id;
		const worker = this.#open();
		o.onid?.(id);
		return new Promise((resolve, reject) => {
			this.#waiting.set(id, {
				resolve: resolve as Waiting['resolve'],
				reject,
				onprogress: o.onprogress
			});
			worker.postMessage({ ...question, id } as StoriesRequest);
		});
	}

	/** Asks the worker to give one question up. */
	cancel(id: number): void {
		if (this.#waiting.has(id)) this.#worker?.postMessage({ kind: 'cancel', id });
	}

	/** Ends the worker, whatever it is at; the next question starts another. */
	stop(): void {
		this.#worker?.terminate();
		this.#worker = undefined;
		this.#rejectAll(new Stopped('stopped'));
	}

	#open(): Post {
		if (this.#worker) return this.#worker;
		const worker = this.#make();
		worker.onmessage = ({ data }) => this.#hear(data);
		worker.onerror = () => {
			this.#worker = undefined;
			this.#rejectAll(new Error('The computation could not be loaded. Reload the page.'));
		};
		this.#worker = worker;
		return worker;
	}

	#hear(answer: StoriesAnswer): void {
		const waiting = this.#waiting.get(answer.id);
		if (!waiting) return;
		if (answer.kind === 'progress') return waiting.onprogress?.(answer);
		this.#waiting.delete(answer.id);
		if (answer.kind === 'failed') waiting.reject(new Error(answer.message));
		else if (answer.kind === 'cancelled') waiting.reject(new Stopped('cancelled'));
		else waiting.resolve(answer);
	}

	#rejectAll(error: Error): void {
		const all = [...this.#waiting.values()];
		this.#waiting.clear();
		for (const { reject } of all) reject(error);
	}
}

/** The client of the worker as it is built. */
export const workerClient = (): StoriesClient =>
	new StoriesClient(() => startStories() as unknown as Post);
