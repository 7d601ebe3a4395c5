import { describe, expect, test } from 'vitest';
import { evaluateHang, hangLoad, holdingRegion, type Hang } from '#core/index.ts';
import { within } from '#test/within.ts';
import cases from './cases.json';

const degree = Math.PI / 180;

/** A strong person's two-handed hang, plumb, so that only the skin can fail. */
function strongHang(slope: number, coefficient: number): Hang {
	return {
		hangingMass: 70,
		ropeAngle: 0,
		hands: 2,
		slope,
		friction: { kind: 'constant', coefficient },
		grip: {
			fingers: 4,
			padWidth: 0.016,
			padLength: 0.021,
			padDepth: 0.005,
			contact: { kind: 'fixed', padArea: 250e-6 }
		},
		strength: { referenceForce: 2000, referenceEdgeDepth: 0.02, holdTime: 5 }
	};
}

describe('outside checks: slip angles on rock (Amca and others 2012)', () => {
	test.each(cases)('$rock, $ratio: $slipAngle_deg°', ({ ratio, slipAngle_deg, tolerance_deg }) => {
		const tolerance = { absolute: tolerance_deg };
		const region = holdingRegion(strongHang(0.3, ratio), {
			axis: 'slope',
			from: 0,
			to: 60 * degree,
			columns: 61,
			load: { from: 20, to: 130 }
		});
		expect(region.breaks).toHaveLength(1);
		within(region.breaks[0]! / degree, slipAngle_deg, tolerance);

		const load = hangLoad({ bodyMass: 70 });
		const margin = (angle: number) => evaluateHang(strongHang(angle * degree, ratio), load);
		expect(margin(slipAngle_deg - 2 * tolerance_deg).holds).toBe(true);
		expect(margin(slipAngle_deg + 2 * tolerance_deg)).toMatchObject({
			holds: false,
			limiting: 'slip'
		});
	});
});
