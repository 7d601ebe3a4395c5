import type { Interval } from '#core/types.ts';
import { holdingWindow } from '#core/region/holding-window.ts';
import { loadRange, type Results } from '#state/setup/results.ts';
import type { NumberKey, Setup } from '#storage/codecs/setup.ts';

/** One set-up as the comparison shows it: its load, margins and window, SI. */
export type Side = {
	key: 'first' | 'second';
	name: string;
	results: Results;
	bodyMass: number;
	netMass: number;
	/** Over the load axis that both share. */
	window: Interval[];
};

/** Both set-ups on one load axis. */
export function sidesOf(first: Results, second: Results): { sides: [Side, Side]; range: Range } {
	const [one, other] = [loadRange(first.setup), loadRange(second.setup)];
	const range = { from: Math.min(one.from, other.from), to: Math.max(one.to, other.to) };
	const side = (key: Side['key'], name: string, results: Results): Side => ({
		...{ key, name, results },
		bodyMass: results.hang.hangingMass,
		netMass: results.netMass,
		window: holdingWindow(results.hang, range)
	});
	return { sides: [side('first', 'first', first), side('second', 'second', second)], range };
}

type Range = { from: number; to: number };

/** Words for the fields that a comparison may differ in. */
const words: Partial<Record<keyof Setup, [label: string, unit: string]>> = {
	body: ['body mass', 'kg'],
	change: ['net load less body mass', 'kg'],
	slope: ['hold slope', '°'],
	radius: ['radius of the hold', 'mm'],
	law: ['friction law', ''],
	mu: ['friction coefficient', ''],
	shear: ['shear strength', 'kPa'],
	pressure: ['reference pressure', 'kPa'],
	exponent: ['exponent', ''],
	deformation: ['deformation', ''],
	film: ['ratio on the film', ''],
	through: ['pressure through the film', 'kPa'],
	sharpness: ['sharpness', ''],
	patch: ['patch', ''],
	area: ['contact area', 'mm²'],
	growth: ['growth exponent', ''],
	largest: ['largest patch', 'mm²'],
	rope: ['rope angle', '°'],
	push: ['steady push', 'N'],
	fingers: ['fingers', ''],
	hands: ['hands', ''],
	best: ['best hang', 'kg'],
	bestFingers: ['fingers in the best hang', ''],
	bestHands: ['hands in the best hang', ''],
	edge: ['edge of the best hang', 'mm'],
	bestTime: ['time of the best hang', 's'],
	hold: ['hold time', 's'],
	padWidth: ['pad width', 'mm'],
	padLength: ['last joint to fingertip', 'mm'],
	padDepth: ['bone above skin', 'mm']
};

export type Difference = {
	key: NumberKey | 'law' | 'patch';
	label: string;
	unit: string;
	first: string | number;
	second: string | number;
};

/** The fields in which two set-ups differ. */
export function differences(first: Setup, second: Setup): Difference[] {
	return (Object.entries(words) as [Difference['key'], [string, string]][])
		.filter(([key]) => first[key] !== second[key])
		.map(([key, [label, unit]]) => ({ key, label, unit, first: first[key], second: second[key] }));
}
