import type { FrictionLaw } from '../../types.ts';
import { fitLine, type LineFit } from './fit-line.ts';
import { fitPower, type PowerFit } from './fit-power.ts';
import { fitThroughOrigin, type ProportionalFit } from './fit-through-origin.ts';
import type { Pair } from './pairs.ts';
import { studentFactor } from './student-factor.ts';

/** Three laws fitted to one set of pairs, and what the pairs say about them. */
export type LawComparison = {
	proportional: ProportionalFit;
	line: LineFit;
	power: PowerFit;
	/** The law the pairs support; 'unclear' where they cannot tell. */
	supported: 'proportional' | 'line' | 'power' | 'unclear';
	sentence: string;
	/** Range of the intercept, N, and of the exponent, that holds in 95 of 100 cases. */
	interceptRange: [number, number];
	exponentRange: [number, number];
};

const range = (value: number, error: number, freedom: number): [number, number] => {
	const reach = studentFactor(freedom) * error;
	return [value - reach, value + reach];
};
const outside = ([low, high]: [number, number], value: number) => value < low || value > high;
const digits = (value: number) => String(Number(value.toPrecision(3)));

/**
 * Fits three laws (proportional, with intercept, power) and says plainly which one is supported.
 * A law beyond proportion is supported only if its extra number differs from 0 (intercept) or 1
 * (exponent) by more than its 95-in-100 range.
 * @param pairs at least four pairs, N
 * @returns the fits, the supported law and a sentence
 * Valid for: pairs taken in mixed order; loads that vary at least twofold.
 * Errors: RangeError naming the pair at fault, or that there are fewer than four.
 * Source: derived
 * Example: pairs near f = 0.4 N with small scatter give supported 'proportional'.
 */
export function compareLaws(pairs: Pair[]): LawComparison {
	if (pairs.length < 4) throw new RangeError(`pairs = ${pairs.length}: at least 4 are needed`);
	const fits = {
		proportional: fitThroughOrigin(pairs),
		line: fitLine(pairs),
		power: fitPower(pairs)
	};
	const { proportional, line, power } = fits;
	const interceptRange = range(line.intercept, line.interceptError, line.freedom);
	const exponentRange = range(power.exponent, power.exponentError, power.freedom);
	const loads = pairs.map(({ normal }) => normal);
	const span = Math.max(...loads) / Math.min(...loads);
	const result = (supported: LawComparison['supported'], sentence: string): LawComparison => ({
		...{ ...fits, interceptRange, exponentRange, supported, sentence }
	});
	const shift = outside(interceptRange, 0);
	const bend = outside(exponentRange, 1);
	if (!shift && !bend)
		return span < 2
			? result(
					'unclear',
					'The loads lie too close together to tell the laws apart: vary them at least twofold.'
				)
			: result(
					'proportional',
					`Friction in proportion to load is enough: coefficient ${digits(proportional.coefficient)}. Neither an intercept nor a bend is supported.`
				);
	if (line.intercept < 0 && power.exponent > 1)
		return result(
			power.rest <= line.rest ? 'power' : 'line',
			`The ratio rises with load here (exponent ${digits(power.exponent)}). Check the zero of the scale first: an offset looks the same.`
		);
	if (Math.abs(Math.log(line.rest / power.rest)) < 0.1 * Math.log(pairs.length))
		return result(
			'unclear',
			`The ratio falls with load, but an intercept (${digits(line.intercept)} N) and a power (exponent ${digits(power.exponent)}) fit alike: add smaller and larger loads.`
		);
	return line.rest < power.rest
		? result(
				'line',
				`A part that does not depend on load is supported: ${digits(line.intercept)} N, and ${digits(line.coefficient)} of the load.`
			)
		: result(
				'power',
				`A power of load is supported: exponent ${digits(power.exponent)}; the ratio falls as the load grows.`
			);
}

/**
 * Turns a fit into a friction law of the same form over mean pressure, for one contact area.
 * Formula: proportional → constant; line → adhesion with shear strength S/A; power → power with the
 * middle load over A as reference pressure.
 * @param comparison what `compareLaws` returned
 * @param kind which of the three
 * @param area contact area, m², above 0, taken as the same at every load
 * @returns the law
 * Errors: RangeError naming the area when it is not above 0.
 * Source: derived
 */
export function lawFromFit(
	comparison: LawComparison,
	kind: 'proportional' | 'line' | 'power',
	area: number
): FrictionLaw {
	if (!(area > 0)) throw new RangeError(`area = ${area} m² must be above 0`);
	const { proportional, line, power } = comparison;
	if (kind === 'proportional') return { kind: 'constant', coefficient: proportional.coefficient };
	if (kind === 'line')
		return {
			kind: 'adhesion',
			coefficient: line.coefficient,
			shearStrength: line.intercept / area
		};
	return {
		...{ kind: 'power', coefficient: power.ratioAtReference, exponent: power.exponent },
		referencePressure: power.referenceNormal / area
	};
}
