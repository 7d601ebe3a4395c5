import type { PulleyRig, SettledRope } from '#core/mechanics/settled-rope.ts';
import { kilogramsToNewtons } from '#core/units/force.ts';
import type { Box } from '#plot/box.ts';
import { alongLine, aroundPoint } from '#plot/label-candidates.ts';
import { placeLabels, type LabelRequest } from '#plot/place-labels.ts';
import { textWidth } from '#plot/text-width.ts';
import { arrowOf } from '../forces/arrows.ts';
import type { Point } from '../forces/geometry.ts';
import { arc } from '../forces/paths.ts';
import { handsToCentre, handsToFeet, personOutline } from '../forces/person-outline.ts';
import { scaleBar } from '../forces/scale.ts';
import { degrees, digits, force } from '../forces/text.ts';

export type RopeShown = {
	rest: SettledRope;
	rig: PulleyRig;
	/** kg. */
	hangingMass: number;
	/** Slope of the hold, rad. */
	slope: number;
};

export const ropeLabelSize = 13;
const sheave = 0.045;

/** The whole drawing in px: body, pulley, rope and forces, all to one scale of length and one of force. */
export function ropeGeometry(shown: RopeShown, width: number, height: number) {
	const { rest, rig, hangingMass, slope } = shown;
	// The frame grows in whole steps, so that it stands still while a pulley is dragged.
	const above = Math.max(1.2, Math.ceil((rig.height + 0.35) / 0.8) * 0.8);
	const left = rig.outward < -0.75 ? 1.3 : 0.95;
	const right = rig.outward > 1.2 || rest.bodyLean > 0.6 ? 2.1 : 1.65;
	const below = handsToFeet * (rig.centre / handsToCentre) + 0.12;
	const metre = Math.min((width - 16) / (left + right), (height - 34) / (above + below));
	const hold: Point = {
		x: (width - (left + right) * metre) / 2 + left * metre,
		y: 10 + above * metre
	};
	const at = (x: number, y: number): Point => ({ x: hold.x + x * metre, y: hold.y - y * metre });
	const side = rig.outward < 0 ? -1 : 1;
	// Seen from the side: what leans along the wall is hidden.
	const out = Math.sin(rest.bodyLean) * side * outShare(rig);
	const lean = Math.atan2(out, Math.cos(rest.bodyLean));
	const along = (length: number) => at(length * out, -length * Math.cos(rest.bodyLean));
	const [tie, centre] = [along(rig.tieIn), along(rig.centre)];
	const pulley = at(rig.outward, rig.height);

	const weight = kilogramsToNewtons(hangingMass);
	const scale = (0.85 * metre) / weight;
	const { vertical, horizontal } = rest.load;
	const lift = weight - vertical;
	const arrows = [
		arrowOf('weight', 'weight', { x: 0, y: -weight }, centre, scale),
		arrowOf('rope', 'rope', { x: horizontal, y: lift }, tie, scale),
		arrowOf('hold', 'hold', { x: -horizontal, y: vertical }, hold, scale)
	].filter((arrow) => arrow !== undefined);

	const outline = personOutline(hold, lean, (metre * rig.centre) / handsToCentre);
	const meets = meetingPoint(tie, centre, rest.ropeAngle);
	const radius = 0.42 * metre;
	const arcs = {
		rope:
			Math.abs(rest.ropeAngle) > 2e-3
				? arc(tie, radius, -Math.PI / 2, -Math.PI / 2 + rest.ropeAngle)
				: undefined,
		body:
			Math.abs(lean) > 2e-3 ? arc(hold, 0.75 * metre, Math.PI / 2, Math.PI / 2 - lean) : undefined
	};
	const strandX = pulley.x + side * sheave * metre;
	const strandEnd = pulley.y + 0.42 * metre;
	const bar = scaleBar(scale, 'N', { x: 10, y: height - 10 }, width * 0.2, ropeLabelSize);
	const metreBar = { from: { x: width - 10 - metre / 2, y: height - 10 }, length: metre / 2 };
	return {
		...{ hold, tie, centre, pulley, arrows, outline, meets, arcs, scale, metre, bar, metreBar },
		sheave: sheave * metre,
		strand: { x: strandX, top: pulley.y, bottom: strandEnd, size: 0.1 * metre },
		ropeEnd: pulley,
		plumbTie: { from: tie, to: { x: tie.x, y: tie.y - 0.62 * metre } },
		plumbHold: { from: hold, to: { x: hold.x, y: hold.y + rig.centre * metre } },
		wall: { x: hold.x - 0.1 * metre, top: 8, bottom: hold.y + 0.14 * metre },
		block: holdBlock(hold, slope, metre),
		labels: labelsOf(shown, {
			...{ hold, tie, pulley, centre, width, height, radius, lean, metre, arrows },
			bar: bar.box
		})
	};
}

