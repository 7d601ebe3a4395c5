import { describe, expect, test } from 'vitest';
import { counterweightForce } from '#core/index.ts';
import { pulleyForce } from '#core/strength/pulley-force.ts';
import { within } from '#test/within.ts';
import cases from './cases.json';

const degree = Math.PI / 180;

describe('outside checks: finger pulleys (Schöffl and others 2009)', () => {
	test.each(cases.fingerPulleys)('$grip: the rule against the measured pulleys', (finger) => {
		const estimate = pulleyForce(finger.fdp_N, finger.pipFlexion_deg * degree);
		within(estimate, finger.a2_N, { relative: finger.a2Tolerance });
		within(estimate, finger.a4_N, { relative: finger.a4Tolerance });
	});

	test('in slope the rule lies low, as its missing parts say', () => {
		const slope = cases.fingerPulleys.find(({ grip }) => grip === 'slope')!;
		expect(pulleyForce(slope.fdp_N, slope.pipFlexion_deg * degree)).toBeLessThan(slope.a4_N);
	});

	test('crimp loads the pulleys more than slope, per newton at the tip, as measured', () => {
		const [crimp, slope] = cases.fingerPulleys;
		const { crimp: crimpRatios, slope: slopeRatios, tolerance } = cases.printedRatios;
		const perTip = (finger: NonNullable<typeof crimp>) =>
			pulleyForce(finger.fdp_N, finger.pipFlexion_deg * degree) / finger.tip_N;
		within(perTip(crimp!), crimpRatios.a2ToTip, { relative: 0.1 });
		within(perTip(slope!), slopeRatios.a2ToTip, { relative: 0.35 });
		for (const [finger, ratios] of [
			[crimp!, crimpRatios],
			[slope!, slopeRatios]
		] as const) {
			within(finger.a2_N / finger.tip_N, ratios.a2ToTip, { absolute: tolerance });
			within(finger.a4_N / finger.tip_N, ratios.a4ToTip, { absolute: tolerance });
			within(finger.fdp_N / finger.tip_N, ratios.fdpToTip, { absolute: tolerance });
		}
		expect(perTip(crimp!)).toBeGreaterThan(perTip(slope!));
	});
});

describe('outside checks: rope pulleys', () => {
	test.each(cases.ropePulleys)('$item, efficiency $efficiency', (pulley) => {
		const { low, high } = counterweightForce(10, pulley.efficiency);
		within(Math.sqrt(low / high), pulley.efficiency, { relative: 1e-12 });
		if (pulley.low_N !== undefined) within(low, pulley.low_N, { absolute: 0.1 });
		if (pulley.high_N !== undefined) within(high, pulley.high_N, { absolute: 0.1 });
	});
});
