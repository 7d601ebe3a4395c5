import { holdingWindow } from '#core/region/holding-window.ts';
import { evaluateHang } from '#core/strength/evaluate-hang.ts';
import { squareMillimetresToSquareMetres } from '#core/units/area.ts';
import { marginSamples } from '#figures/margin/helpers.ts';
import { curvePoints, lessonGivens } from '#seeds/lessons.ts';
import { listedLesson } from '../list.ts';
import type { Bench, Lesson } from '../types.ts';
import { write } from './write.ts';

const given = lessonGivens.window;

export const holding: Lesson = {
	...listedLesson('window'),
	fields: given.fields,
	before: {},
	controls: ['change', 'area', 'hold'],
	pictures: [
		{ key: 'region', label: 'Loads that hold' },
		{ key: 'margin', label: 'Margins' },
		{ key: 'open', label: 'Opened grip' }
	],
	shown: 'region',
	picture(key, bench) {
		if (key === 'forces') return { kind: 'forces' };
		if (key === 'region') return { kind: 'region', overlays: [] };
		if (key === 'open') return opened(bench);
		return {
			kind: 'margin',
			series: marginSamples(bench.hang, bench.range, curvePoints),
			window: bench.window
		};
	},
	write
};

/** Margins of the opened grip, with the small patch's slip margin laid over. */
function opened({ hang, load, netMass, range }: Bench) {
	const padArea = squareMillimetresToSquareMetres(given.openArea);
	const open = { ...hang, grip: { ...hang.grip, contact: { kind: 'fixed', padArea } as const } };
	const [slip] = marginSamples(hang, range, curvePoints);
	return {
		kind: 'margin' as const,
		series: [
			...marginSamples(open, range, curvePoints),
			{ ...slip, label: 'slip margin, small patch', kind: 'other' as const }
		],
		window: holdingWindow(open, range),
		point: { ...evaluateHang(open, load), netMass }
	};
}
