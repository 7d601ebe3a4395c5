import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { loadAtNetMass } from '#core/mechanics/load-at-net-mass.ts';
import { pulleyOffset } from '#core/mechanics/pulley-offset.ts';
import { settledRope, settledRopeAtNetMass, type PulleyRig } from '#core/mechanics/settled-rope.ts';
import { sidewaysDemand } from '#core/mechanics/sideways-demand.ts';
import { leanToSlip } from '#core/mechanisms/rope-lean.ts';
import { evaluateHang } from '#core/strength/evaluate-hang.ts';
import type { Hang } from '#core/types.ts';
import { kilogramsToNewtons } from '#core/units/force.ts';
import { within } from '#test/within.ts';

/** Spread evenly: drawn doubles crowd about 0, where nothing hangs or leans. */
function between(min: number, max: number): fc.Arbitrary<number> {
	return fc.integer({ min: 0, max: 1e6 }).map((part) => min + ((max - min) * part) / 1e6);
}

const anyRig: fc.Arbitrary<PulleyRig & { sideways: number }> = fc.record({
	height: between(0, 6),
	outward: between(-2.5, 2.5),
	sideways: fc.oneof(fc.constant(0), between(-2, 2)),
	tieIn: between(0.6, 1.5),
	centre: between(0.8, 1.4)
});
const anyPull = fc
	.record({ hangingMass: between(40, 150), share: between(0, 0.98), rig: anyRig })
	.map(({ hangingMass, share, rig }) => ({
		hangingMass,
		rig,
		assistForce: share * kilogramsToNewtons(hangingMass) * Math.min(1, rig.centre / rig.tieIn)
	}));

type Three = { x: number; y: number; z: number };
const cross = (a: Three, b: Three): Three => ({
	x: a.y * b.z - a.z * b.y,
	y: a.z * b.x - a.x * b.z,
	z: a.x * b.y - a.y * b.x
});

/** Body points and forces at rest in space, built anew from the angles: x out, y up, z aside. */
function picture(o: { hangingMass: number; assistForce: number; rig: PulleyRig }) {
	const rest = settledRope(o);
	const { rig } = o;
	const aside = Math.hypot(rig.outward, rig.sideways ?? 0);
	const [ex, ez] = aside > 0 ? [rig.outward / aside, (rig.sideways ?? 0) / aside] : [1, 0];
	const along = (length: number): Three => ({
		x: length * Math.sin(rest.bodyLean) * ex,
		y: -length * Math.cos(rest.bodyLean),
		z: length * Math.sin(rest.bodyLean) * ez
	});
	const tie = along(rig.tieIn);
	const centre = along(rig.centre);
	const pulley = { x: rig.outward, y: rig.height, z: rig.sideways ?? 0 };
	const reach = { x: pulley.x - tie.x, y: pulley.y - tie.y, z: pulley.z - tie.z };
	const length = Math.hypot(reach.x, reach.y, reach.z);
	const rope = {
		x: (o.assistForce * reach.x) / length,
		y: (o.assistForce * reach.y) / length,
		z: (o.assistForce * reach.z) / length
	};
	const weight = { x: 0, y: -kilogramsToNewtons(o.hangingMass), z: 0 };
	const hands = { x: -rest.load.horizontal, y: rest.load.vertical, z: -rest.sidewaysForce };
	return { rest, tie, centre, rope, weight, hands, length };
}

