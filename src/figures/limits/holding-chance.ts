import type { CurvePoint } from '#core/trials/holding-curve.ts';
import type { Outcome, Trial } from '#core/trials/trial.ts';
import { formatNumber } from '#core/units/format-number.ts';
import { massIn, massText, type MassUnit } from '#core/units/mass-text.ts';
import type { Frame } from '#plot/box.ts';
import { alongLine } from '#plot/label-candidates.ts';
import { linesPath } from '#plot/paths.ts';
import { placeLabels, type LabelRequest, type PlacedLabel } from '#plot/place-labels.ts';
import type { Point } from '#plot/point.ts';
import { lineLength } from '#plot/polyline.ts';
import { linearScale, type Scale } from '#plot/scales.ts';
import { textWidth } from '#plot/text-width.ts';
import { linearTicks } from '#plot/ticks.ts';

/** Lanes under the curve, one for each way a trial ends. */
export const lanes: readonly Outcome[] = ['held', 'slipped', 'opened', 'stopped', 'unknown'];
export const laneHeight = 23;
export const labelSize = 13;
/** Marks of one outcome nearer than this are drawn as one with their number, px. */
const together = 17;

export type ChanceView = {
	curve: readonly CurvePoint[];
	trials: readonly Pick<Trial, 'load' | 'outcome'>[];
	massUnit: MassUnit;
	/** Heaviest load that may be suggested, kg. */
	cap?: number | undefined;
	width: number;
	height: number;
};

export type Mark = { outcome: Outcome; x: number; y: number; count: number };
export type DrawnChance = {
	frame: Frame;
	x: Scale;
	y: Scale;
	xTicks: number[];
	yTicks: number[];
	band: string;
	holds: string;
	slips: string;
	opens: string;
	/** Stretches where nothing was tried, px. */
	untried: { from: number; to: number }[];
	marks: Mark[];
	lanes: { outcome: Outcome; y: number }[];
	cap: number | undefined;
	bottom: number;
	labels: PlacedLabel[];
};

/** Loads at both ends of the picture, kg: a little beyond where the curve may be drawn. */
export function chanceRange(curve: readonly CurvePoint[]): [number, number] {
	const tried = curve.filter((point) => point.tried).map(({ load }) => load);
	const [from, to] = [Math.min(...tried), Math.max(...tried)];
	const room = 0.12 * (to - from);
	return [Math.max(0, from - room), to + room];
}

/** Everything the picture of chances draws, in px. */
export function holdingChance(view: ChanceView): DrawnChance {
	const { curve, trials, massUnit, cap, width, height } = view;
	const shown = (load: number) => massIn(load, massUnit);
	const frame: Frame = {
		left: 74,
		top: 27,
		right: Math.max(width - 12, 150),
		bottom: height - 46 - lanes.length * laneHeight
	};
	const [from, to] = chanceRange(curve).map(shown) as [number, number];
	const x = linearScale([from, to], [frame.left, frame.right]);
	const y = linearScale([0, 100], [frame.bottom, frame.top]);
	const tried = curve.filter((point) => point.tried);
	const line = (of: (point: CurvePoint) => number): Point[] =>
		tried.map((point) => [x(shown(point.load)), y(100 * of(point))]);
	const lines = {
		holds: line(({ holds }) => holds.mean),
		slips: line(({ sticks }) => 1 - sticks.mean),
		opens: line(({ keeps }) => 1 - keeps.mean)
	};
	const upper = line(({ holds }) => holds.q95);
	const lower = line(({ holds }) => holds.q05);
	const ends = [lines.holds[0]?.[0] ?? frame.left, lines.holds.at(-1)?.[0] ?? frame.right];
	const capAt =
		cap !== undefined && shown(cap) >= from && shown(cap) <= to ? x(shown(cap)) : undefined;
	const laneTop = frame.bottom + 8;
	return {
		...{ frame, x, y, cap: capAt },
		xTicks: linearTicks(from, to, (frame.right - frame.left) / 60),
		yTicks: [0, 25, 50, 75, 100],
		band: linesPath([[...upper, ...[...lower].reverse()]], true),
		holds: linesPath([lines.holds]),
		slips: linesPath([lines.slips]),
		opens: linesPath([lines.opens]),
		untried: [
			{ from: frame.left, to: ends[0]! },
			{ from: ends[1]!, to: frame.right }
		].filter((stretch) => stretch.to - stretch.from > 1),
		marks: marksOf(trials, (load) => x(shown(load)), laneTop),
		lanes: lanes.map((outcome, k) => ({ outcome, y: laneTop + (k + 0.5) * laneHeight })),
		bottom: laneTop + lanes.length * laneHeight,
		labels: labelsOf(lines, { frame, cap: capAt })
	};
}

