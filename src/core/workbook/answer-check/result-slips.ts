import type { Values } from '../algebra/evaluate.ts';
import { numberText } from '../algebra/number-text.ts';
import type { Setup } from '../statics/types.ts';
import type { Slip } from './slip.ts';

/** Slips in the last line: another quantity, the wrong sign, the wrong unit. */
export function resultSlips(setup: Setup, values: Values, ask: string, right: number): Slip[] {
	const of = setup.quantities.find((each) => each.id === ask)!;
	const slips: Slip[] = [];
	const add = (slip: string, words: string, value: number, rank: number, step = ask) =>
		slips.push({ slip, words, step, value, rank });
	for (const each of setup.quantities) {
		const value = values[each.id];
		if (each.id === ask || each.unit !== of.unit || value === undefined || value === 0) continue;
		const kind = each.symbol === of.symbol ? 'swapped-parts' : 'other-quantity';
		add(kind, `this is the ${each.name}, not the ${of.name}`, value, 2, each.id);
	}
	add('sign', 'the answer has the wrong sign', -right, 1);
	if (of.unit === 'rad') {
		add(
			'radians-for-degrees',
			'an angle in radians was given as if in degrees',
			(right * Math.PI) / 180,
			1
		);
		add(
			'radians-for-degrees',
			'an angle in degrees was given as if in radians',
			(right * 180) / Math.PI,
			1
		);
		add(
			'angle-from-normal',
			'the angle was given from the other side (90° minus it)',
			Math.PI / 2 - right,
			1
		);
		const tangent = Math.tan(right);
		add(
			'inverse-not-taken',
			'the tangent was given instead of the angle',
			(tangent * Math.PI) / 180,
			1
		);
	}
	if (of.unit === 'N') {
		add(
			'mass-for-weight',
			'this is the force divided by g: a mass',
			right / (values.gravity ?? 9.80665),
			1
		);
		add(
			'weight-times-g',
			'it was multiplied by g once too often',
			right * (values.gravity ?? 9.80665),
			2
		);
	}
	if (of.unit === 'kg')
		add(
			'weight-for-mass',
			'this is the weight, not the mass',
			right * (values.gravity ?? 9.80665),
			1
		);
	if (of.unit === '1' && right !== 0)
		add('upside-down', 'the ratio was turned upside down', 1 / right, 2);
	for (const power of [10, 100, 1000])
		for (const factor of [power, 1 / power])
			add(
				'power-of-ten',
				`a factor of ${numberText(power)} too ${factor > 1 ? 'large' : 'small'}`,
				right * factor,
				3
			);
	return slips;
}
