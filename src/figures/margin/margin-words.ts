import type { Interval } from '#core/types.ts';
import { formatNumber } from '#core/units/format-number.ts';
import { withUnit } from '#plot/format.ts';
import { massIn } from '#core/units/mass-text.ts';
import type { MassUnit } from '../region/types.ts';
import { rangeText } from './margin-labels.ts';
import type { MarginPoint, MarginSeries } from './types.ts';

function marginWords(name: string, margin: number): string {
	if (margin === Infinity) return `there is no ${name} limit`;
	if (Number.isNaN(margin)) return `the ${name} margin is not known`;
	return `the ${name} margin is ${formatNumber(margin)}`;
}

/** Everything the margin figure shows, for those who do not see it. */
export function marginAltText(o: {
	series: readonly MarginSeries[];
	load: { from: number; to: number };
	massUnit: MassUnit;
	point: MarginPoint;
	window: readonly Interval[];
}): string {
	const { series, load, massUnit, point, window } = o;
	const here = withUnit(formatNumber(massIn(point.netMass, massUnit)), massUnit);
	const holds = window.map(({ from, to }) => rangeText(from, to, massUnit)).join(' and ');
	const others = series.filter(({ kind }) => kind === 'other').map(({ label }) => label);
	return [
		`Margins on a ratio axis going up, against net load, ${rangeText(load.from, load.to, massUnit)}, going across.`,
		`At ${here} ${marginWords('slip', point.slipMargin)} and ${marginWords('strength', point.strengthMargin)}.`,
		holds
			? `Both are at least 1, and the hang holds, for ${holds}.`
			: 'No load in this range holds.',
		...(others.length > 0 ? [`Laid over: ${others.join(', ')}.`] : [])
	].join(' ');
}
