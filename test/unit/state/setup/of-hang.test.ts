import { expect, test } from 'vitest';
import { evaluateHang } from '#core/strength/evaluate-hang.ts';
import { setupOfHang, strayFields } from '#state/setup/of-hang.ts';
import { hangOf, loadOf, netMassOf } from '#state/setup/to-hang.ts';
import { firstSight, type Setup } from '#storage/codecs/setup.ts';
import { within } from '#test/within.ts';

const setups: Partial<Setup>[] = [
	{},
	{ law: 'constant', change: -15, rope: 8, push: -20 },
	{ law: 'adhesion', patch: 'growing', radius: 60, slope: 24, change: 12 },
	{ law: 'deformation', hands: 1, fingers: 3, best: 60, bestFingers: 2, hold: 12 },
	{ law: 'power', exponent: 1.3, edge: 14, bestTime: 10 }
];

test.each(setups)('a set-up comes back over the border as the same hang: %o', (fields) => {
	const setup: Setup = { ...firstSight, ...fields };
	const back = setupOfHang(hangOf(setup), netMassOf(setup));
	expect(strayFields(back)).toEqual([]);
	const [there, here] = [setup, back].map((one) => evaluateHang(hangOf(one), loadOf(one)));
	within(here!.slipMargin, there!.slipMargin, { relative: 1e-5 });
	within(here!.strengthMargin, there!.strengthMargin, { relative: 1e-5 });
});

test('a hang past what the fields take says which field that is', () => {
	const hang = hangOf({ ...firstSight, slope: 30 });
	expect(strayFields(setupOfHang({ ...hang, push: 400 }, 70))).toEqual(['push']);
});

test('a deformation part too large for its field is stated at a lower pressure, as the same law', () => {
	const hang = hangOf({ ...firstSight, law: 'deformation', mu: 0.3, deformation: 0.3 });
	const larger = {
		...hang,
		friction: { ...hang.friction, deformation: 0.36 }
	} as typeof hang;
	const setup = setupOfHang(larger, 60);
	expect(strayFields(setup)).toEqual([]);
	const load = loadOf(setup);
	within(evaluateHang(hangOf(setup), load).ratio, evaluateHang(larger, load).ratio, {
		relative: 1e-9
	});
});
