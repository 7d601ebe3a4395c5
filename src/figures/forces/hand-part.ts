import { arrowOf, headBox, ringBox } from './arrows.ts';
import { frictionCone, handScale } from './friction-cone.ts';
import type { Box, Point, Segment } from './geometry.ts';
import { handAngles } from './hand-angles.ts';
import { fingerOutlines, holdOutline, onSurface, type HandPose } from './hand-outline.ts';
import { handDrafts, handTitle, leadsOff, patchLine } from './hand-words.ts';
import { note, placed, type Draft } from './labels.ts';
import { polyline } from './paths.ts';
import { scaleBar } from './scale.ts';
import type { Arrow, ForcesShown, HandPart } from './types.ts';

/** The force of the hold on one hand and its two components, N, x away from the wall, y up. */
export function forcesOnHand({ load, contact }: ForcesShown) {
	const { force, normal, tangential, meanSlope } = contact;
	return {
		force: { x: -force * Math.sin(load.tilt), y: force * Math.cos(load.tilt) },
		normal: { x: normal * Math.sin(meanSlope), y: normal * Math.cos(meanSlope) },
		// Friction on the hand points up the slope.
		friction: { x: -tangential * Math.cos(meanSlope), y: tangential * Math.sin(meanSlope) }
	};
}

/** Lays out one hand on the hold, with the friction cone about the normal. */
export function handPart(shown: ForcesShown, frame: Box, fontSize: number): HandPart {
	const { load, contact: state, forceUnit } = shown;
	const long = frame.width > 260;
	const title = note(handTitle(shown), { x: frame.x + 8, y: frame.y + 6 }, fontSize);
	const baseline = frame.y + frame.height - 10;
	const top = title.box.y + title.box.height + 2;
	const bottom = baseline - fontSize * 1.3;
	const room: Box = { x: frame.x + 9, y: top, width: frame.width - 18, height: bottom - top };
	const contact = { x: frame.x + frame.width * 0.53, y: room.y + room.height * 0.66 };

	const reach = frame.width * 0.42;
	const pose = poseOf(shown, frame, contact, reach);
	const hold = holdOutline(pose);
	const { outlines, nails } = fingerOutlines(pose, load.tilt, bottom - 6 * pose.mm);

	const forces = forcesOnHand(shown);
	const scale = handScale(contact, forces, state, room, reach);
	const arrows = [
		arrowOf('force', 'hold', forces.force, contact, scale),
		arrowOf('normal', 'normal', forces.normal, contact, scale),
		arrowOf('tangential', 'friction', forces.friction, contact, scale)
	].filter((arrow) => arrow !== undefined);
	const { cone, limit } = frictionCone(contact, state, scale);
	const splits = splitLines(arrows);

	const { drawn, owns } = handAngles(shown, pose, { lip: hold.lip, scale, reach, frame });
	for (const { id, segment } of arrows) owns[id] = segment;
	if (limit) owns.frictionLimit = { from: limit.line.from, to: limit.tick.from };
	const drafts: Draft[] = handDrafts(shown, long).flatMap((draft) => {
		const own = owns[draft.id];
		return own ? [{ ...draft, own }] : [];
	});

	const bar = scaleBar(
		...([scale, forceUnit, { x: frame.x + 9, y: baseline }] as const),
		...([frame.width * 0.24, fontSize] as const)
	);
	const corner = { x: frame.x + frame.width - 8, y: bar.box.y };
	const foot = note(patchLine(shown, long), corner, fontSize, 'right');
	const labels = placed(drafts, fontSize, {
		frame: { x: frame.x + 4, y: frame.y + 4, width: frame.width - 8, height: frame.height - 8 },
		blocked: [title.box, bar.box, foot.box, ringBox(drawn.slopeEnd), ...arrows.map(headBox)],
		arrows: arrows.map(({ id, segment }) => ({ id, segment })),
		lines: [
			{ from: drawn.slopeEnd, to: hold.lip },
			{ from: { x: pose.wallX, y: top }, to: { x: pose.wallX, y: bottom } },
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
	return {
		...{ frame, fontSize, scale, title, bar, arrows, labels, contact, splits, note: foot },
		...{ holdPath: hold.path, backEdge: hold.far, ridge: hold.ridge, wallX: pose.wallX },
		...{ fingers: outlines, nails, ...drawn },
		inside: !leadsOff(state) && Math.abs(state.tangential) <= state.frictionLimit,
		...(pose.patch > 0 ? { patch: patchPath(pose) } : {}),
		...(cone ? { cone, limit } : {})
	};
}

function poseOf(
	{ hang, contact: state }: ForcesShown,
	frame: Box,
	contact: Point,
	reach: number
): HandPose {
	const { fingers, padWidth, padLength, padDepth } = hang.grip;
	const mm = Math.min(frame.width / 78, frame.height / 92);
	return {
		...{ contact, slope: state.meanSlope, mm, fingers, upslope: reach, wallX: frame.x + 10 },
		...(hang.radius === undefined ? {} : { radius: hang.radius * 1000 }),
		patch: (state.padArea / padWidth) * 1000,
		padLength: padLength * 1000,
		padDepth: padDepth * 1000,
		underside: contact.y + 12 * mm
	};
}

/** The lines that complete the parallelogram of the two components. */
function splitLines(arrows: Arrow[]): Segment[] {
	const tipOf = (id: string) => arrows.find((arrow) => arrow.id === id)?.segment.to;
	const [whole, normal, friction] = [tipOf('force'), tipOf('normal'), tipOf('tangential')];
	if (!whole || !normal || !friction) return [];
	return [
		{ from: normal, to: whole },
		{ from: friction, to: whole }
	];
}

function patchPath(pose: HandPose): string {
	return polyline(Array.from({ length: 9 }, (_, i) => onSurface(pose, pose.patch * (i / 8 - 0.5))));
}
