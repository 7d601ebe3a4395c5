import { formatNumber } from '#core/units/format-number.ts';
import { massText, type MassUnit } from '#core/units/mass-text.ts';
import type { CurvePoint, LoadRange } from './types.ts';

const words = (margin: number) =>
	margin === Infinity ? 'no limit' : margin === 0 ? '0, the pull leads off' : formatNumber(margin);

/** What a small figure shows, for those who do not see it. */
export function curveAltText(o: {
	points: readonly CurvePoint[];
	own: CurvePoint;
	doubts: readonly LoadRange[];
	unit: MassUnit;
}): string {
	const { points, own, doubts, unit } = o;
	const [first, last] = [points[0]!, points.at(-1)!];
	const at = ({ netMass, margin }: CurvePoint) => `${words(margin)} at ${massText(netMass, unit)}`;
	const dashed = doubts.map(({ from, to }) => `${massText(from, unit)} to ${massText(to, unit)}`);
	return [
		`Slip margin ${at(first)}, ${at(own)} where you are, ${at(last)}.`,
		...(dashed.length > 0 ? [`Drawn dashed from ${dashed.join(' and from ')}.`] : [])
	].join(' ');
}
