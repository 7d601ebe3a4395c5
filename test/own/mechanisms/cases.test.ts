/**
 * Own, not outside: values worked out by hand from the formulas before the code was written,
 * and remembered anchors of the pad’s size. They catch slips in the code, not in the physics.
 */
import { describe, expect, test } from 'vitest';
import { frictionRatio } from '#core/friction/friction-ratio.ts';
import { loadAtNetMass } from '#core/mechanics/load-at-net-mass.ts';
import { hertzAdhesionRatio, hertzArea } from '#core/mechanisms/hertz.ts';
import { forceOfLeastRatio, hysteresisPart } from '#core/mechanisms/hysteresis.ts';
import { moistureRatio } from '#core/mechanisms/moisture.ts';
import { grownPadArea } from '#core/mechanisms/natural-growth.ts';
import { leanToSlip, ropeLeanDemand } from '#core/mechanisms/rope-lean.ts';
import { squeezeDemand } from '#core/mechanisms/squeeze.ts';
import { counterweightPush, steadyPushDemand } from '#core/mechanisms/steady-push.ts';
import { swingAngleFromNudge, swingPeakFactor } from '#core/mechanisms/swing.ts';
import { evaluateHang } from '#core/strength/evaluate-hang.ts';
import type { Hang } from '#core/types.ts';
import { contactFacts } from '#reference/contact-facts.ts';
import { rowOf } from '#reference/read.ts';
import { surfacePresets } from '#reference/surface-presets.ts';
import { within } from '#test/within.ts';

const degree = Math.PI / 180;
const g = 9.80665;

const base: Hang = {
	hangingMass: 70,
	ropeAngle: 0,
	hands: 2,
	slope: 31 * degree,
	friction: { kind: 'constant', coefficient: 0.64 },
	grip: {
		fingers: 4,
		padWidth: 0.016,
		padLength: 0.021,
		padDepth: 0.005,
		contact: { kind: 'fixed', padArea: 250e-6 }
	},
	strength: { referenceForce: 40 * g, referenceEdgeDepth: 0.02, holdTime: 5 }
};

