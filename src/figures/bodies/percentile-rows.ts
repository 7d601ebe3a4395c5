import { formatTick } from '#plot/format.ts';
import { linearScale } from '#plot/scales.ts';

/** One measure of one sex, m or kg. */
export type BodyMeasure = {
	key: string;
	measure: string;
	sex: 'men' | 'women';
	unit: 'm' | 'kg';
	p5: number;
	p50: number;
	p95: number;
};

const step = 21;

/** Rows of percentile ranges, each against its own middle person, in px. */
export function percentileRows(measures: readonly BodyMeasure[], width: number) {
	const narrow = width < 460;
	const [left, right] = narrow ? [112, width - 106] : [140, width - 130];
	const shares = measures.flatMap(({ p5, p50, p95 }) => [(100 * p5) / p50, (100 * p95) / p50]);
	const domain = [
		Math.floor(Math.min(...shares) / 10) * 10,
		Math.ceil(Math.max(...shares) / 10) * 10
	] as const;
	const scale = linearScale(domain, [left, right]);
	const top = 6;
	const rows = measures.map((measure, i) => {
		const { key, sex, p5, p50, p95 } = measure;
		const first = measures[i - 1]?.measure !== measure.measure;
		return {
			...{ key, sex },
			name: first ? measure.measure : '',
			y: top + 10 + step * i,
			from: scale((100 * p5) / p50),
			at: scale(100),
			to: scale((100 * p95) / p50),
			text: valuesText(measure)
		};
	});
	const axis = top + 14 + step * measures.length;
	return {
		...{ rows, scale, top, axis },
		middle: scale(100),
		height: axis + 44,
		ticks: [80, 100, 120, 140].filter((tick) => tick >= domain[0] && tick <= domain[1]),
		words: measures
			.map((measure) => `${measure.measure}, ${measure.sex}: ${valuesText(measure)}`)
			.join('. ')
	};
}

function valuesText({ unit, p5, p50, p95 }: BodyMeasure): string {
	const shown = [p5, p50, p95].map((value) => formatTick(unit === 'm' ? value * 1000 : value));
	return `${shown.join(' · ')} ${unit === 'm' ? 'mm' : 'kg'}`;
}