describe('a body at rest under a fixed pulley', () => {
	test('forces add to nothing, and so do their moments about the hands', () => {
		fc.assert(
			fc.property(anyPull, (pull) => {
				const { rest, tie, centre, rope, weight, hands, length } = picture(pull);
				const size = Math.abs(weight.y);
				for (const axis of ['x', 'y', 'z'] as const) {
					within(rope[axis] + weight[axis] + hands[axis], 0, { absolute: 1e-9 * size });
					const moment = cross(tie, rope)[axis] + cross(centre, weight)[axis];
					within(moment, 0, { absolute: 1e-8 * size });
				}
				within(rest.ropeLength, length, { relative: 1e-8 });
			}),
			{ numRuns: 500 }
		);
	});

	test('the lines of the three forces meet in one point', () => {
		fc.assert(
			fc.property(anyPull, (pull) => {
				const flat = { ...pull, rig: { ...pull.rig, sideways: 0 } };
				const { tie, centre, rope, hands } = picture(flat);
				fc.pre(Math.abs(rope.x) > 1e-3 && Math.abs(hands.x) > 1e-3);
				// Where the rope's line crosses the weight's plumb line …
				const y = tie.y + ((centre.x - tie.x) * rope.y) / rope.x;
				// … the pull of the hands, drawn from the hold, passes too.
				within(centre.x * hands.y - y * hands.x, 0, {
					absolute: 1e-7 * Math.hypot(hands.x, hands.y) * (1 + Math.abs(y))
				});
			}),
			{ numRuns: 500 }
		);
	});

	test('it rests where the potential energy is least nearby', () => {
		fc.assert(
			fc.property(anyPull, ({ hangingMass, assistForce, rig }) => {
				fc.pre(assistForce > 1);
				const { bodyLean } = settledRope({ hangingMass, assistForce, rig });
				const aside = Math.hypot(rig.outward, rig.sideways);
				const energy = (lean: number) =>
					-kilogramsToNewtons(hangingMass) * rig.centre * Math.cos(lean) +
					assistForce *
						Math.hypot(aside - rig.tieIn * Math.sin(lean), rig.height + rig.tieIn * Math.cos(lean));
				for (const step of [-0.02, 0.02]) {
					expect(energy(bodyLean + step)).toBeGreaterThan(energy(bodyLean) - 1e-9);
				}
			}),
			{ numRuns: 500 }
		);
	});

	test('more assist: the rope stands steeper and the body leans further', () => {
		fc.assert(
			fc.property(anyPull, between(0.5, 0.99), (pull, part) => {
				fc.pre(Math.hypot(pull.rig.outward, pull.rig.sideways) > 0.01 && pull.assistForce > 1);
				const more = settledRope(pull);
				const less = settledRope({ ...pull, assistForce: part * pull.assistForce });
				expect(more.bodyLean).toBeGreaterThan(less.bodyLean);
				// Past a right angle between rope and body the rope may lean on a little.
				fc.pre(more.bodyLean + more.lean < Math.PI / 2);
				expect(more.lean).toBeLessThan(less.lean);
			}),
			{ numRuns: 500 }
		);
	});

	test('by tension and by net mass it is the same rest', () => {
		fc.assert(
			fc.property(anyPull, ({ hangingMass, assistForce, rig }) => {
				const one = settledRope({ hangingMass, assistForce, rig });
				const least = Math.max(0, hangingMass * (1 - rig.centre / rig.tieIn));
				fc.pre(one.load.netMass > least + 0.01);
				const other = settledRopeAtNetMass(one.load.netMass, { hangingMass, rig });
				within(other.lean, one.lean, { absolute: 1e-7 });
				within(other.assistForce, assistForce, { absolute: 1e-6 });
			}),
			{ numRuns: 500 }
		);
	});

	test('the offset for a lean brings the rope to rest at that lean', () => {
		fc.assert(
			fc.property(
				anyPull,
				between(-1, 1),
				between(0.3, 0.99),
				({ hangingMass, rig }, angle, share) => {
					const netMass = share * hangingMass;
					fc.pre((hangingMass - netMass) * rig.tieIn < 0.95 * hangingMass * rig.centre);
					const outward = pulleyOffset(angle, { hangingMass, netMass, rig });
					const rest = settledRopeAtNetMass(netMass, {
						hangingMass,
						rig: { ...rig, outward, sideways: 0 }
					});
					within(rest.ropeAngle, angle, { absolute: 1e-8 });
				}
			),
			{ numRuns: 500 }
		);
	});
});

describe('a leaning rope and a constant ratio', () => {
	const anySlick: fc.Arbitrary<{ hang: Hang; ratio: number; netMass: number }> = fc
		.record({
			slope: between(0.1, 0.9),
			spare: between(0.001, 0.15),
			hangingMass: between(40, 120),
			share: between(0.2, 0.97),
			padArea: between(80e-6, 330e-6)
		})
		.map(({ slope, spare, hangingMass, share, padArea }) => {
			const ratio = Math.tan(slope + spare);
			return {
				ratio,
				netMass: share * hangingMass,
				hang: {
					hangingMass,
					ropeAngle: 0,
					hands: 2,
					slope,
					friction: { kind: 'constant', coefficient: ratio },
					grip: {
						fingers: 4,
						padWidth: 0.016,
						padLength: 0.021,
						padDepth: 0.005,
						contact: { kind: 'fixed', padArea }
					},
					strength: { referenceForce: 400, referenceEdgeDepth: 0.02, holdTime: 5 }
				}
			};
		});

	test('the lean at which the lighter hang fails has slip margin 1, and so has the pulley that gives it', () => {
		fc.assert(
			fc.property(anySlick, between(0.5, 4), ({ hang, ratio, netMass }, height) => {
				const { slope, hangingMass } = hang;
				const lean = leanToSlip({ slope, ratio, hangingMass, netMass });
				const atLean = (ropeAngle: number) =>
					evaluateHang({ ...hang, ropeAngle }, loadAtNetMass(netMass, { hangingMass, ropeAngle }))
						.slipMargin;
				within(atLean(lean), 1, { absolute: 1e-9 });
				expect(atLean(lean + 0.002)).toBeLessThan(1);
				expect(atLean(lean - 0.002)).toBeGreaterThan(1);

				const body = { height, tieIn: 1.09, centre: 1.09 };
				const outward = pulleyOffset(lean, { hangingMass, netMass, rig: body });
				const { load } = settledRopeAtNetMass(netMass, {
					hangingMass,
					rig: { ...body, outward }
				});
				within(evaluateHang(hang, load).slipMargin, 1, { absolute: 1e-8 });
			}),
			{ numRuns: 300 }
		);
	});

	test('without a sideways pull the sideways demand is the demand of the hang', () => {
		fc.assert(
			fc.property(anySlick, between(0, 0.5), ({ hang, netMass }, ropeAngle) => {
				const load = loadAtNetMass(netMass, { hangingMass: hang.hangingMass, ropeAngle });
				const { demand } = evaluateHang({ ...hang, ropeAngle }, load);
				const { vertical, horizontal: outward } = load;
				within(sidewaysDemand({ slope: hang.slope, vertical, outward }), demand, {
					relative: 1e-9
				});
			})
		);
	});
});
