import { holdTimeCurve } from '#core/trials/hold-time-curve.ts';
import { timedOpeningLimit } from '#core/trials/hold-times.ts';
import { holdingCurve } from '#core/trials/holding-curve.ts';
import { lapseSensitivity } from '#core/trials/lapse-sensitivity.ts';
import { nextTrial } from '#core/trials/next-trial.ts';
import { openingLimit } from '#core/trials/opening-limit.ts';
import { simulatePlan, type Tally } from '#core/trials/simulate-plan.ts';
import { slipLimit } from '#core/trials/slip-limit.ts';
import { addTrial, openBook, type StoryBook, tidyBook } from '#core/trials/story-book.ts';
import { storyRangesInSteps } from '#core/trials/story-ranges.ts';
import type {
	AnalysisOptions,
	GripLimits,
	GripTrials,
	StoriesAnswer,
	StoriesRequest
} from './stories-messages.ts';

/** Between two stretches of work the desk lets messages through, at least this often, ms. */
const stretch = 40;

type Kept = { book: StoryBook; trials: string[]; options: string };

/**
 * Answers requests about trials; the worker is this desk with a letter box.
 *
 * Long work pauses every 40 ms, so that a cancel can arrive. The last book of stories is kept: when a request is that
 * notebook plus one trial, only the trial is added.
 *
 * @param send where answers go
 * @param pause lets waiting messages in; resolves when they have been
 * @param now a clock, ms
 * @returns takes one request; resolves when it has been answered
 */
export function storiesDesk(
	send: (answer: StoriesAnswer) => void,
	pause: () => Promise<void>,
	now: () => number
): (request: StoriesRequest) => Promise<void> {
	const waiting = new Set<number>();
	const cancelled = new Set<number>();
	let kept: Kept | undefined;

	const stories = (trials: Parameters<typeof openBook>[0], options: AnalysisOptions): StoryBook => {
		const keys = trials.map((trial) => JSON.stringify(trial));
		const key = JSON.stringify(options);
		const grown =
			kept?.options === key &&
			keys.length === kept.trials.length + 1 &&
			kept.trials.every((trial, k) => trial === keys[k]);
		const same = kept?.options === key && kept.trials.join() === keys.join();
		const book = same
			? kept!.book
			: grown
				? addTrial(kept!.book, trials[trials.length - 1]!)
				: openBook(trials, options);
		kept = { book, trials: keys, options: key };
		return book;
	};

	const limits = ({ grip, trials, options }: GripTrials, loads: number[]): GripLimits => ({
		grip,
		opening: {
			leftOut: openingLimit(trials, { ...options, stopped: 'left-out' }),
			opened: openingLimit(trials, { ...options, stopped: 'opened' })
		},
		slip: slipLimit(trials, options),
		curve: holdingCurve(trials, loads, options)
	});

	/** Lets messages in; true when this request has been cancelled meanwhile. */
	const gone = async (id: number): Promise<boolean> => {
		await pause();
		return cancelled.has(id);
	};

	/** Takes steps one by one; now and then says how far it is and lets messages in. Undefined when cancelled. */
	async function paced<Step, Found>(
		id: number,
		steps: Generator<Step, Found>,
		progress: (step: Step) => { done: number; of: number; tally?: Tally }
	): Promise<Found | undefined> {
		let since = now();
		let step = steps.next();
		for (; !step.done; step = steps.next()) {
			if (now() - since < stretch) continue;
			send({ kind: 'progress', id, ...progress(step.value) });
			if (await gone(id)) return void send({ kind: 'cancelled', id });
			since = now();
		}
		return step.value;
	}

	async function answer(request: Exclude<StoriesRequest, { kind: 'cancel' }>): Promise<void> {
		const { id } = request;
		if (request.kind === 'stories') {
			send({ kind: 'stories', id, evidence: stories(request.trials, request.options).evidence });
			if (!(await gone(id)) && kept) kept.book = tidyBook(kept.book);
		} else if (request.kind === 'ranges') {
			const ranges = await paced(
				id,
				storyRangesInSteps(request.trials, request.options),
				(step) => step
			);
			if (ranges) send({ kind: 'ranges', id, ranges });
		} else if (request.kind === 'next') {
			const { trials, options, candidates } = request;
			send({ kind: 'next', id, candidates: nextTrial(trials, { ...options, candidates }) });
		} else if (request.kind === 'lapses') {
			send({ kind: 'lapses', id, rows: lapseSensitivity(request.trials, request.options) });
		} else if (request.kind === 'times') {
			const { trials, options, loads } = request;
			const limit = timedOpeningLimit(trials, options);
			if (await gone(id)) return send({ kind: 'cancelled', id });
			send({ kind: 'times', id, limit, curve: holdTimeCurve(trials, loads, options) });
		} else if (request.kind === 'limits') {
			const found: GripLimits[] = [];
			for (const grip of request.grips) {
				found.push(limits(grip, request.loads));
				send({ kind: 'progress', id, done: found.length, of: request.grips.length });
				if (await gone(id)) return send({ kind: 'cancelled', id });
			}
			send({ kind: 'limits', id, limits: found });
		} else {
			const { plan, options } = request;
			const tally = await paced(id, simulatePlan(plan, options), (tally) => {
				return { done: tally.runs, of: options.runs, tally };
			});
			if (tally) send({ kind: 'power', id, tally });
		}
	}

	return async (request) => {
		if (request.kind === 'cancel') {
			if (waiting.has(request.id)) cancelled.add(request.id);
			return;
		}
		waiting.add(request.id);
		try {
			// A request that was cancelled while it stood in the queue is not begun.
			if (await gone(request.id)) send({ kind: 'cancelled', id: request.id });
			else await answer(request);
		} catch (error) {
			send({
				kind: 'failed',
				id: request.id,
				message: error instanceof Error ? error.message : String(error)
			});
		} finally {
			waiting.delete(request.id);
			cancelled.delete(request.id);
		}
	};
}
