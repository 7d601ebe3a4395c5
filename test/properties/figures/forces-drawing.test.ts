import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { hangLoad } from '#core/mechanics/hang-load.ts';
import { loadFromForces } from '#core/mechanics/load-from-forces.ts';
import { evaluateHang } from '#core/strength/evaluate-hang.ts';
import type { FrictionLaw, Hang } from '#core/types.ts';
import { headBox, ringBox } from '#figures/forces/arrows.ts';
import { describeForces } from '#figures/forces/describe-forces.ts';
import { boxToSegment, contains, crosses, overlaps } from '#figures/forces/geometry.ts';
import { layoutForces } from '#figures/forces/layout.ts';
import { forcesOnPerson } from '#figures/forces/person-part.ts';
import type { ForcesShown, HandPart, PersonPart } from '#figures/forces/types.ts';
import { within } from '#test/within.ts';

const degree = Math.PI / 180;
const between = (min: number, max: number) =>
	// Slider ends are where drawings break, so they come up often.
	fc.oneof(
		{ weight: 1, arbitrary: fc.constantFrom(min, max) },
		{ weight: 3, arbitrary: fc.double({ min, max, noNaN: true }) }
	);
const orZero = (min: number, max: number) =>
	fc.oneof({ weight: 1, arbitrary: fc.constant(0) }, { weight: 2, arbitrary: between(min, max) });

const law: fc.Arbitrary<FrictionLaw> = fc.oneof(
	between(0.05, 2).map((coefficient) => ({ kind: 'constant' as const, coefficient })),
	between(0.3, 1).map((coefficient) => ({
		kind: 'film' as const,
		...{ filmCoefficient: 0.2, coefficient, breakthroughPressure: 150e3, sharpness: 1 }
	}))
);

const shown: fc.Arbitrary<ForcesShown> = fc
	.record({
		bodyMass: between(30, 150),
		addedMass: orZero(0, 60),
		assist: orZero(0, 0.95),
		ropeAngle: orZero(-20, 30),
		push: orZero(-150, 150),
		slope: orZero(-15, 60),
		radius: fc.option(between(0.02, 0.5), { nil: undefined }),
		fingers: fc.integer({ min: 1, max: 4 }),
		hands: fc.constantFrom<(1 | 2)[]>(1, 2),
		padArea: between(80e-6, 330e-6),
		forceUnit: fc.constantFrom('N' as const, 'kgf' as const, 'lbf' as const),
		friction: law
	})
	.map((o) => {
		const ropeAngle = o.ropeAngle * degree;
		const plain = hangLoad({ bodyMass: o.bodyMass, addedMass: o.addedMass });
		const assistForce = o.assist * plain.vertical;
		const pulled = hangLoad({
			...{ bodyMass: o.bodyMass, addedMass: o.addedMass, assistForce },
			assistAngle: ropeAngle
		});
		const load = loadFromForces(pulled.vertical, pulled.horizontal + o.push);
		const hang: Hang = {
			...{ hangingMass: o.bodyMass + o.addedMass, ropeAngle, push: o.push, hands: o.hands },
			...{ slope: o.slope * degree, friction: o.friction },
			...(o.radius === undefined ? {} : { radius: o.radius }),
			grip: {
				...{ fingers: o.fingers, padWidth: 0.016, padLength: 0.021, padDepth: 0.005 },
				contact: { kind: 'fixed', padArea: o.padArea }
			},
			strength: { referenceForce: 392, referenceEdgeDepth: 0.02, holdTime: 5 }
		};
		const { bodyMass, addedMass, push, forceUnit } = o;
		const person = { bodyMass, addedMass, assistForce, ropeAngle, push };
		return { hang, load, contact: evaluateHang(hang, load), person, forceUnit };
	});

const width = fc.oneof(
	fc.constantFrom(340, 358, 459, 460, 560, 720),
	fc.integer({ min: 300, max: 900 })
);
const runs = { numRuns: 250 };

const ringsOf = (part: PersonPart | HandPart) =>
	'ropeTip' in part ? [ringBox(part.ropeTip)] : [ringBox(part.slopeEnd)];

const textsOf = (part: PersonPart | HandPart) => [
	...part.labels.map(({ id, box }) => ({ id, box })),
	{ id: 'title', box: part.title.box },
	{ id: 'bar', box: part.bar.box },
	...('note' in part ? [{ id: 'note', box: part.note.box }] : [])
];

function forEachPart(check: (part: PersonPart | HandPart, shown: ForcesShown) => void) {
	fc.assert(
		fc.property(shown, width, (state, wide) => {
			const drawing = layoutForces(state, wide);
			check(drawing.person, state);
			check(drawing.hand, state);
		}),
		runs
	);
}

