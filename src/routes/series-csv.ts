import { massIn, type MassUnit } from '#core/units/mass-text.ts';
import type { MarginSeries } from '#figures/margin/types.ts';
import type { Point } from '#plot/point.ts';
import { writeCurves, type CurveColumn } from '#storage/codecs/csv-curves.ts';

type Named = Pick<MarginSeries, 'label' | 'points'> & { kind?: MarginSeries['kind'] };

/** Margin curves as CSV, one row for each net load that any of them has. */
export function seriesCsv(series: readonly Named[], mass: MassUnit): string {
	return linesCsv(
		{ name: 'net load', unit: mass },
		series.map(({ label, kind, points }) => ({
			name: kind === 'other' ? label.replace(/^slip(?! margin)/, 'slip margin') : label,
			unit: 'ratio',
			points: points.map(({ netMass, margin }): Point => [massIn(netMass, mass), margin])
		}))
	);
}

/** Lines over one axis as CSV; a line without a point at some value has an empty cell there. */
export function linesCsv(
	axis: { name: string; unit: string },
	lines: readonly { name: string; unit: string; points: readonly Point[] }[]
): string {
	const values = [...new Set(lines.flatMap(({ points }) => points.map(([value]) => value)))].sort(
		(a, b) => a - b
	);
	const columns = lines.map(({ name, unit, points }): CurveColumn => {
		const at = new Map(points.map(([value, height]) => [value, height]));
		return { name, unit, cells: values.map((value) => at.get(value)) };
	});
	return writeCurves([{ ...axis, cells: values }, ...columns]);
}
