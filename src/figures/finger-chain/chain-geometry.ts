import { jointPositions, type FingerChain, type Vector } from '#core/strength/finger-chain.ts';
import type { TendonArms } from '#core/strength/tendon-forces.ts';
import { arrowOf } from '../forces/arrows.ts';
import type { Point } from '../forces/geometry.ts';
import { arc, limb, polyline } from '../forces/paths.ts';
import { scaleBar, stepAtMost } from '../forces/scale.ts';

export type ChainShown = {
	chain: FingerChain;
	arms: TendonArms;
	/** From the last joint to the fingertip, m. */
	padLength: number;
	/** Slope of the hold under the pad, rad. */
	slope: number;
	/** Force of the hold on this finger, N, x away from the wall, y up. */
	force: Vector;
	/** Tendon forces, N. */
	fdp: number;
	fds: number;
	/** Moments about the joints, N·m. */
	moments: { dip: number; pip: number; mcp: number };
};

export type ChainGeometry = ReturnType<typeof chainGeometry>;

/** Past the knuckle the tendons go on this far before their arrows start, mm. */
const beyondKnuckle = 7;
/** Longest arrow, mm on the drawing. */
const longestArrow = 24;

/** One finger on the hold in px: the last joint stays where it is, so that dragged parts follow the hand. */
export function chainGeometry(shown: ChainShown, width: number, height: number) {
	const { chain, arms, slope, force, fdp, fds } = shown;
	const joints = jointPositions(chain);
	const a3 = chain.pitch;
	const a2 = a3 - chain.dipFlexion;
	const a1 = a2 - chain.pipFlexion;
	const milli = (metres: number) => metres * 1000;
	/** Millimetres from the last joint, y up. */
	const from = (place: Vector): Vector => ({
		x: milli(place.x - joints.dip.x),
		y: milli(place.y - joints.dip.y)
	});
	const far = along(from(joints.mcp), a1, beyondKnuckle + longestArrow + 6);
	const tipEnd = along({ x: 0, y: 0 }, a3, -milli(shown.padLength));
	const frame = frameOf([from(joints.mcp), far, tipEnd, along(tipEnd, Math.PI / 2, 20)]);
	const mm = Math.min((width - 24) / frame.width, (height - 40) / frame.height);
	const spare = width - 24 - frame.width * mm;
	const at = ({ x, y }: Vector): Point => ({
		x: 12 + spare / 2 + (x - frame.left) * mm,
		y: 12 + (frame.top - y) * mm
	});
	const dip = at({ x: 0, y: 0 });
	const pip = at(from(joints.pip));
	const mcp = at(from(joints.mcp));
	const tip = at(tipEnd);
	const contact = at(from({ x: 0, y: 0 }));
	const depth = Math.max(3, milli(chain.boneDepth));

	const palmar = (angle: number): Vector => ({ x: Math.sin(angle), y: -Math.cos(angle) });
	const offset = (place: Vector, angle: number, length: number) => {
		const n = palmar(angle);
		return { x: place.x + n.x * length, y: place.y + n.y * length };
	};
	const [dipMm, pipMm, mcpMm] = [{ x: 0, y: 0 }, from(joints.pip), from(joints.mcp)];
	const atDip = (a3 + a2) / 2;
	const atPip = (a2 + a1) / 2;
	// The superficial tendon ends on the middle segment, the deep one on the end segment.
	const fdpEnd = offset(along(mcpMm, a1, beyondKnuckle), a1, 8.5);
	const fdsEnd = offset(along(mcpMm, a1, beyondKnuckle), a1, 13);
	const fdpPath = [
		offset(along(dipMm, a3, -5), a3, milli(arms.fdpDip) * 0.55),
		offset(dipMm, atDip, milli(arms.fdpDip)),
		offset(pipMm, atPip, milli(arms.fdpPip)),
		fdpEnd
	].map(at);
	const fdsPath = [
		offset(along(pipMm, a2, -milli(chain.middleLength) * 0.45), a2, milli(arms.fdsPip) * 0.6),
		offset(pipMm, atPip, milli(arms.fdsPip)),
		fdsEnd
	].map(at);

	const most = Math.max(Math.hypot(force.x, force.y), fdp, fds);
	const scale = most > 0 ? stepAtMost((longestArrow * mm) / most) : 1;
	const pull = (size: number): Point => ({ x: Math.cos(a1) * size, y: Math.sin(a1) * size });
	const arrows = {
		force: arrowOf('force', 'hold', force, contact, scale),
		fdp: arrowOf('fdp', 'hold', pull(fdp), at(fdpEnd), scale),
		fds: arrowOf('fds', 'hold', pull(fds), at(fdsEnd), scale)
	};
	const turn = (angle: number) => -angle;
	return {
		...{ mm, dip, pip, mcp, tip, contact, arrows, scale, a1, a2, a3 },
		limbs: [
			limb(mcp, pip, 10.5 * mm, 8.2 * mm),
			limb(pip, dip, 7.6 * mm, 6.2 * mm),
			limb(dip, at(along(tipEnd, a3, depth)), 6 * mm, depth * mm)
		],
		nail: polyline(
			[-milli(shown.padLength) * 0.9, -milli(shown.padLength) * 0.42].map((reach) =>
				at(offset(along(dipMm, a3, reach), a3, -depth * 0.86))
			)
		),
		tendons: { fdp: polyline(fdpPath), fds: polyline(fdsPath) },
		/** Each arm from its joint to its tendon, and where its handle sits, a little further on. */
		armLines: {
			fdpDip: armLine(dip, atDip, milli(arms.fdpDip), 4, mm),
			fdpPip: armLine(pip, atPip + 0.42, milli(arms.fdpPip), 4, mm),
			fdsPip: armLine(pip, atPip - 0.42, milli(arms.fdsPip), 7, mm)
		},
		pulleys: {
			a2: at(offset(along(pipMm, a1, milli(chain.proximalLength) * 0.45), a1, 9.6)),
			a4: at(offset(along(dipMm, a2, milli(chain.middleLength) * 0.45), a2, 7))
		},
		angles: {
			dip: arc(dip, 13 * mm, turn(a3), turn(a2)),
			pip: arc(pip, 15 * mm, turn(a2), turn(a1)),
			dipLine: { from: dip, to: at(along(dipMm, a3, 15)) },
			pipLine: { from: pip, to: at(along(pipMm, a2, 17)) }
		},
		hold: holdLine(contact, slope, mm),
		bar: scaleBar(scale, 'N', { x: 10, y: height - 10 }, width * 0.22, 13),
		length: { x: width - 10 - 10 * mm, y: height - 10, px: 10 * mm }
	};
}

