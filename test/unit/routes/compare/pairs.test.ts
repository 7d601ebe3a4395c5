import { describe, expect, test } from 'vitest';
import { computeResults } from '#state/setup/results.ts';
import { SetupState } from '#state/setup/setup.svelte.ts';
import { firstSight, type Setup } from '#storage/codecs/setup.ts';
import { within } from '#test/within.ts';
import { differences, sidesOf } from '../../../../src/routes/compare/compared.ts';
import { pairs } from '../../../../src/routes/compare/pairs.ts';

/** Both set-ups after a pair, as the page makes them. */
function pairOf(key: string, own: Partial<Setup> = {}) {
	const pair = pairs.find((candidate) => candidate.key === key)!;
	const [first, second] = [new SetupState(), new SetupState()];
	first.change({ ...firstSight, ...own });
	const before = first.current;
	if (pair.first) first.change(pair.first(before));
	second.change({ ...first.current, ...pair.second(before) });
	return { first: first.current, second: second.current };
}
const windowsOf = (first: Setup, second: Setup) =>
	sidesOf(computeResults(first), computeResults(second)).sides;

describe('pairs', () => {
	test('each makes a second set-up that differs, and can be computed', () => {
		for (const { key } of pairs) {
			const { first, second } = pairOf(key);
			if (key !== 'average') expect(differences(first, second).length, key).toBeGreaterThan(0);
			expect(() => computeResults(second), key).not.toThrow();
			expect(first.mu).toBe(second.mu);
		}
	});

	test('half crimp and open grip swap, three and four fingers too', () => {
		expect(pairOf('half-crimp-open').second.area).toBe(160);
		expect(pairOf('half-crimp-open', { area: 150 }).second.area).toBe(250);
		expect(pairOf('three-four').second.fingers).toBe(3);
		expect(pairOf('three-four', { fingers: 3, bestFingers: 3 }).second.fingers).toBe(4);
	});

	test('equal strength for their mass: under a constant ratio the windows agree as multiples', () => {
		const { first, second } = pairOf('same-ratio', { law: 'constant', mu: 0.7, slope: 30 });
		const [one, other] = windowsOf(first, second);
		expect(one.window.length).toBe(1);
		within(one.window[0]!.to / one.bodyMass, other.window[0]!.to / other.bodyMass, {
			relative: 1e-9
		});
		within(one.results.contact.slipMargin, other.results.contact.slipMargin, { relative: 1e-9 });
	});

	test('… and under a law that knows pressure they do not', () => {
		const { first, second } = pairOf('same-ratio', { law: 'adhesion', mu: 0.45, shear: 40 });
		const [one, other] = windowsOf(first, second);
		expect(one.results.contact.slipMargin).toBeGreaterThan(other.results.contact.slipMargin);
	});

	test('long fingers: the tip lies less steep, by reach over radius', () => {
		const { first, second } = pairOf('long-fingers', { padLength: 20, slope: 30 });
		expect(first.radius).toBe(80);
		within(first.slope - second.slope, (2 / 80) * (180 / Math.PI), { absolute: 0.05 });
	});

	test('a set-up compared with itself has no differences and the same window', () => {
		const [one, other] = windowsOf({ ...firstSight }, { ...firstSight });
		expect(differences(firstSight, firstSight)).toEqual([]);
		expect(one.window).toEqual(other.window);
	});
});
