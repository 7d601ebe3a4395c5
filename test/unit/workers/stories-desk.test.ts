import { describe, expect, test } from 'vitest';
import { storyEvidence } from '#core/trials/story-evidence.ts';
import type { Trial } from '#core/trials/trial.ts';
import { storiesDesk } from '#workers/stories-desk.ts';
import type { StoriesAnswer, StoriesRequest } from '#workers/stories-messages.ts';
import { within } from '#test/within.ts';

const options = { referenceLoad: 60, bestGuess: 80, lapse: 0.02 };
const trials = [45, 70, 52, 80, 60, 48, 66].map((load, k): Trial => ({
	load,
	outcome: load > 55 ? 'held' : 'slipped',
	order: (k - 3) / 10,
	ropeTerm: 0.05 * ((k % 3) - 1)
}));

/** A desk whose clock runs on by itself, and what it has sent. */
function desk(each = 0) {
	const sent: StoriesAnswer[] = [];
	let time = 0;
	const take = storiesDesk(
		(answer) => sent.push(answer),
		() => new Promise((resolve) => setTimeout(resolve)),
		() => (time += each)
	);
	return { sent, take };
}

describe('the stories worker’s desk', () => {
	test('stories, and the same notebook one trial longer', async () => {
		const { sent, take } = desk();
		const ask = (id: number, some: Trial[]) => take({ kind: 'stories', id, trials: some, options });
		await ask(1, trials.slice(0, -1));
		await ask(2, trials);
		await ask(3, trials);
		expect(sent.map(({ kind, id }) => [kind, id])).toEqual([
			['stories', 1],
			['stories', 2],
			['stories', 3]
		]);
		const last = sent[1]!;
		if (last.kind !== 'stories') throw new Error(last.kind);
		storyEvidence(trials, options).forEach(({ logEvidence }, k) =>
			within(last.evidence[k]!.logEvidence, logEvidence, { absolute: 1e-6 })
		);
	});

	test('limits of two grips, with progress', async () => {
		const { sent, take } = desk();
		const grips = ['half crimp', 'open'].map((grip) => ({ grip, trials, options }));
		await take({ kind: 'limits', id: 5, grips, loads: [50, 70] });
		expect(sent.map(({ kind }) => kind)).toEqual(['progress', 'progress', 'limits']);
		const last = sent[2]!;
		if (last.kind !== 'limits') throw new Error(last.kind);
		expect(last.limits.map(({ grip, curve }) => [grip, curve.length])).toEqual([
			['half crimp', 2],
			['open', 2]
		]);
	});

	test('next trials and ranges', async () => {
		const { sent, take } = desk();
		await take({
			kind: 'next',
			id: 1,
			trials,
			options: { ...options, ownMaximum: 90, adult: true },
			candidates: [{ load: 60 }, { load: 95 }]
		});
		await take({ kind: 'ranges', id: 2, trials, options });
		const [next, ranges] = sent;
		if (next?.kind !== 'next' || ranges?.kind !== 'ranges') throw new Error(next?.kind);
		expect(next.candidates.map(({ blockedBy }) => blockedBy)).toEqual([null, 'own-maximum']);
		expect(ranges.ranges.ranges.length).toBe(6);
	});

	test('ranges tell how far they are, and are given up when asked', async () => {
		const { sent, take } = desk(50);
		const waiting = take({ kind: 'ranges', id: 3, trials, options });
		await new Promise((resolve) => setTimeout(resolve));
		await take({ kind: 'cancel', id: 3 });
		await waiting;
		expect(sent.at(-1)).toEqual({ kind: 'cancelled', id: 3 });
		const before = sent.length;
		await take({ kind: 'ranges', id: 4, trials, options });
		expect(sent[before]).toMatchObject({ kind: 'progress', id: 4, of: 28 });
		expect(sent.at(-1)!.kind).toBe('ranges');
	});

	const power: StoriesRequest = {
		kind: 'power',
		id: 9,
		plan: trials.map(({ load, ropeTerm, order }) => ({ load, ropeTerm, order })),
		options: {
			referenceLoad: 60,
			truth: { margin: 0, loadEffect: 2, ropeEffect: 0, orderEffect: 0 },
			seed: 1,
			runs: 30
		}
	};

	test('a simulation reports progress and ends', async () => {
		const { sent, take } = desk(10);
		await take(power);
		const kinds = sent.map(({ kind }) => kind);
		expect(kinds.filter((kind) => kind === 'progress').length).toBeGreaterThan(2);
		const last = sent[sent.length - 1]!;
		if (last.kind !== 'power') throw new Error(last.kind);
		expect(last.tally.runs).toBe(30);
	});

	test('a simulation can be cancelled, before and while it runs', async () => {
		const { sent, take } = desk(50);
		const running = take(power);
		await new Promise((resolve) => setTimeout(resolve, 30));
		await take({ kind: 'cancel', id: 9 });
		await running;
		expect(sent[sent.length - 1]).toEqual({ kind: 'cancelled', id: 9 });
		const count = sent.length;
		const second = take({ ...power, id: 10 });
		await take({ kind: 'cancel', id: 10 });
		await second;
		expect(sent.slice(count)).toEqual([{ kind: 'cancelled', id: 10 }]);
	});

	test('a refusal comes back as words', async () => {
		const { sent, take } = desk();
		await take({ kind: 'stories', id: 4, trials: [{ ...trials[0]!, load: -1 }], options });
		expect(sent).toEqual([
			{ kind: 'failed', id: 4, message: expect.stringContaining('trials[0].load: -1') }
		]);
	});
});