/** The share of the lean that this side view shows. */
function outShare({ outward, sideways = 0 }: PulleyRig): number {
	const aside = Math.hypot(outward, sideways);
	return aside > 0 ? Math.abs(outward) / aside : 0;
}

/** Where the rope's line meets the plumb line through the centre of mass. */
function meetingPoint(tie: Point, centre: Point, ropeAngle: number): Point | undefined {
	if (Math.hypot(tie.x - centre.x, tie.y - centre.y) < 2) return centre;
	if (Math.abs(ropeAngle) < 2e-3) return undefined;
	return { x: centre.x, y: tie.y - (centre.x - tie.x) / Math.tan(ropeAngle) };
}

function holdBlock({ x, y }: Point, slope: number, metre: number): string {
	const [back, front, thick] = [0.1 * metre, 0.045 * metre, 0.07 * metre];
	const rise = Math.tan(Math.max(-0.6, Math.min(slope, 1.1)));
	return (
		`M${x - back} ${y - back * rise}L${x + front} ${y + front * rise}` +
		`V${y + front * rise + thick}L${x - back} ${y + front * rise + thick * 1.4}Z`
	);
}

function labelsOf(
	{ rest, rig, hangingMass }: RopeShown,
	o: {
		hold: Point;
		tie: Point;
		pulley: Point;
		centre: Point;
		width: number;
		height: number;
		radius: number;
		lean: number;
		metre: number;
		arrows: { id: string; segment: { from: Point; to: Point } }[];
		bar: { x: number; y: number; width: number; height: number };
	}
) {
	const requests: LabelRequest[] = [];
	const sizeOf = (text: string) => ({
		width: textWidth(text, ropeLabelSize),
		height: ropeLabelSize + 1
	});
	const ask = (id: string, text: string, candidates: Box[]) =>
		requests.push({ id, text, candidates, always: true });
	const near = ({ x, y }: Point, text: string, gaps: number[]) =>
		gaps.flatMap((gap) => aroundPoint([x, y], sizeOf(text), gap));
	const line = (id: string) => {
		const segment = o.arrows.find((arrow) => arrow.id === id)?.segment;
		return segment ? [segment.from, segment.to] : [];
	};
	const beside = (points: Point[], text: string) => {
		const pairs = points.map(({ x, y }): [number, number] => [x, y]);
		const tip = points.at(-1);
		return [
			...(tip ? near(tip, text, [6, 14, 26]) : []),
			...alongLine(pairs, sizeOf(text), { right: 4, left: 4 })
		];
	};
	const weight = `weight ${force(kilogramsToNewtons(hangingMass), 'N')}`;
	ask('weight', weight, beside(line('weight'), weight));
	const hold = `hold gives ${force(rest.load.magnitude, 'N')}`;
	ask('hold', hold, beside(line('hold'), hold));
	const rope = `rope ${force(rest.assistForce, 'N')}`;
	ask('rope', rope, beside(line('rope'), rope));
	const angle = `${degrees(Math.abs(rest.ropeAngle))} from plumb`;
	const onArc = {
		x: o.tie.x + o.radius * Math.sin(rest.ropeAngle / 2),
		y: o.tie.y - o.radius * Math.cos(rest.ropeAngle / 2)
	};
	ask('ropeAngle', angle, near(onArc, angle, [8, 20, 34]));
	if (Math.abs(o.lean) > 2e-3) {
		const body = `body leans ${degrees(Math.abs(o.lean))}`;
		const middle = {
			x: o.hold.x + 0.75 * o.metre * Math.sin(o.lean),
			y: o.hold.y + 0.75 * o.metre * Math.cos(o.lean)
		};
		ask('body', body, near(middle, body, [16, 30, 46]));
	}
	const where = `pulley ${digits(Math.abs(rig.outward))} m ${rig.outward < 0 ? 'behind' : 'out'}, ${digits(rig.height)} m up`;
	ask('pulley', where, near(o.pulley, where, [20, 28, 40]));

	const lines = [
		[o.tie, o.pulley],
		[o.hold, o.centre],
		...o.arrows.map(({ segment }) => [segment.from, segment.to])
	].map((points) => points.map(({ x, y }): [number, number] => [x, y]));
	return placeLabels(requests, {
		frame: { left: 4, top: 4, right: o.width - 4, bottom: o.height - 26 },
		lines,
		boxes: [
			{ cx: o.pulley.x, cy: o.pulley.y - 7, width: 34, height: 36, angle: 0 },
			{ cx: o.hold.x, cy: o.hold.y, width: 18, height: 18, angle: 0 }
		]
	});
}
