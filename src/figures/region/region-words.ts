import type { Interval } from '#core/types.ts';
import { formatNumber } from '#core/units/format-number.ts';
import { withUnit } from '#plot/format.ts';
import { massText } from '#core/units/mass-text.ts';
import { axisRange } from './region-geometry.ts';
import type { MassUnit, Region, RegionAxisView, RegionOverlay, RegionPoint } from './types.ts';

type Spoken = {
	region: Region;
	axis: RegionAxisView;
	load: { from: number; to: number };
	massUnit: MassUnit;
	point: RegionPoint;
};

export const axisText = (value: number, axis: RegionAxisView) =>
	withUnit(formatNumber(axis.toScreen(value)), axis.unit);

/** The window of the drawn column that lies nearest to an axis value. */
export function intervalsNear(region: Region, value: number): Interval[] {
	let best = region.columns[0];
	for (const column of region.columns) {
		if (best && Math.abs(column.value - value) < Math.abs(best.value - value)) best = column;
	}
	return best?.intervals ?? [];
}

const endWords = { slip: 'the slip edge', strength: 'the strength edge', range: 'the range’s end' };

function intervalWords(interval: Interval, unit: MassUnit): string {
	const [from, to] = [massText(interval.from, unit), massText(interval.to, unit)];
	return `from ${from} (${endWords[interval.lowerLimit]}) to ${to} (${endWords[interval.upperLimit]})`;
}

/** What holds at the point's axis value, in words. */
export function windowWords({ region, axis, massUnit, point }: Spoken): string {
	const intervals = intervalsNear(region, point.value);
	const here = `At ${axisText(point.value, axis)}`;
	if (intervals.length === 0) return `${here} no net load in this range holds.`;
	return `${here} these net loads hold: ${intervals.map((i) => intervalWords(i, massUnit)).join(', and ')}.`;
}

/** Everything the drawing shows, for those who do not see it. */
export function regionWords(spoken: Spoken, overlays: readonly RegionOverlay[]): string {
	const { region, axis, load, massUnit, point } = spoken;
	const [from, to] = axisRange(region);
	const sentences = [
		`Net load, ${massText(load.from, massUnit)} to ${massText(load.to, massUnit)}, goes up;`,
		`${axis.label}, ${axisText(from, axis)} to ${axisText(to, axis)}, goes across.`,
		`You are at ${massText(point.netMass, massUnit)} and ${axisText(point.value, axis)}.`
	];
	const holding = region.columns.filter((column) => column.intervals.length > 0).length;
	if (holding === 0) sentences.push('No load in this range holds.');
	else sentences.push(windowWords(spoken));
	for (const crossing of region.crossings) {
		sentences.push(
			`Slip edge and strength edge cross at ${massText(crossing.netMass, massUnit)} and ${axisText(crossing.value, axis)}.`
		);
	}
	for (const { label, region: other } of overlays) {
		const words = windowWords({ ...spoken, region: other });
		sentences.push(`Laid over, ${label}: ${words.charAt(0).toLowerCase()}${words.slice(1)}`);
	}
	return sentences.join(' ');
}
