import { describe, expect, test } from 'vitest';
import { StoriesClient, Stopped, type Post } from '#state/limits/stories-client.ts';
import type { StoriesAnswer, StoriesRequest } from '#workers/stories-messages.ts';

function client() {
	const posts: (Post & { sent: StoriesRequest[]; ended: boolean; say(a: StoriesAnswer): void })[] =
		[];
	const made = new StoriesClient(() => {
		const post = {
			sent: [] as StoriesRequest[],
			ended: false,
			onmessage: null as Post['onmessage'],
			onerror: null,
			postMessage: (message: StoriesRequest) => void post.sent.push(message),
			terminate: () => void (post.ended = true),
			say: (data: StoriesAnswer) => post.onmessage?.({ data } as MessageEvent<StoriesAnswer>)
		};
		posts.push(post);
		return post;
	});
	return { made, posts };
}
const options = { referenceLoad: 60, bestGuess: 80, lapse: 0.02 };
const question = { kind: 'stories' as const, trials: [], options };

describe('asking the worker', () => {
	test('each answer goes to its own question, progress on the way', async () => {
		const { made, posts } = client();
		const seen: number[] = [];
		const first = made.ask(question, { onprogress: ({ done }) => void seen.push(done) });
		const second = made.ask(question);
		posts[0]!.say({ kind: 'progress', id: 1, done: 3, of: 4 });
		posts[0]!.say({ kind: 'stories', id: 2, evidence: [] });
		posts[0]!.say({ kind: 'stories', id: 1, evidence: [] });
		expect([(await first).id, (await second).id, seen]).toEqual([1, 2, [3]]);
	});

	test('a refusal comes as an error, a cancellation as one of its own', async () => {
		const { made, posts } = client();
		const refused = made.ask(question);
		posts[0]!.say({ kind: 'failed', id: 1, message: 'load: -1' });
		await expect(refused).rejects.toThrow('load: -1');
		const given = made.ask(question);
		made.cancel(2);
		expect(posts[0]!.sent.at(-1)).toEqual({ kind: 'cancel', id: 2 });
		posts[0]!.say({ kind: 'cancelled', id: 2 });
		await expect(given).rejects.toBeInstanceOf(Stopped);
	});

	test('stopping ends the worker; the next question starts another', async () => {
		const { made, posts } = client();
		const first = made.ask(question);
		made.stop();
		await expect(first).rejects.toBeInstanceOf(Stopped);
		expect(posts[0]!.ended).toBe(true);
		const second = made.ask(question);
		posts[1]!.say({ kind: 'stories', id: 2, evidence: [] });
		expect((await second).kind).toBe('stories');
	});
});
