import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { holdTimes, timeWords } from '#figures/limits/hold-times.ts';
import { holdTimeCurve } from '#core/trials/hold-time-curve.ts';
import { analysedOf, type Analysed } from '#state/limits/analysed.ts';
import { optionsOf, scatterOf } from '#state/limits/options.ts';
import { settledPick } from '#state/limits/pick.ts';
import { timesAllow } from '#state/limits/times.ts';
import { readJson } from '#storage/codecs/notebook/json.ts';
import type { Notebook } from '#storage/codecs/notebook/records.ts';
import { within } from '#test/within.ts';

function analysed(change: (notebook: Notebook) => void = () => undefined): Analysed {
	const { notebook } = readJson(readFileSync('seeds/demo-notebook.json', 'utf8'));
	change(notebook);
	const records = {
		...notebook,
		trialsOf: (id: string) => notebook.trials.filter((t) => t.sessionId === id)
	};
	const untyped = { bestGuess: null, ownMaximum: null };
	return analysedOf(records, settledPick(records, {})!, untyped);
}
const opened = (times: number[], loads: number[]) => (notebook: Notebook) => {
	const tests = notebook.trials.filter(({ kind, leftOut }) => kind === 'test' && leftOut === null);
	times.forEach((seconds, k) =>
		Object.assign(tests[k]!, { outcome: 'opened', seconds, loadKg: loads[k]!, stopReason: null })
	);
};

describe('whether times allow an answer', () => {
	test('the demo has too few openings with a time', () =>
		expect(timesAllow(analysed())).toBe('few'));
	test('three at two loads will do; at one load they will not', () => {
		const three = [2, 3, 4];
		const demo = analysed((notebook) => {
			for (const trial of notebook.trials) if (trial.outcome === 'opened') trial.leftOut = 'other';
			opened(three, [60, 60, 60])(notebook);
		});
		expect(timesAllow(demo)).toBe('one-load');
		expect(timesAllow(analysed(opened(three, [60, 62, 60])))).toBe('yes');
	});
	test('several target times do not', () => {
		const two = analysed((notebook) => void (notebook.sessions[0]!.targetSeconds = null));
		expect(timesAllow(two)).toBe('targets');
	});
});

describe('the picture of hold times', () => {
	const of = analysed(opened([1.5, 3, 4], [64, 60, 62]));
	const o = { referenceLoad: 50, bestGuess: 70, targetTime: 5 };
	const curve = holdTimeCurve(of.trials, [35, 45, 55, 65, 70], o);
	const view = { curve, trials: of.trials, targetSeconds: 5, massUnit: 'kg' } as const;
	const drawn = holdTimes({ ...view, width: 360, height: 300 });

	test('never leaves what was watched, and is finite', () => {
		expect(`${drawn.band}${drawn.middle}`).not.toMatch(/NaN|Infinity/);
		expect(drawn.marks.length).toBeGreaterThan(5);
		for (const { x, y } of drawn.marks) {
			expect(x).toBeGreaterThanOrEqual(drawn.frame.left);
			expect(x).toBeLessThanOrEqual(drawn.frame.right);
			expect(y).toBeGreaterThanOrEqual(drawn.target - 1e-9);
			expect(y).toBeLessThanOrEqual(drawn.frame.bottom);
		}
	});
	test('only an opening is a time; everything else lasted at least that long', () => {
		for (const { outcome, lasted } of drawn.marks) expect(lasted).toBe(outcome !== 'opened');
	});
	test('no number stands beyond the target', () => {
		expect(timeWords(17, 5)).toBe('longer than 5 s');
		expect(timeWords(3.456, 5)).toBe('3.5 s');
		expect(timeWords(0.2, 5)).toBe('under half a second');
	});
});

describe('repeated tilts', () => {
	test('without two of a series the printed starting guess stands', () => {
		expect(scatterOf(analysed())).toBeUndefined();
		expect(optionsOf(analysed()).priors).toBeUndefined();
	});
	test('in a session’s note they take its place, as ratios', () => {
		const of = analysed(
			(notebook) =>
				void (notebook.sessions[0]!.note = 'Tilt to slip: 31°; 31.5°; 30.6°; 31.2°; 31.1°; 30.8°')
		);
		within(of.tilts[0]![0]!, Math.tan((31 * Math.PI) / 180), { relative: 1e-12 });
		// Nearly equal tilts: less scatter, so the rope term weighs more.
		expect(optionsOf(of).priors!.lnRopeEffect.mean).toBeGreaterThan(Math.log(8));
		expect(scatterOf(of)!.freedom).toBe(5);
	});
});
