import { arrowOf, headBox, ringBox } from './arrows.ts';
import { add, holdsPoint, type Box, type Point, type Segment } from './geometry.ts';
import { fingerOutlines, holdOutline, onSurface, type HandPose } from './hand-outline.ts';
import { handDrafts, handTitle, patchLine } from './hand-words.ts';
import { note, placed, type Draft } from './labels.ts';
import { arc, polyline } from './paths.ts';
import { fitScale, scaleBar } from './scale.ts';
import type { ForcesShown, HandPart } from './types.ts';

/** The force of the hold on one hand and its two components, N, x away from the wall, y up. */
export function forcesOnHand({ load, contact }: ForcesShown) {
	const { force, normal, tangential, meanSlope } = contact;
	const way = { x: -Math.sin(load.tilt), y: Math.cos(load.tilt) };
	return {
		force: { x: force * way.x, y: force * way.y },
		normal: { x: normal * Math.sin(meanSlope), y: normal * Math.cos(meanSlope) },
		// Friction on the hand points up the slope.
		friction: { x: -tangential * Math.cos(meanSlope), y: tangential * Math.sin(meanSlope) }
	};
}

/** Lays out one hand on the hold, with the friction cone about the normal. */
export function handPart(shown: ForcesShown, frame: Box, fontSize: number): HandPart {
	const { hang, load, contact: state, forceUnit } = shown;
	const { normal: N, tangential: Q, meanSlope, frictionLimit } = state;
	const title = note(handTitle(shown), { x: frame.x + 8, y: frame.y + 6 }, fontSize);
	const top = frame.y + 8 + fontSize * 1.3;
	const bottom = frame.y + frame.height - 10 - fontSize * 1.3;
	const room: Box = { x: frame.x + 9, y: top, width: frame.width - 18, height: bottom - top };
	const contact: Point = {
		x: frame.x + frame.width * 0.5,
		y: room.y + room.height * 0.66
	};

	const mm = Math.min(frame.width / 78, frame.height / 92);
	const reach = frame.width * 0.37;
	const pose: HandPose = {
		...{ contact, slope: meanSlope, mm, fingers: hang.grip.fingers },
		...(hang.radius === undefined ? {} : { radius: hang.radius * 1000 }),
		patch: (state.padArea / hang.grip.padWidth) * 1000,
		padLength: hang.grip.padLength * 1000,
		padDepth: hang.grip.padDepth * 1000,
		upslope: reach,
		wallX: frame.x + 10,
		underside: contact.y + 12 * mm
	};
	const hold = holdOutline(pose);
	const { outlines, nails } = fingerOutlines(pose, load.tilt, bottom - 6 * mm);

	const up = { x: Math.sin(meanSlope), y: -Math.cos(meanSlope) };
	const uphill = { x: -Math.cos(meanSlope), y: -Math.sin(meanSlope) };
	const toward = Q < 0 ? -1 : 1;
	const forces = forcesOnHand(shown);
	const limitForce = {
		x: uphill.x * toward * frictionLimit,
		y: -uphill.y * toward * frictionLimit
	};
	const scale = fitScale(
		[
			...Object.values(forces),
			limitForce,
			{ x: forces.normal.x + limitForce.x, y: forces.normal.y + limitForce.y }
		].map((force) => ({ tail: contact, force })),
		room
	);
	const arrows = [
		arrowOf('force', 'hold', forces.force, contact, scale),
		arrowOf('normal', 'normal', forces.normal, contact, scale),
		arrowOf('tangential', 'friction', forces.friction, contact, scale)
	].filter((arrow) => arrow !== undefined);
	const tipOf = (id: string) => arrows.find((arrow) => arrow.id === id)?.segment.to ?? contact;
	const splits: Segment[] =
		tipOf('normal') === contact || tipOf('tangential') === contact
			? []
			: [
					{ from: tipOf('normal'), to: tipOf('force') },
					{ from: tipOf('tangential'), to: tipOf('force') }
				];

	const limitLength = frictionLimit * scale;
	const cone: HandPart['cone'] =
		N > 0 && frictionLimit > 0
			? [
					contact,
					add(tipOf('normal'), uphill, limitLength),
					add(tipOf('normal'), uphill, -limitLength)
				]
			: undefined;
	const limitAt = add(contact, uphill, limitLength * toward);
	const limit = cone && {
		line: { from: add(contact, up, -7), to: add(limitAt, up, -7) },
		tick: { from: add(limitAt, up, -12), to: add(limitAt, up, 7) }
	};

	// A flat slope is read at the lip, a round hold's at the fingertip, where it is set.
	const round = hang.radius !== undefined;
	const slopeVertex = round ? onSurface(pose, -pose.patch / 2) : hold.lip;
	const uphillAtTip = { x: -Math.cos(hang.slope), y: -Math.sin(hang.slope) };
	const slopePivot = round ? slopeVertex : contact;
	const slopeEnd = add(slopePivot, uphillAtTip, reach);
	const level: Segment = { from: slopeVertex, to: add(slopeVertex, { x: -1, y: 0 }, 46) };
	const half = Math.PI + hang.slope / 2;
	const radial = (centre: Point, angle: number, from: number, to: number): Segment => ({
		from: add(centre, { x: Math.cos(angle), y: Math.sin(angle) }, from),
		to: add(centre, { x: Math.cos(angle), y: Math.sin(angle) }, to)
	});
	const slopeArc =
		Math.abs(hang.slope) < 5e-4 ? undefined : arc(slopeVertex, 34, Math.PI, Math.PI + hang.slope);
	const owns: Record<string, Segment> = { slope: radial(slopeVertex, half, 27, 34) };
	let tiltArc: string | undefined;
	let vertical: Segment | undefined;
	if (Math.abs(load.tilt) >= 5e-4) {
		const radius = Math.min(0.8 * state.force * scale, 0.3 * frame.height);
		tiltArc = arc(contact, radius, -Math.PI / 2, -Math.PI / 2 - load.tilt);
		vertical = { from: contact, to: add(contact, { x: 0, y: -1 }, radius + 8) };
		owns.tilt = radial(contact, -Math.PI / 2 - load.tilt / 2, radius * 0.8, radius);
	}
	for (const { id, segment } of arrows) owns[id] = segment;
	if (limit) owns.frictionLimit = { from: limit.line.from, to: limit.tick.from };
	const drafts: Draft[] = handDrafts(shown).flatMap((draft) => {
		const own = owns[draft.id];
		return own ? [{ ...draft, own }] : [];
	});

	const baseline = frame.y + frame.height - 10;
	const bar = scaleBar(
		scale,
		forceUnit,
		{ x: frame.x + 9, y: baseline },
		frame.width * 0.24,
		fontSize
	);
	const foot = note(
		patchLine(shown, frame.width > 260),
		{ x: frame.x + frame.width - 8, y: bar.box.y },
		fontSize,
		'right'
	);
	const labels = placed(drafts, fontSize, {
		frame: { x: frame.x + 4, y: frame.y + 4, width: frame.width - 8, height: frame.height - 8 },
		blocked: [title.box, bar.box, foot.box, ringBox(slopeEnd), ...arrows.map(headBox)],
		arrows: arrows.map(({ id, segment }) => ({ id, segment })),
		lines: [
			{ from: slopeEnd, to: hold.lip },
			...(limit ? [limit.line, limit.tick] : []),
			...(cone
				? [
						{ from: cone[0], to: cone[1] },
						{ from: cone[0], to: cone[2] }
					]
				: []),
			...splits
		]
	});
	const patch =
		pose.patch > 0
			? polyline(Array.from({ length: 9 }, (_, i) => onSurface(pose, pose.patch * (i / 8 - 0.5))))
			: undefined;
	return {
		...{ frame, fontSize, scale, title, bar, arrows, labels, contact, splits, level },
		...{ holdPath: hold.path, backEdge: hold.far, ridge: hold.ridge, wallX: pose.wallX },
		...{ fingers: outlines, nails, slopeVertex, slopeEnd, note: foot },
		inside: N > 0 && Math.abs(Q) <= frictionLimit,
		...(patch ? { patch } : {}),
		...(cone ? { cone } : {}),
		...(limit && holdsPoint(frame, limit.tick.to) ? { limit } : {}),
		...(slopeArc ? { slopeArc } : {}),
		...(round || hang.slope < 0 ? { tangent: { from: slopePivot, to: slopeEnd } } : {}),
		...(vertical && tiltArc ? { vertical, tiltArc } : {})
	};
}