function along({ x, y }: Vector, angle: number, length: number): Vector {
	return { x: x + length * Math.cos(angle), y: y + length * Math.sin(angle) };
}

/** The room the drawing needs, mm about the last joint; it grows in whole steps so that it stands still. */
function frameOf(points: Vector[]) {
	const step = 10;
	const reach = (least: number, values: number[]) =>
		Math.max(least, Math.ceil((Math.max(...values) + 4) / step) * step);
	const left = -reach(
		30,
		points.map(({ x }) => -x)
	);
	const right = reach(
		45,
		points.map(({ x }) => x)
	);
	const top = reach(
		30,
		points.map(({ y }) => y)
	);
	const bottom = -reach(
		60,
		points.map(({ y }) => -y)
	);
	return { left, top, width: right - left, height: top - bottom };
}

function armLine(joint: Point, angle: number, length: number, further: number, mm: number) {
	const way = { x: Math.sin(angle), y: Math.cos(angle) };
	const on = (reach: number) => ({
		x: joint.x + way.x * reach * mm,
		y: joint.y + way.y * reach * mm
	});
	return { from: joint, to: on(length), handle: on(length + further), way };
}

/** The surface under the pad, hatched beneath, from up-slope of the tip to just past the contact. */
function holdLine(contact: Point, slope: number, mm: number) {
	const way = { x: Math.cos(slope), y: Math.sin(slope) };
	const on = (reach: number, below = 0): Point => ({
		x: contact.x + mm * (way.x * reach - way.y * below),
		y: contact.y + mm * (way.y * reach + way.x * below)
	});
	const [from, to] = [on(-26), on(8)];
	const hatch = Array.from({ length: 17 }, (_, i) => [on(-26 + 2 * i), on(-27.2 + 2 * i, 2)]);
	return { from, to, hatch: hatch.map((pair) => polyline(pair)).join('') };
}
