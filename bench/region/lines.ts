import { holdingWindow, type Hang } from '#core/index.ts';
import { hangOnAxis } from '#core/region/hang-on-axis.ts';
import type { HoldingRegion } from '#core/region/holding-region.ts';
import type { RegionAxis } from '#core/types.ts';
import type { Lines, Point } from './baseline.ts';

type Options = { axis: RegionAxis; from: number; to: number; load: { from: number; to: number } };

/** The edges a region gives, as lines of the plot: one each side of every interval, and the upright ones. */
export function edgeLines(hang: Hang, region: HoldingRegion, o: Options): Lines {
	const lines: Lines = [];
	let open: (Point[] | undefined)[] = [];
	let shape = '';
	for (const { value, intervals } of region.columns) {
		const x = (value - o.from) / (o.to - o.from);
		const ends = intervals.flatMap(({ from, to, lowerLimit, upperLimit }) => [
			{ y: from, limit: lowerLimit },
			{ y: to, limit: upperLimit }
		]);
		const here = ends.map(({ limit }) => limit).join();
		if (here !== shape) open = [];
		shape = here;
		ends.forEach(({ y, limit }, i) => {
			if (limit === 'range') return;
			let line = open[i];
			if (!line) lines.push((line = open[i] = []));
			line.push({ x, y: (y - o.load.from) / (o.load.to - o.load.from) });
		});
	}
	for (const { value, netMass } of region.crossings)
		lines.push([
			{
				x: (value - o.from) / (o.to - o.from),
				y: (netMass - o.load.from) / (o.load.to - o.load.from)
			}
		]);
	for (const value of region.breaks) lines.push(...uprights(hang, value, o));
	return lines;
}

/** The upright edge at a break, where much of the window appears or goes at once. */
function uprights(hang: Hang, value: number, o: Options): Lines {
	const step = 1e-9 * (o.to - o.from);
	const windows = [value - step, value + step].map((at) => {
		const there = hangOnAxis(hang, o.axis, at, hang.hangingMass);
		return there ? holdingWindow(there, o.load) : [];
	});
	const total = (i: number) => windows[i]!.reduce((sum, { from, to }) => sum + to - from, 0);
	const span = o.load.to - o.load.from;
	if (Math.abs(total(0) - total(1)) < 0.01 * span) return [];
	const [less, more] = total(0) < total(1) ? windows : [windows[1], windows[0]];
	const line: Point[] = [];
	for (const { from, to } of more!)
		for (let i = 1; i < 20; i++) {
			const netMass = from + ((to - from) * i) / 20;
			if (less!.some((other) => other.from <= netMass && netMass <= other.to)) continue;
			line.push({ x: (value - o.from) / (o.to - o.from), y: (netMass - o.load.from) / span });
		}
	return [line];
}
