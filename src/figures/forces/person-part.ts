import { arrowOf, headBox, ringBox } from './arrows.ts';
import type { Box, Point, Segment } from './geometry.ts';
import { note, placed } from './labels.ts';
import { arc, polygon } from './paths.ts';
import { handsToFeet, personOutline } from './person-outline.ts';
import { fitScale, scaleBar } from './scale.ts';
import { forceLabel, tiltLines } from './person-words.ts';
import type { ForcesShown, PersonPart } from './types.ts';

/** The forces on the whole person: weight, rope and push at the centre of mass, hands at the hold. */
export function forcesOnPerson({ load, person }: ForcesShown) {
	// The core's own gravity, whichever it was given.
	const gravity = load.vertical / load.netMass;
	return {
		weight: { x: 0, y: -(person.bodyMass + person.addedMass) * gravity },
		rope: {
			x: person.assistForce * Math.sin(person.ropeAngle),
			y: person.assistForce * Math.cos(person.ropeAngle)
		},
		push: { x: person.push, y: 0 },
		hold: { x: -load.horizontal, y: load.vertical }
	};
}

/** Lays out the whole person: a free body leans until weight, rope and hands line up. */
export function personPart(shown: ForcesShown, frame: Box, fontSize: number): PersonPart {
	const { load, hang, forceUnit } = shown;
	const title = note([[{ text: 'Whole person' }]], { x: frame.x + 8, y: frame.y + 6 }, fontSize);
	const top = frame.y + 8 + fontSize * 1.3;
	const bottom = frame.y + frame.height - 10 - fontSize * 1.3;
	const room: Box = { x: frame.x + 9, y: top, width: frame.width - 18, height: bottom - top };

	const tilt = load.tilt;
	const out = Math.sin(tilt);
	const hold = {
		x: frame.x + frame.width * (0.42 - 0.2 * out),
		y: room.y + 0.37 * room.height
	};
	const side = out > 0 ? room.x + room.width - hold.x : hold.x - room.x;
	const metre = Math.min(
		(bottom - hold.y) / handsToFeet,
		side / (handsToFeet * Math.abs(out) + 0.13)
	);
	const { body, arm, centre } = personOutline(hold, tilt, metre);

	const forces = forcesOnPerson(shown);
	const tails = { weight: centre, rope: centre, push: centre, hold };
	const kinds = Object.keys(tails) as (keyof typeof tails)[];
	const scale = fitScale(
		kinds.map((kind) => ({ tail: tails[kind], force: forces[kind] })),
		room
	);
	const arrows = kinds
		.map((kind) => arrowOf(kind, kind, forces[kind], tails[kind], scale))
		.filter((arrow) => arrow !== undefined);
	const bar = scaleBar(
		scale,
		forceUnit,
		{ x: frame.x + 9, y: frame.y + frame.height - 10 },
		frame.width * 0.28,
		fontSize
	);
	const ropeTip = {
		x: centre.x + forces.rope.x * scale,
		y: centre.y - forces.rope.y * scale
	};

	const wallX = hold.x - 13;
	const wall: Box = { x: wallX - 6, y: top, width: 6, height: hold.y + 16 - top };
	const plumb: Segment = { from: hold, to: { x: hold.x, y: hold.y + metre * 1.3 } };
	const drafts = arrows.map((arrow) => forceLabel(arrow, shown));
	let tiltArc: string | undefined;
	if (Math.abs(tilt) >= 5e-4) {
		const radius = metre * 0.9;
		tiltArc = arc(hold, radius, Math.PI / 2, Math.PI / 2 - tilt);
		const on = (share: number) => ({
			x: hold.x + radius * share * Math.sin(tilt / 2),
			y: hold.y + radius * share * Math.cos(tilt / 2)
		});
		drafts.push({
			id: 'tilt',
			kind: 'angle',
			own: { from: on(0.8), to: on(1) },
			lines: tiltLines(tilt)
		});
	}
	const labels = placed(drafts, fontSize, {
		frame: { x: frame.x + 4, y: frame.y + 4, width: frame.width - 8, height: frame.height - 8 },
		blocked: [title.box, bar.box, ringBox(ropeTip), ringBox(centre, 5), ...arrows.map(headBox)],
		arrows: arrows.map(({ id, segment }) => ({ id, segment })),
		lines: [
			{ from: hold, to: bodyEnd(hold, tilt, metre) },
			{ from: { x: wallX, y: top }, to: { x: wallX, y: wall.y + wall.height } },
			...(tiltArc ? [plumb] : [])
		]
	});
	const holdPath = holdBlock(hold, hang.slope);
	return {
		...{ frame, fontSize, scale, title, bar, arrows, labels, hold, centre, body, arm },
		...{ wall, holdPath, plumb, ropeTip },
		...(tiltArc ? { tiltArc } : {})
	};
}

function bodyEnd(hold: Point, tilt: number, metre: number): Point {
	return {
		x: hold.x + Math.sin(tilt) * handsToFeet * metre,
		y: hold.y + Math.cos(tilt) * handsToFeet * metre
	};
}

/** The hold's block between the wall and a little beyond the hands. */
function holdBlock({ x, y }: Point, slope: number): string {
	const rise = Math.tan(Math.min(slope, 1));
	return polygon([
		{ x: x - 13, y: y - 9 * rise },
		{ x: x - 9, y: y - 9 * rise },
		{ x: x + 5, y: y + 5 * rise },
		{ x: x + 5, y: y + 5 * rise + 5 },
		{ x: x - 13, y: y + 5 * rise + 9 }
	]);
}