describe('rope, push, squeeze, swing', () => {
	test('a plumb pull asks for the tangent of the slope at every load', () => {
		for (const vertical of [100, 350, 700, 1200]) {
			within(steadyPushDemand(33 * degree, vertical, 0), 0.649408, { relative: 1e-6 });
			within(squeezeDemand(33 * degree, vertical, 0), 0.649408, { relative: 1e-6 });
		}
		for (const share of [0, 0.25, 0.5, 0.9])
			within(ropeLeanDemand(33 * degree, share, 0), 0.649408, { relative: 1e-6 });
	});

	test.each([
		[33, 0.1, 5, 0.663],
		[33, 0.25, 5, 0.692],
		[33, 0.5, 2, 0.7],
		[33, 0.5, 5, 0.7813],
		[33, 0.5, -5, 0.5317],
		[33, 0.75, 5, 1.099],
		[20, 0.5, 5, 0.466]
	])('slope %d°, share %d, lean %d°: demand %d', (slope, share, lean, expected) => {
		within(ropeLeanDemand(slope * degree, share, lean * degree), expected, { absolute: 1e-3 });
	});

	test('100 N at 10° on a person of 700 N: needed ratio at 25° either way', () => {
		const share = (100 * Math.cos(10 * degree)) / 700;
		within(ropeLeanDemand(25 * degree, share, 10 * degree), 0.5019, { absolute: 1e-4 });
		within(ropeLeanDemand(25 * degree, share, -10 * degree), 0.4316, { absolute: 1e-4 });
		within(counterweightPush(100, 10 * degree), 17.3648, { absolute: 1e-4 });
	});

	test('the rope formula, the push formula and a whole hang agree', () => {
		for (const [netMass, lean] of [
			[35, 0.05],
			[55, 0.1],
			[55, -0.2],
			[20, 0.3]
		] as const) {
			const share = 1 - netMass / 70;
			const vertical = netMass * g;
			const push = (70 - netMass) * g * Math.tan(lean);
			const whole = evaluateHang(
				{ ...base, ropeAngle: lean },
				loadAtNetMass(netMass, { hangingMass: 70, ropeAngle: lean })
			);
			within(ropeLeanDemand(base.slope, share, lean), whole.demand, { relative: 1e-12 });
			within(steadyPushDemand(base.slope, vertical, push), whole.demand, { relative: 1e-12 });
		}
	});

	test('the lean that makes the light hang slip is the one at which the whole hang’s margin is 1', () => {
		const o = { slope: base.slope, ratio: 0.64, hangingMass: 70, netMass: 55 };
		const lean = leanToSlip(o);
		within(lean, 0.10328, { absolute: 1e-5 });
		const at = (ropeAngle: number) =>
			evaluateHang({ ...base, ropeAngle }, loadAtNetMass(55, { hangingMass: 70, ropeAngle }))
				.slipMargin;
		within(at(lean), 1, { relative: 1e-12 });
		expect(at(lean + 0.001)).toBeLessThan(1);
		// On a hold too steep to hold even plumb the lean is toward the wall.
		expect(leanToSlip({ ...o, slope: 34 * degree })).toBeLessThan(0);
	});

	test('a squeeze of 100 N at 33°', () => {
		within(squeezeDemand(33 * degree, 350, 100), 0.484, { absolute: 5e-4 });
		within(squeezeDemand(33 * degree, 700, 100), 0.555, { absolute: 5e-4 });
	});

	test('swing', () => {
		within(swingPeakFactor(5 * degree), 1.0076, { absolute: 1e-4 });
		within(swingPeakFactor(10 * degree), 1.0304, { absolute: 1e-4 });
		within(swingPeakFactor(20 * degree), 1.1206, { absolute: 1e-4 });
		within(swingAngleFromNudge(3 * degree, 70, 35), 0.074057, { absolute: 1e-6 });
		// With added mass both inertia and pull grow: a small swing halves when the mass doubles.
		within(swingAngleFromNudge(3 * degree, 70, 140), 1.5 * degree, { relative: 1e-3 });
		expect(swingAngleFromNudge(60 * degree, 70, 5)).toBe(Math.PI);
	});
});

