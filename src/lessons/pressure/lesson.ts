import { anchoredCurve } from '#core/mechanisms/load-effect.ts';
import { evaluateHang } from '#core/strength/evaluate-hang.ts';
import { loadAtNetMass } from '#core/mechanics/load-at-net-mass.ts';
import type { Hang } from '#core/types.ts';
import { marginSamples, samplesOf } from '#figures/margin/helpers.ts';
import type { MarginSeries } from '#figures/margin/types.ts';
import { curvePoints, lessonGivens } from '#seeds/lessons.ts';
import { listedLesson } from '../list.ts';
import type { Bench, Lesson } from '../types.ts';
import { filmHang } from './film-hang.ts';
import { write } from './write.ts';

const given = lessonGivens.pressure;

export const pressure: Lesson = {
	...listedLesson('pressure'),
	fields: given.fields,
	before: {},
	controls: ['change', 'area', 'shear'],
	pictures: [
		{ key: 'margin', label: 'Margins' },
		{ key: 'laws', label: 'Three laws' },
		{ key: 'region', label: 'Loads that hold' }
	],
	shown: 'margin',
	picture(key, bench) {
		if (key === 'forces') return { kind: 'forces' };
		if (key === 'region') return { kind: 'region', overlays: [] };
		const own = marginSamples(bench.hang, bench.range, curvePoints);
		if (key !== 'laws') return { kind: 'margin', series: own, window: bench.window };
		const [slip] = own;
		const series = [{ ...slip, label: 'falls: skin that sticks' }, ...otherLaws(bench)];
		const { netMass, contact } = bench;
		// Strength is not the matter of this picture: no mark for a line that is not drawn.
		const point = { netMass, slipMargin: contact.slipMargin, strengthMargin: NaN };
		return { kind: 'margin', series, window: bench.window, point };
	},
	write
};

/** A law that stays and one that rises, drawn through the hang's own point. */
function otherLaws({ hang, range, netMass, contact }: Bench): MarginSeries[] {
	const point = { netMass, margin: contact.slipMargin };
	const laws: [string, Hang][] = [
		['stays: constant', { ...hang, friction: { kind: 'constant', coefficient: 1 } }],
		['rises: film, assumed', filmHang(hang)]
	];
	return laws.map(([label, other]) => {
		const margin = (m: number) => evaluateHang(other, loadAtNetMass(m, other)).slipMargin;
		const through = point.margin > 0 && point.margin < Infinity;
		const curve = through ? anchoredCurve(margin, point) : margin;
		const [slip] = samplesOf(
			(m) => ({ slipMargin: curve(m), strengthMargin: Infinity }),
			range,
			curvePoints
		);
		return { ...slip, label, kind: 'other' };
	});
}
