import { describe, expect, test } from 'vitest';
import { flatterHandArea } from '#core/mechanisms/flatter-hand.ts';
import { hertzArea } from '#core/mechanisms/hertz.ts';
import { forceOfLeastRatio, hysteresisPart } from '#core/mechanisms/hysteresis.ts';
import { interlockRatio } from '#core/mechanisms/interlock.ts';
import { anchoredCurve, effectPerDoubling } from '#core/mechanisms/load-effect.ts';
import { mechanismCurve, mechanismMargin } from '#core/mechanisms/mechanism-margin.ts';
import { moistureRatio } from '#core/mechanisms/moisture.ts';
import { grownPadArea } from '#core/mechanisms/natural-growth.ts';
import { orderDriftFactor } from '#core/mechanisms/order-drift.ts';
import { plainHang } from '#core/mechanisms/plain-hang.ts';
import { leanToSlip, ropeLeanDemand } from '#core/mechanisms/rope-lean.ts';
import { meanSlope } from '#core/mechanisms/rounded-hold.ts';
import { realContactShare, saturationRatio } from '#core/mechanisms/saturation.ts';
import { shearLossRatio } from '#core/mechanisms/shear-loss.ts';
import { settlingTimeConstant, sittingRatio } from '#core/mechanisms/sitting-time.ts';
import { squeezeDemand } from '#core/mechanisms/squeeze.ts';
import { counterweightPush, steadyPushDemand } from '#core/mechanisms/steady-push.ts';
import { swingAngleFromNudge, swingPeakFactor } from '#core/mechanisms/swing.ts';
import type { Hang } from '#core/types.ts';
import { within } from '#test/within.ts';

const base: Hang = {
	hangingMass: 70,
	ropeAngle: 0,
	hands: 2,
	slope: 0.55,
	friction: { kind: 'constant', coefficient: 0.64 },
	grip: {
		fingers: 4,
		padWidth: 0.016,
		padLength: 0.021,
		padDepth: 0.005,
		contact: { kind: 'fixed', padArea: 250e-6 }
	},
	strength: { referenceForce: 400, referenceEdgeDepth: 0.02, holdTime: 5 }
};

const growth = { padCoefficient: 1e-4, exponent: 0.3, padLimit: 3e-4 };
const settling = { coefficient: 0.5, rise: 3, timeConstant: 6 };