/** One mark for each place where trials of one outcome lie close together. */
function marksOf(
	trials: ChanceView['trials'],
	place: (load: number) => number,
	top: number
): Mark[] {
	return lanes.flatMap((outcome, k) => {
		const places = trials
			.filter((trial) => trial.outcome === outcome)
			.map(({ load }) => place(load))
			.sort((a, b) => a - b);
		const marks: Mark[] = [];
		let first = NaN;
		for (const x of places) {
			const last = marks.at(-1);
			if (last && x - first < together) {
				last.x += (x - last.x) / (last.count + 1);
				last.count++;
			} else {
				marks.push({ outcome, x, y: top + (k + 0.5) * laneHeight, count: 1 });
				first = x;
			}
		}
		return marks;
	});
}

function labelsOf(
	lines: { holds: Point[]; slips: Point[]; opens: Point[] },
	{ frame, cap }: { frame: Frame; cap: number | undefined }
): PlacedLabel[] {
	const texts = { holds: 'holds', slips: 'slips', opens: 'fingers open' } as const;
	const size = (text: string) => ({ width: textWidth(text, labelSize), height: labelSize + 2 });
	const requests: LabelRequest[] = (['holds', 'slips', 'opens'] as const)
		.filter((id) => lineLength(lines[id]) > 0)
		.map((id) => ({
			id,
			text: texts[id],
			candidates: alongLine(lines[id], size(texts[id]), { right: 5, left: 5 }).map((box) => ({
				...box,
				angle: Math.abs(box.angle) > 60 ? 0 : box.angle
			}))
		}));
	if (cap !== undefined) {
		const { width, height } = size('cap');
		requests.push({
			id: 'cap',
			text: 'cap',
			always: true,
			candidates: [
				{ cx: cap + width / 2 + 5, cy: frame.top + 8, width, height, angle: 0 },
				{ cx: cap - width / 2 - 5, cy: frame.top + 8, width, height, angle: 0 }
			]
		});
	}
	return placeLabels(requests, { frame, lines: Object.values(lines) });
}

/** The picture in words. */
export function chanceDescription({
	curve,
	trials,
	massUnit
}: Omit<ChanceView, 'width' | 'height'>) {
	const tried = curve.filter((point) => point.tried);
	const some = [0, 0.25, 0.5, 0.75, 1].map(
		(share) => tried[Math.round(share * (tried.length - 1))]!
	);
	const percent = (chance: number) => `${formatNumber(100 * chance, { digits: 2 })} %`;
	const counts = lanes
		.map(
			(outcome) => [outcome, trials.filter((trial) => trial.outcome === outcome).length] as const
		)
		.filter(([, count]) => count > 0)
		.map(([outcome, count]) => `${count} ${outcome}`);
	return `Chance of holding: ${some
		.map(
			({ load, holds }) =>
				`at ${massText(load, massUnit)} ${percent(holds.mean)} (likely ${percent(holds.q05)} to ${percent(holds.q95)})`
		)
		.join(', ')}. Trials: ${counts.join(', ')}.`;
}
