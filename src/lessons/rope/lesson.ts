import { evaluateHang } from '#core/strength/evaluate-hang.ts';
import { loadAtNetMass } from '#core/mechanics/load-at-net-mass.ts';
import { marginSamples } from '#figures/margin/helpers.ts';
import { curvePoints, lessonGivens } from '#seeds/lessons.ts';
import { listedLesson } from '../list.ts';
import type { Lesson } from '../types.ts';
import { write } from './write.ts';

const given = lessonGivens.rope;

export const rope: Lesson = {
	...listedLesson('rope'),
	fields: given.fields,
	before: { change: 0 },
	controls: ['rope', 'change'],
	pictures: [
		{ key: 'margin', label: 'Margins' },
		{ key: 'forces', label: 'Forces' },
		{ key: 'region', label: 'Loads that hold' }
	],
	shown: 'margin',
	picture(key, { hang, range, window, netMass }) {
		if (key === 'forces') return { kind: 'forces' };
		if (key === 'region') return { kind: 'region', overlays: [] };
		const plumb = { ...hang, ropeAngle: 0 };
		const [slip] = marginSamples(plumb, range, curvePoints);
		return {
			kind: 'margin',
			series: [
				...marginSamples(hang, range, curvePoints),
				{ ...slip, label: 'slip margin, plumb rope', kind: 'other' }
			],
			window,
			point: { netMass, ...evaluateHang(hang, loadAtNetMass(netMass, hang)) }
		};
	},
	write
};
