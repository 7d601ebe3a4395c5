/**
 * Own, not outside: the fatigue rates of the reference rows run through a simulation of our own
 * (active, tired, resting shares; gains 10 per second, step 0.01 s, ended when the active share
 * falls below 99 % of the target) against times that an earlier simulation of ours gave.
 */
import { describe, test } from 'vitest';
import { fatigueRates } from '#reference/endurance.ts';
import { rowOf } from '#reference/read.ts';
import { within } from '#test/within.ts';

function enduranceOf(key: string, target: number): number {
	const { tiring, recovering } = rowOf(fatigueRates, key);
	const step = 0.01;
	let [active, tired, resting] = [0, 0, 1];
	let reached = false;
	for (let time = 0; time < 2000; time += step) {
		const missing = target - active;
		const drive = 10 * (missing > 0 ? Math.min(missing, resting) : missing);
		const [more, back] = [tiring * active, recovering * tired];
		active += step * (drive - more);
		tired += step * (more - back);
		resting += step * (back - drive);
		if (active >= 0.99 * target) reached = true;
		else if (reached) return time;
	}
	return Infinity;
}

describe('time to failure from the rows’ rates, seconds', () => {
	test.each([
		['hand-men', 0.3, 231],
		['hand-men', 0.5, 88.3],
		['hand-men', 0.7, 37],
		['hand-men', 0.9, 9.9],
		['hand-women', 0.3, 267],
		['hand-women', 0.5, 97],
		['hand-women', 0.7, 40],
		['hand-women', 0.9, 10.6]
	])('%s at %d of maximum', (key, target, seconds) => {
		within(enduranceOf(key, target), seconds, { absolute: 2 });
	});
});
