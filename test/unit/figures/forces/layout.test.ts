import { describe, expect, test } from 'vitest';
import { layoutForces } from '#figures/forces/layout.ts';
import { within } from '#test/within.ts';
import { degree, scene } from './scene.ts';

const hand = (change: Parameters<typeof scene>[0]) => layoutForces(scene(change), 720).hand;
const person = (change: Parameters<typeof scene>[0]) => layoutForces(scene(change), 720).person;
const ids = (part: { arrows: { id: string }[] }) => part.arrows.map(({ id }) => id);

/** Every shown quantity of the drawing with its SI value. */
function quantities(change: Parameters<typeof scene>[0]): Record<string, number> {
	const drawing = layoutForces(scene(change), 358);
	const texts = [
		...drawing.person.labels,
		...drawing.hand.labels,
		drawing.hand.title,
		drawing.hand.note
	];
	return Object.fromEntries(
		texts
			.flatMap(({ lines }) => lines.flat())
			.flatMap(({ quantity, value }) => (quantity ? [[quantity, value!]] : []))
	);
}

describe('what the free-body diagram draws', () => {
	test('no arrow for a force that is not there', () => {
		expect(ids(person({}))).toEqual(['weight', 'hold']);
		expect(ids(person({ assistForce: 80, push: -20 }))).toEqual(['weight', 'rope', 'push', 'hold']);
		expect(ids(hand({ slope: 0 }))).toEqual(['force', 'normal']);
	});

	test('the cone opens by the angle whose tangent is the friction ratio', () => {
		const [apex, left, right] = hand({ coefficient: 0.64 }).cone!;
		const angle = (to: typeof apex) => Math.atan2(apex.y - to.y, to.x - apex.x);
		within((angle(left) - angle(right)) / 2, Math.atan(0.64), { absolute: 1e-9 });
		// About the normal, 32° from plumb.
		within((angle(left) + angle(right)) / 2, 58 * degree, { absolute: 1e-9 });
	});

	test('the limit’s tick stands where friction ends', () => {
		const part = hand({});
		const { from, to } = part.limit!.line;
		within(Math.hypot(to.x - from.x, to.y - from.y), 0.64 * 291.07788 * part.scale, {
			relative: 1e-6
		});
	});

	test('inside, outside and off the hold', () => {
		expect(hand({}).inside).toBe(true);
		expect(hand({ slope: 33 * degree }).inside).toBe(false);
		const off = hand({ slope: 60 * degree, assistForce: 540, ropeAngle: 30 * degree });
		expect(off.inside).toBe(false);
		expect(off.cone).toBeUndefined();
		expect(off.patch).toBeUndefined();
	});

	test('as many fingers as lie on the hold, and a patch as long as its area asks', () => {
		for (const fingers of [1, 2, 3, 4]) expect(hand({ fingers }).fingers).toHaveLength(fingers);
		const length = (padArea: number) => {
			const ends = hand({ slope: 0, padArea })
				.patch!.match(/[\d.]+/g)!
				.map(Number);
			return ends[ends.length - 2]! - ends[0]!;
		};
		within(length(320e-6) / length(160e-6), 2, { relative: 0.01 });
	});

	test('the tilt’s arc appears with the tilt', () => {
		expect(hand({}).tiltArc).toBeUndefined();
		expect(person({}).tiltArc).toBeUndefined();
		const leaning = { assistForce: 200, ropeAngle: 15 * degree };
		expect(hand(leaning).tiltArc).toBeDefined();
		expect(person(leaning).tiltArc).toBeDefined();
	});

	test('the person leans from the hold by the tilt', () => {
		const change = { assistForce: 200, ropeAngle: 15 * degree };
		const { hold, centre } = person(change);
		const { tilt } = scene(change).load;
		within(Math.atan2(centre.x - hold.x, centre.y - hold.y), tilt, { absolute: 1e-9 });
	});

	test('every shown number carries its field and its full SI value', () => {
		const shown = scene({ assistForce: 200, ropeAngle: 15 * degree, push: 5, radius: 0.06 });
		const values = quantities({ assistForce: 200, ropeAngle: 15 * degree, push: 5, radius: 0.06 });
		const { contact, load, person: body, hang } = shown;
		const { force, normal, tangential, frictionLimit, ratio, demand, padArea, meanSlope } = contact;
		expect(values).toEqual({
			...{ force, normal, tangential, frictionLimit, ratio, demand, padArea, meanSlope },
			...{ tilt: load.tilt, magnitude: load.magnitude, slope: hang.slope, weight: 70 * 9.80665 },
			...{ assistForce: body.assistForce, ropeAngle: body.ropeAngle, push: body.push }
		});
	});
});
