import { describe, expect, test } from 'vitest';
import { evaluateHang, hangLoad, holdingRegion, type Hang, type Load } from '#core/index.ts';
import { within } from '#test/within.ts';
import cases from './cases.json';

// Outside checks: printed answers of textbooks; README.md says which, and how each one maps.

const degree = Math.PI / 180;
const standard = 9.80665;
const poundForce = 0.45359237 * standard;

/** A block on a plane: one pad, one hand, strength without end. */
function block(angle: number, ratio: number): Hang {
	return {
		hangingMass: 1,
		ropeAngle: 0,
		hands: 1,
		slope: angle * degree,
		friction: { kind: 'constant', coefficient: ratio },
		grip: {
			fingers: 1,
			padWidth: 0.01,
			padLength: 0.02,
			padDepth: 0,
			contact: { kind: 'fixed', padArea: 1e-4 }
		},
		strength: { referenceForce: 1e9, referenceEdgeDepth: 0.01, holdTime: 5 }
	};
}

/** A block's load under a pull whose direction is given in degrees from straight up. */
function pulled(weight: number, pull = 0, fromUp = 0): Load {
	return hangLoad({
		bodyMass: weight / standard,
		assistForce: pull,
		assistAngle: fromUp * degree
	});
}

/** The number between two bounds at which a hang stops (or begins) to hold. */
function limitOf(holds: (value: number) => boolean, from: number, to: number): number {
	const first = holds(from);
	expect(holds(to)).not.toBe(first);
	let [low, high] = [from, to];
	for (let i = 0; i < 60; i++) {
		const middle = (low + high) / 2;
		if (holds(middle) === first) low = middle;
		else high = middle;
	}
	return low;
}

function agrees(value: number, published: { value: number; tolerance: number }) {
	within(value, published.value, { absolute: published.tolerance });
}

describe('outside checks: published inclines', () => {
	test('b09: crate about to slip on 37° (OpenStax University Physics 1, ch. 6, problem 111)', () => {
		const { given, published } = cases.b09;
		const { angle_deg: angle, mass_kg: mass } = given;
		const weight = mass * given.g;
		const fromUp = 90 - angle;
		const staticRatio = evaluateHang(block(angle, 1), pulled(weight)).demand;
		agrees(staticRatio, published.staticRatio);

		const kinetic = given.kineticOverStatic * staticRatio;
		const up = (ratio: number, pull: number) =>
			evaluateHang(block(-angle, ratio), pulled(weight, pull, fromUp));
		const left = (result: ReturnType<typeof evaluateHang>) =>
			(result.tangential - result.frictionLimit) / mass;

		const largest = limitOf((pull) => up(staticRatio, pull).holds, 700, 1600);
		agrees(largest, published.largestPullUp_N);
		agrees(left(up(kinetic, largest)), published.accelerationUp);
		agrees(
			limitOf((pull) => up(kinetic, pull).holds, 700, 1600),
			published.steadyPullUp_N
		);

		const down = (pull: number) =>
			evaluateHang(block(angle, kinetic), pulled(weight, pull, -fromUp));
		agrees(left(down(0)), published.accelerationDown);
		agrees(
			limitOf((pull) => down(pull).holds, 0, 500),
			published.steadyRopeDown_N
		);
	});

	test('b13: largest angle for a ratio of 0.3 (Verma, example 6.1)', () => {
		const { given, published } = cases.b13;
		const load = pulled(100);
		const steepest = limitOf((angle) => evaluateHang(block(angle, given.ratio), load).holds, 0, 80);
		agrees(steepest, published.angle_deg);
		const region = holdingRegion(block(10, given.ratio), {
			axis: 'slope',
			from: 0,
			to: 1,
			columns: 20,
			load: { from: 20, to: 130 }
		});
		expect(region.breaks).toHaveLength(1);
		agrees(region.breaks[0]! / degree, published.angle_deg);
	});

	test('b14: ratio for a limiting tilt of 25° (Hibbeler and Gupta, example 8.2)', () => {
		const { given, published } = cases.b14;
		agrees(evaluateHang(block(given.angle_deg, 1), pulled(100)).demand, published.ratio);
	});

	test('b15: kinetic ratio from an acceleration of g/4 on 30° (Verma, example 6.5)', () => {
		const { given, published } = cases.b15;
		const { tangential, normal } = evaluateHang(block(given.angle_deg, 0.5), pulled(100));
		agrees((tangential - 100 * given.accelerationOverG) / normal, published.kineticRatio);
	});

	test('b18: 300 lb sideways on a 200 lb block on 30° (McLean and Nelson, problem 9-4)', () => {
		const { given, published } = cases.b18;
		const load = pulled(given.weight_lb * poundForce, given.horizontal_lb * poundForce, 90);
		const result = evaluateHang(block(-given.angle_deg, given.ratio), load);
		agrees(result.tangential / poundForce, published.needed_lb);
		agrees(result.normal / poundForce, published.normal_lb);
		agrees(result.frictionLimit / poundForce, published.available_lb);
		expect(result.holds).toBe(false);
	});

	test('b19: least force along a 45° plane (Martin and others, question 101)', () => {
		const { given, published } = cases.b19;
		const { angle_deg: angle, ratio } = given;
		const weight = given.mass_kg * given.g;
		const least = limitOf(
			(pull) => evaluateHang(block(angle, ratio), pulled(weight, pull, angle - 90)).holds,
			0,
			60
		);
		agrees(least, published.leastForce_N);
	});

	test('b21: weight and ratio from two efforts (Khurmi and Gupta, example 10.2)', () => {
		const { given, published } = cases.b21;
		// Two limiting efforts, two unknowns: pull = weight · sin + ratio · weight · cos.
		const [one, two] = given.efforts.map(({ pull_N: pull, angle_deg: angle }) => {
			const unit = evaluateHang(block(angle, 1), pulled(1));
			return { pull, along: unit.tangential, into: unit.normal };
		});
		const determinant = one!.along * two!.into - two!.along * one!.into;
		const weight = (one!.pull * two!.into - two!.pull * one!.into) / determinant;
		const friction = (one!.along * two!.pull - two!.along * one!.pull) / determinant;
		agrees(weight, published.weight_N);
		agrees(friction / weight, published.ratio);
		for (const { pull_N: pull, angle_deg: angle } of given.efforts) {
			const load = pulled(published.weight_N.value, pull, 90 - angle);
			const { slipMargin } = evaluateHang(block(-angle, published.ratio.value), load);
			within(slipMargin, 1, { absolute: 0.004 });
		}
	});
});
