import { massIn, type MassUnit } from '#core/units/mass-text.ts';
import { regionsIn, type Results } from '#state/setup/results.ts';
import { writeCurves } from '#storage/codecs/csv-curves.ts';
import { seriesCsv } from '../series-csv.ts';
import { marginSeries } from './margin-series.ts';
import { axes } from './set-up/axes.ts';

/** Columns of the file: twice what the screen needs. */
const columns = 240;

/** Units in letters that every table program reads, whatever it takes the file's letters for. */
const letters: Record<string, string> = { 'mm²': 'mm2', '°': 'deg', '': 'ratio' };

/** The region's edges, one row for each stretch that holds; a row without loads holds nowhere. */
export function regionCsv(results: Results, mass: MassUnit): string {
	const { label, unit, perUnit } = axes[results.setup.axis];
	const rows = regionsIn(columns, results).flatMap((one) =>
		one.region.columns.flatMap(({ value, intervals }) =>
			(intervals.length > 0 ? intervals : [undefined]).map((interval) => ({
				name: one.label,
				value: value * perUnit,
				from: interval && massIn(interval.from, mass),
				to: interval && massIn(interval.to, mass),
				lower: interval?.lowerLimit,
				upper: interval?.upperLimit
			}))
		)
	);
	const words = { slip: 'slip', strength: 'strength', range: 'end of range' };
	const named = (limit: keyof typeof words | undefined) => limit && words[limit];
	return writeCurves([
		{ name: 'case', cells: rows.map(({ name }) => name) },
		{
			name: label.toLowerCase(),
			unit: letters[unit] ?? unit,
			cells: rows.map(({ value }) => value)
		},
		{ name: 'lightest load that holds', unit: mass, cells: rows.map(({ from }) => from) },
		{ name: 'heaviest load that holds', unit: mass, cells: rows.map(({ to }) => to) },
		{ name: 'limit below', cells: rows.map(({ lower }) => named(lower)) },
		{ name: 'limit above', cells: rows.map(({ upper }) => named(upper)) }
	]);
}

/** The margin curves, one row for each net load. */
export const marginCsv = (results: Results, mass: MassUnit): string =>
	seriesCsv(marginSeries(results), mass);
