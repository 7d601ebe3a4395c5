import { alongLine, aroundPoint } from '#plot/label-candidates.ts';
import { placeLabels, type LabelRequest } from '#plot/place-labels.ts';
import type { Point as Pair } from '#plot/point.ts';
import { textWidth } from '#plot/text-width.ts';
import type { Point } from '../forces/geometry.ts';
import { degrees, digits, force } from '../forces/text.ts';
import type { ChainGeometry, ChainShown } from './chain-geometry.ts';

export const chainLabelSize = 13;

const pair = ({ x, y }: Point): Pair => [x, y];

/** The words on the drawing with their places. */
export function chainLabels(
	shown: ChainShown,
	drawn: ChainGeometry,
	width: number,
	height: number
) {
	const requests: LabelRequest[] = [];
	const ask = (id: string, text: string, spots: Point[], gaps: number[], line?: Point[]) => {
		const size = { width: textWidth(text, chainLabelSize), height: chainLabelSize + 1 };
		requests.push({
			id,
			text,
			always: true,
			candidates: [
				...(line ? alongLine(line.map(pair), size, { right: 5, left: 5 }) : []),
				...spots.flatMap((spot) => gaps.flatMap((gap) => aroundPoint(pair(spot), size, gap)))
			]
		});
	};
	const { chain, moments, fdp, fds } = shown;
	const size = Math.hypot(shown.force.x, shown.force.y);
	const tipOf = (arrow?: { segment: { from: Point; to: Point } }) => arrow?.segment.to;
	const newtonMetres = (moment: number) => `${digits(moment)} N·m`;
	const { arrows } = drawn;
	ask('force', `hold ${force(size, 'N')}`, [tipOf(arrows.force) ?? drawn.contact], [6, 14]);
	ask('fdp', `FDP ${force(fdp, 'N')}`, [tipOf(arrows.fdp) ?? drawn.mcp], [8, 18, 30]);
	ask('fds', `FDS ${force(fds, 'N')}`, [tipOf(arrows.fds) ?? drawn.mcp], [8, 18, 30]);
	const radius = (millimetres: number) => millimetres * drawn.mm;
	ask(
		'dip',
		`last joint ${degrees(chain.dipFlexion)}, ${newtonMetres(moments.dip)}`,
		[drawn.dip],
		[radius(8), radius(12), radius(17)]
	);
	ask(
		'pip',
		`middle joint ${degrees(chain.pipFlexion)}, ${newtonMetres(moments.pip)}`,
		[drawn.pip],
		[radius(10), radius(14), radius(19)]
	);
	ask('mcp', `knuckle ${newtonMetres(moments.mcp)}`, [drawn.mcp], [12, 20, radius(13)]);
	ask('a2', 'A2', [drawn.pulleys.a2], [7, 12, 20]);
	ask('a4', 'A4', [drawn.pulleys.a4], [7, 12, 20]);

	const lines = [
		[drawn.tip, drawn.dip, drawn.pip, drawn.mcp],
		[drawn.hold.from, drawn.hold.to],
		...Object.values(drawn.armLines).map(({ from, to }) => [from, to]),
		...Object.values(arrows).flatMap((arrow) =>
			arrow ? [[arrow.segment.from, arrow.segment.to]] : []
		)
	].map((line) => line.map(pair));
	const ring = ({ x, y }: Point) => ({ cx: x, cy: y, width: 18, height: 18, angle: 0 });
	return placeLabels(requests, {
		frame: { left: 4, top: 4, right: width - 4, bottom: height - 26 },
		lines,
		boxes: [
			drawn.contact,
			drawn.pip,
			drawn.mcp,
			drawn.tip,
			...Object.values(drawn.armLines).map(({ handle }) => handle)
		].map(ring)
	});
}

/** Everything the drawing shows, for those who do not see it. */
export function chainWords(shown: ChainShown): string {
	const { chain, moments, fdp, fds, arms } = shown;
	const millimetres = (metres: number) => `${digits(metres * 1000)} mm`;
	return [
		`One finger on a hold that slopes ${degrees(shown.slope)}: the centre of pressure lies ${millimetres(chain.contactDistance)} from the last joint.`,
		`The last joint is bent ${degrees(chain.dipFlexion)}, the middle joint ${degrees(chain.pipFlexion)}.`,
		`The hold presses with ${force(Math.hypot(shown.force.x, shown.force.y), 'N')}; moments are ${digits(moments.dip)}, ${digits(moments.pip)} and ${digits(moments.mcp)} newton metres at the last joint, the middle joint and the knuckle.`,
		`Arms: deep flexor ${millimetres(arms.fdpDip)} and ${millimetres(arms.fdpPip)}, superficial flexor ${millimetres(arms.fdsPip)}.`,
		`The deep flexor pulls with ${force(fdp, 'N')}, the superficial one with ${force(fds, 'N')}. Teaching values, uncertain by about a factor of two.`
	].join(' ');
}