describe('friction formulas', () => {
	test('a soft ball that only sticks: eight times the force, half the ratio', () => {
		const ball = { radius: 0.0085, modulus: 40e3, shearStrength: 5e3 };
		within(hertzAdhesionRatio(8, ball) / hertzAdhesionRatio(1, ball), 0.5, { relative: 1e-9 });
	});

	test('Hertz area of a fingertip: fair at 1 N, impossible at 50 N', () => {
		within(hertzArea(1, 0.0085, 40e3), 76e-6, { relative: 0.01 });
		within(hertzArea(1, 0.0085, 20e3), 121e-6, { relative: 0.01 });
		within(hertzArea(50, 0.0085, 40e3), 1035e-6, { relative: 0.01 });
		within(hertzArea(50, 0.0085, 20e3), 1642e-6, { relative: 0.01 });
	});

	test('two terms: the same at the same pressure, falling as τ A/n² on the same patch', () => {
		const law = { kind: 'adhesion', coefficient: 0.43, shearStrength: 3700 } as const;
		const at = (n: number, a: number) => frictionRatio(law, n / a);
		within(at(80, 700e-6), at(40, 350e-6), { relative: 1e-12 });
		const step = 1e-4;
		const slope = (at(40 + step, 350e-6) - at(40 - step, 350e-6)) / (2 * step);
		within(slope, (-3700 * 350e-6) / 1600, { relative: 1e-6 });
	});

	test('deformation: eight times the pressure, twice the part', () => {
		within(hysteresisPart(8e5, 0.1, 114e3) / hysteresisPart(1e5, 0.1, 114e3), 2, {
			relative: 1e-9
		});
	});

	// Rows: shear strength in kPa; columns: deformation part 0.02, 0.05, 0.1, 0.2; force in N.
	test.each([
		[1, [49, 25, 15, 9]],
		[3, [112, 56, 33, 20]],
		[5, [164, 83, 49, 29]],
		[10, [276, 139, 83, 49]]
	])('force of the least ratio at %d kPa', (kilopascals, expected) => {
		[0.02, 0.05, 0.1, 0.2].forEach((deformation, column) => {
			const force = forceOfLeastRatio({
				shearStrength: kilopascals * 1000,
				padArea: 350e-6,
				deformation,
				referenceForce: 40
			});
			within(force, expected[column]!, { absolute: 0.6 });
		});
	});

	test('the least ratio: 33.4 N, and it is a minimum of the law', () => {
		const force = forceOfLeastRatio({
			shearStrength: 3000,
			padArea: 350e-6,
			deformation: 0.1,
			referenceForce: 40
		});
		within(force, 33.4, { relative: 0.005 });
		const law = {
			kind: 'deformation',
			coefficient: 0.45,
			shearStrength: 3000,
			deformation: 0.1,
			referencePressure: 40 / 350e-6
		} as const;
		const at = (n: number) => frictionRatio(law, n / 350e-6);
		for (const other of [0.7, 0.95, 1.05, 1.4])
			expect(at(force * other)).toBeGreaterThan(at(force));
	});

	test('moisture: highest inside, lower at both ends', () => {
		const bell = { dry: 0.4, peak: 0.8, best: 0.5, width: 0.15 };
		const at = (w: number) => moistureRatio(w, bell);
		within(at(0.5), 1.2, { relative: 1e-12 });
		for (const w of [0, 0.3, 0.45, 0.55, 0.8, 1]) expect(at(w)).toBeLessThan(at(0.5));
		expect(at(0)).toBeLessThan(at(0.3));
		expect(at(1)).toBeLessThan(at(0.8));
	});

	test('three readings of one pad study spread at 80 N', () => {
		within(0.832 * Math.pow(80, -0.206), 0.338, { absolute: 0.002 });
		const power = frictionRatio(rowOf(surfacePresets, 'power-measured').law, 80 / 350e-6);
		const twoTerm = frictionRatio(rowOf(surfacePresets, 'moist-smooth-measured').law, 80 / 110e-6);
		within(power, 0.338, { absolute: 0.003 });
		within(twoTerm, 0.434, { absolute: 0.003 });
	});

	test('presets from 40 to 80 N a pad', () => {
		const change = (key: string) => {
			const { law } = rowOf(surfacePresets, key);
			return frictionRatio(law, 80 / 350e-6) / frictionRatio(law, 40 / 350e-6) - 1;
		};
		within(change('dry-generic'), 0.002, { absolute: 0.0005 });
		within(change('dry-rough'), 0.03, { absolute: 0.003 });
		within(change('moist-smooth'), -0.05, { absolute: 0.011 });
	});
});

describe('size of the pad (from memory and derived)', () => {
	const fact = (key: string) => rowOf(contactFacts, key);
	const growth = {
		padCoefficient: fact('pad-coefficient').value!,
		exponent: fact('pad-exponent').value!,
		padLimit: fact('pad-limit').value!
	};

	test('at 1, 5, 10 and 50 N', () => {
		within(grownPadArea(1, growth), 110e-6, { relative: 1e-12 });
		within(grownPadArea(5, growth), 190e-6, { relative: 0.05 });
		within(grownPadArea(10, growth), 230e-6, { relative: 0.01 });
		within(grownPadArea(50, growth), fact('pad-at-hang').value!, { relative: 0.07 });
	});

	test('mean pressure at 50 N, and the load of a finger in a two-hand hang', () => {
		const [low, high] = fact('pressure-at-fifty').range!;
		const pressure = 50 / grownPadArea(50, growth);
		expect(pressure).toBeGreaterThan(low);
		expect(pressure).toBeLessThan(high);
		within((70 * g) / 8, 85.8, { absolute: 0.1 });
		within(loadAtNetMass(70, base).vertical / 8, 85.8, { absolute: 0.1 });
	});
});
