import { describe, expect, test } from 'vitest';
import { anchorForce } from '#core/mechanics/anchor-force.ts';
import { hangLoad } from '#core/mechanics/hang-load.ts';
import { pulleyOffset } from '#core/mechanics/pulley-offset.ts';
import { settledRope, settledRopeAtNetMass } from '#core/mechanics/settled-rope.ts';
import { sidewaysDemand } from '#core/mechanics/sideways-demand.ts';
import { kilogramsToNewtons } from '#core/units/force.ts';
import { within } from '#test/within.ts';

const rig = { height: 2, outward: 0.5, tieIn: 1.09, centre: 1.09 };
const degree = Math.PI / 180;

describe('a body at rest under a fixed pulley', () => {
	test('with no tension the body hangs plumb and the slack rope points at the pulley', () => {
		const { bodyLean, ropeAngle, load } = settledRope({ hangingMass: 70, assistForce: 0, rig });
		within(bodyLean, 0, { absolute: 1e-15 });
		within(ropeAngle, Math.atan(0.5 / (2 + 1.09)), { relative: 1e-12 });
		within(load.vertical, kilogramsToNewtons(70), { relative: 1e-12 });
		within(load.horizontal, 0, { absolute: 1e-15 });
	});

	test('a pulley plumb above the hands leans nothing', () => {
		const rest = settledRope({ hangingMass: 70, assistForce: 200, rig: { ...rig, outward: 0 } });
		expect([rest.lean, rest.bodyLean, rest.load.tilt]).toEqual([0, 0, 0]);
		within(rest.load.vertical, kilogramsToNewtons(70) - 200, { relative: 1e-12 });
	});

	test('tied at the centre of mass the body lies along the pull of the hands', () => {
		const rest = settledRope({ hangingMass: 70, assistForce: 250, rig });
		within(rest.bodyLean, rest.load.tilt, { absolute: 1e-12 });
		const plain = hangLoad({ bodyMass: 70, assistForce: 250, assistAngle: rest.ropeAngle });
		within(rest.load.vertical, plain.vertical, { relative: 1e-12 });
		within(rest.load.horizontal, plain.horizontal, { relative: 1e-12 });
	});

	test('when nearly everything hangs from the rope it hangs nearly plumb beneath the pulley', () => {
		const { ropeAngle, bodyLean } = settledRopeAtNetMass(0.01, { hangingMass: 70, rig });
		expect(ropeAngle).toBeLessThan(0.0002);
		within(1.09 * Math.sin(bodyLean), 0.5, { absolute: 1e-3 });
	});

	test('a pulley to one side as well turns the same rest about the plumb line', () => {
		const plain = settledRope({ hangingMass: 70, assistForce: 150, rig });
		const turned = settledRope({
			hangingMass: 70,
			assistForce: 150,
			rig: { ...rig, outward: 0.3, sideways: -0.4 }
		});
		within(turned.lean, plain.lean, { relative: 1e-12 });
		within(turned.load.horizontal, 0.6 * plain.load.horizontal, { relative: 1e-12 });
		within(turned.sidewaysForce, -0.8 * plain.load.horizontal, { relative: 1e-12 });
	});

	test('a rope that would carry everything, a pulley beneath the hold: refused by name', () => {
		expect(() => settledRope({ hangingMass: 70, assistForce: 700, rig })).toThrow(/assistForce/);
		expect(() => settledRope({ hangingMass: 70, assistForce: NaN, rig })).toThrow(RangeError);
		expect(() => settledRopeAtNetMass(71, { hangingMass: 70, rig })).toThrow(/netMass/);
		expect(() =>
			settledRopeAtNetMass(50, { hangingMass: 70, rig: { ...rig, height: -1 } })
		).toThrow(/rig.height/);
		// Tied lower than the centre of mass, the body would be turned over before it is lifted.
		expect(() =>
			settledRopeAtNetMass(10, { hangingMass: 70, rig: { ...rig, tieIn: 1.4 } })
		).toThrow(/netMass must be a number above 15.5/);
		expect(() => pulleyOffset(Math.PI / 2, { hangingMass: 70, netMass: 50, rig })).toThrow(
			/ropeAngle/
		);
	});
});

describe('the anchor and the sideways pull', () => {
	test('two strands side by side add up; opposite ones cancel', () => {
		within(anchorForce({ bodyStrand: 118.2, weightStrand: 98.1, angle: 0 }), 216.3, {
			relative: 1e-12
		});
		within(anchorForce({ bodyStrand: 100, weightStrand: 100, angle: Math.PI }), 0, {
			absolute: 1e-12
		});
		within(anchorForce({ bodyStrand: 100, weightStrand: 100, angle: Math.PI / 2 }), 141.4214, {
			absolute: 1e-4
		});
	});

	test('demand is tan σ without lean, tan(σ + δ) outward, and grows in the second order sideways', () => {
		const slope = 25 * degree;
		within(sidewaysDemand({ slope, vertical: 600 }), Math.tan(slope), { relative: 1e-12 });
		// Printed for a 700 N person with 100 N of rope, 10° out: tilt 1.654°, ratio 0.5019.
		within(sidewaysDemand({ slope, vertical: 601.52, outward: 17.36 }), 0.5019, {
			absolute: 1e-4
		});
		const aside = sidewaysDemand({ slope, vertical: 601.52, sideways: 17.36 });
		const rise = aside / Math.tan(slope) - 1;
		within(rise, (17.36 / (601.52 * Math.sin(slope))) ** 2 / 2, { relative: 2e-3 });
		within(sidewaysDemand({ slope, vertical: 600, sideways: -90 }), aside, { absolute: 0.05 });
		expect(sidewaysDemand({ slope: 60 * degree, vertical: 100, outward: 80 })).toBe(Infinity);
		within(sidewaysDemand({ slope: 0, vertical: 500, sideways: 50 }), 0.1, { relative: 1e-12 });
	});
});
