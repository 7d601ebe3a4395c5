import { mechanismCurve } from '#core/mechanisms/mechanism-margin.ts';
import { marginSamples, samplesOf } from '#figures/margin/helpers.ts';
import { curvePoints, lessonGivens } from '#seeds/lessons.ts';
import { listedLesson } from '../list.ts';
import type { Bench, Lesson } from '../types.ts';
import { drifting, write } from './write.ts';

const given = lessonGivens.fair;

export const fair: Lesson = {
	...listedLesson('fair'),
	fields: given.fields,
	before: {},
	controls: [],
	pictures: [
		{ key: 'split', label: 'Chance alone' },
		{ key: 'drift', label: 'Order alone' }
	],
	shown: 'split',
	picture(key, bench) {
		if (key === 'split') return { kind: 'split', ...given.split };
		if (key === 'forces') return { kind: 'forces' };
		return drift(bench);
	},
	write
};

/** Margins when only the order of the goes matters: load itself does nothing. */
function drift({ hang, contact, netMass, range, window }: Bench) {
	const margin = mechanismCurve('orderDrift', hang, drifting);
	const [, strength] = marginSamples(hang, range, curvePoints);
	const [moved] = samplesOf(
		(m) => ({ slipMargin: margin(m), strengthMargin: Infinity }),
		range,
		curvePoints
	);
	const [still] = marginSamples(hang, range, curvePoints);
	return {
		kind: 'margin' as const,
		series: [
			{ ...moved, label: 'seen, loads in rising order' },
			strength,
			{ ...still, label: 'what load does', kind: 'other' as const }
		],
		window,
		point: { ...contact, slipMargin: margin(netMass), netMass }
	};
}