describe('bad numbers are named', () => {
	test.each<[string, () => unknown]>([
		['assistShare', () => ropeLeanDemand(0.5, 1, 0)],
		['lean', () => ropeLeanDemand(0.5, 0.5, Math.PI / 2)],
		['slope', () => ropeLeanDemand(NaN, 0.5, 0)],
		['netMass', () => leanToSlip({ slope: 0.5, ratio: 0.6, hangingMass: 70, netMass: 70 })],
		['ratio', () => leanToSlip({ slope: 0.5, ratio: 0, hangingMass: 70, netMass: 50 })],
		['vertical', () => steadyPushDemand(0.5, 0, 10)],
		['push', () => steadyPushDemand(0.5, 500, Infinity)],
		['assistForce', () => counterweightPush(-1, 0.1)],
		['referenceAngle', () => swingAngleFromNudge(-0.1, 70, 50)],
		['netMass', () => swingAngleFromNudge(0.1, 70, 0)],
		['angle', () => swingPeakFactor(4)],
		['squeeze', () => squeezeDemand(0.5, 500, -1)],
		['radius', () => meanSlope(0.5, 0.01, 0)],
		['patchLength', () => meanSlope(0.5, -0.01, 1)],
		['force', () => grownPadArea(0, growth)],
		['padLimit', () => grownPadArea(1, { ...growth, padLimit: 0 })],
		['modulus', () => hertzArea(1, 0.01, 0)],
		['pressure', () => saturationRatio(0, { coefficient: 0.5, saturationPressure: 1e5 })],
		['saturationPressure', () => saturationRatio(1, { coefficient: 0.5, saturationPressure: 0 })],
		['realShearStrength', () => realContactShare(0.5, 4e4, 0)],
		[
			'penetrationPressure',
			() => interlockRatio(1e5, { coefficient: 0.5, interlock: 0.1, penetrationPressure: 0 })
		],
		['deformation', () => hysteresisPart(1e5, -0.1, 1e5)],
		[
			'deformation',
			() =>
				forceOfLeastRatio({
					shearStrength: 1,
					padArea: 1e-4,
					deformation: 0,
					referenceForce: 40
				})
		],
		['time', () => sittingRatio(-1, settling)],
		['rise', () => sittingRatio(1, { ...settling, rise: 0 })],
		['fadeForce', () => sittingRatio(1, { ...settling, fadeForce: 0 })],
		['share', () => settlingTimeConstant(20, 1)],
		['width', () => moistureRatio(0.5, { dry: 0.5, peak: 1, best: 0.5, width: 0 })],
		['loss', () => shearLossRatio(1e5, { coefficient: 0.5, loss: 0.4, referencePressure: 1e5 })],
		[
			'largestFactor',
			() =>
				flatterHandArea(50, {
					padArea: 1e-4,
					referenceForce: 50,
					exponent: 1,
					largestFactor: 0.5
				})
		],
		['step', () => orderDriftFactor(50, { drift: 0.01, firstMass: 40, step: 0 })],
		['netMass', () => effectPerDoubling((m) => m, 0)],
		['point.margin', () => anchoredCurve((m) => m, { netMass: 50, margin: 0 })],
		['key', () => mechanismCurve('wish' as 'constant', base, { coefficient: 0.5 })],
		['hang.slope', () => plainHang({ ...base, slope: Math.PI / 2 }, 70)],
		['hang.ropeAngle', () => mechanismMargin('ropeLean', base, 50, { ropeAngle: 2 })]
	])('%s', (field, call) => {
		expect(call).toThrow(RangeError);
		expect(call).toThrow(new RegExp(`^${field.replace('.', '\\.')} must`));
	});
});

describe('edges of the curves', () => {
	test('where the pull leads off the hold the margin is 0, in formula and curve alike', () => {
		expect(ropeLeanDemand(1.2, 0.9, 0.3)).toBe(Infinity);
		expect(steadyPushDemand(1.2, 100, 400)).toBe(Infinity);
		const steep = { ...base, slope: 1.2 };
		expect(mechanismMargin('steadyPush', steep, 10, { push: 400 })).toBe(0);
		expect(mechanismMargin('swingSameAngle', steep, 50, { swingAngle: 0.5 })).toBe(0);
		expect(mechanismMargin('swingSameImpulse', base, 1, { swingAngle: 1 })).toBe(0);
	});

	test('on an incut hold no friction is needed, whatever the mechanism', () => {
		const incut = { ...base, slope: -0.2 };
		expect(
			mechanismMargin('interlock', incut, 70, {
				coefficient: 0.5,
				interlock: 0.1,
				penetrationPressure: 1e5
			})
		).toBe(Infinity);
		expect(mechanismMargin('squeeze', incut, 70, { squeeze: 50 })).toBe(Infinity);
	});

	test('a curve worked out by hand: interlock at 70 kg on 32°', () => {
		// N 291.07788 N on 4 × 250 mm², Q 181.885646 N: 291077.88 Pa.
		const ratio = 0.5 + 0.2 * (1 - Math.exp(-291077.88 / 150e3));
		const margin = mechanismMargin('interlock', { ...base, slope: (32 * Math.PI) / 180 }, 70, {
			coefficient: 0.5,
			interlock: 0.2,
			penetrationPressure: 150e3
		});
		within(margin, (ratio * 291.07788) / 181.885646, { relative: 1e-7 });
	});
});