describe('the free-body diagram, at any set-up and width', () => {
	test('no two texts overlap, and none leaves its part of the figure', () => {
		forEachPart((part) => {
			const texts = textsOf(part);
			for (const [i, one] of texts.entries()) {
				expect(contains(part.frame, one.box), `${one.id} leaves the frame`).toBe(true);
				for (const other of texts.slice(i + 1)) {
					expect(overlaps(one.box, other.box), `${one.id} on ${other.id}`).toBe(false);
				}
			}
		});
	});

	test('no label covers an arrow’s head or a handle', () => {
		forEachPart((part) => {
			for (const { id, box } of part.labels) {
				for (const arrow of part.arrows) {
					expect(overlaps(box, headBox(arrow)), `${id} on the head of ${arrow.id}`).toBe(false);
				}
				for (const ring of ringsOf(part)) {
					expect(overlaps(box, ring), `${id} on a handle`).toBe(false);
				}
			}
		});
	});

	test('arrows and handles stay in the frame', () => {
		forEachPart((part) => {
			for (const arrow of part.arrows) {
				expect(contains(part.frame, headBox(arrow)), `${arrow.id} leaves the frame`).toBe(true);
				expect(overlaps(headBox(arrow), part.title.box), `${arrow.id} on the title`).toBe(false);
				expect(overlaps(headBox(arrow), part.bar.box), `${arrow.id} on the bar`).toBe(false);
			}
			for (const ring of ringsOf(part)) expect(contains(part.frame, ring)).toBe(true);
		});
	});

	test('each label is nearest to its own arrow, or a leader leads to it', () => {
		forEachPart((part) => {
			for (const { id, box, leader } of part.labels) {
				const own = part.arrows.find((arrow) => arrow.id === id);
				if (!own) continue;
				if (leader) {
					const end = { x: leader.to.x, y: leader.to.y, width: 0, height: 0 };
					within(boxToSegment(end, own.segment), 0, { absolute: 1e-6 });
					for (const other of part.labels) {
						if (other.id !== id) expect(crosses(leader, other.box), `${id}’s leader`).toBe(false);
					}
					continue;
				}
				const distance = boxToSegment(box, own.segment);
				for (const other of part.arrows) {
					if (other === own) continue;
					expect(distance, `${id} is nearer to ${other.id}`).toBeLessThan(
						boxToSegment(box, other.segment)
					);
				}
			}
		});
	});

	test('every force that is not zero has an arrow of its own length, at one scale a part', () => {
		forEachPart((part, state) => {
			if ('ropeTip' in part) {
				const drawn = Object.entries(forcesOnPerson(state))
					.filter(([, force]) => Math.hypot(force.x, force.y) >= 1e-9)
					.map(([name]) => name);
				expect(part.arrows.map(({ id }) => id)).toEqual(drawn);
			}
			for (const { force, segment, id } of part.arrows) {
				const size = Math.hypot(force.x, force.y);
				const dx = segment.to.x - segment.from.x;
				const dy = segment.to.y - segment.from.y;
				expect(Math.abs(dx - force.x * part.scale), id).toBeLessThan(1e-9);
				expect(Math.abs(dy + force.y * part.scale), id).toBeLessThan(1e-9);
				within(Math.hypot(dx, dy), size * part.scale, { absolute: 1e-9 });
			}
			const { from, to } = part.bar.segment;
			within(to.x - from.x, part.bar.newtons * part.scale, { relative: 1e-9 });
		});
	});

	test('the arrows on the person add up to nothing, and those on the hand to the contact force', () => {
		fc.assert(
			fc.property(shown, width, (state, wide) => {
				const { person, hand } = layoutForces(state, wide);
				const sum = (axis: 'x' | 'y', arrows: PersonPart['arrows']) =>
					arrows.reduce((total, { segment }) => total + segment.to[axis] - segment.from[axis], 0);
				within(sum('x', person.arrows), 0, { absolute: 1e-9 });
				within(sum('y', person.arrows), 0, { absolute: 1e-9 });
				const whole = hand.arrows.filter(({ id }) => id === 'force');
				const parts = hand.arrows.filter(({ id }) => id !== 'force');
				// Components too small for an arrow may be missing from the sum.
				within(sum('x', parts), sum('x', whole), { absolute: 1e-6 });
				within(sum('y', parts), sum('y', whole), { absolute: 1e-6 });
			}),
			runs
		);
	});

	test('the force’s tip lies in the cone exactly when friction suffices', () => {
		fc.assert(
			fc.property(shown, (state) => {
				const { hand } = layoutForces(state, 720);
				const force = hand.arrows.find(({ id }) => id === 'force')!.segment.to;
				const { tangential, frictionLimit } = state.contact;
				if (frictionLimit <= 0) {
					expect(hand.cone).toBeUndefined();
					return;
				}
				// Too close to the edge to tell within the rounding of the drawing.
				const { scale } = hand;
				if (Math.abs(Math.abs(tangential) - frictionLimit) * scale < 1e-6) return;
				if (frictionLimit * scale < 1e-3) return;
				const [apex, left, right] = hand.cone!;
				const side = (to: typeof apex) =>
					(to.x - apex.x) * (force.y - apex.y) - (to.y - apex.y) * (force.x - apex.x);
				expect(side(left) > 0 && side(right) < 0).toBe(Math.abs(tangential) < frictionLimit);
				expect(hand.inside).toBe(Math.abs(tangential) < frictionLimit);
			}),
			runs
		);
	});

	test('nothing in drawing or words is NaN, infinite or in exponent form', () => {
		fc.assert(
			fc.property(shown, width, (state, wide) => {
				const drawn = JSON.stringify(layoutForces(state, wide), (_, value) =>
					typeof value === 'number' && !Number.isFinite(value) ? 'NaN' : value
				);
				expect(drawn).not.toMatch(/NaN|Infinity|undefined/);
				const words = describeForces(state);
				expect(words).not.toMatch(/NaN|Infinity|undefined|\de[-+]?\d|-\d/);
				expect(words).not.toMatch(/\b1 fingers|[2-4] finger\b| {2}|\.\./);
			}),
			runs
		);
	});
});
