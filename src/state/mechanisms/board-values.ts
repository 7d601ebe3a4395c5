import { degreesToRadians, radiansToDegrees } from '#core/units/angle.ts';
import type { Hang } from '#core/types.ts';
import type { MechanismRow, Parameter } from '#reference/types.ts';

/** A mechanism's numbers by field, SI units and radians. */
export type Values = Readonly<Record<string, number>>;

/**
 * A number that the rows leave out unless asked for: one study finds no effect of time at heavy load.
 * Where it starts it stands for none.
 */
const fade: Parameter = {
	field: 'fadeForce',
	what: 'load on one pad at which half the rise is left',
	unit: 'N',
	start: 0,
	range: [20, 400],
	status: 'assumed',
	source: ['jsme2003']
};

/** Ratios that only scale the whole curve: it passes through the person's own point in any case. */
const scaledAway = new Set(['constant', 'saturation', 'shearLoss', 'sittingTime']);

/** The numbers of a mechanism that move its curve. */
export function parametersOf(row: MechanismRow): readonly Parameter[] {
	const moving = row.parameters.filter(
		({ field }) => !(field === 'coefficient' && scaledAway.has(row.boardKey ?? ''))
	);
	return row.boardKey === 'sittingTime' ? [...moving, fade] : moving;
}

/** True for a number that is switched off at its start. */
export function canBeNone(parameter: Parameter): boolean {
	return parameter.field === fade.field;
}

/** Ends past which the core's formulas do not go. */
const hardEnds: Readonly<Record<string, readonly [number, number]>> = {
	'natural-growth exponent': [0, 1],
	'rounded-hold exponent': [0, 1],
	'shear-loss loss': [0, 0.3],
	'flatter-hand largestFactor': [1, 3]
};

/**
 * How far a number may be moved: half its range past either end, so that one can see what lies beyond
 * what is known, but never past where the formula ends.
 */
export function limitsOf(row: MechanismRow, parameter: Parameter): readonly [number, number] {
	const hard = hardEnds[`${row.key} ${parameter.field}`];
	if (hard) return hard;
	const [from, to] = parameter.range;
	const spare = (to - from) / 2;
	return [from < 0 ? from - spare : from / 2, to + spare];
}

/** The numbers that the person's own set-up already says, where it says any. */
function ownValues(row: MechanismRow, hang: Hang): Values {
	const { friction, grip } = hang;
	const growth: Values = grip.contact.kind === 'growing' ? { exponent: grip.contact.exponent } : {};
	switch (row.key) {
		case 'rope-lean':
			return hang.ropeAngle === 0 ? {} : { ropeAngle: hang.ropeAngle };
		case 'steady-push':
			return hang.push ? { push: hang.push } : {};
		case 'rounded-hold':
			return hang.radius === undefined ? growth : { ...growth, radius: hang.radius };
		case 'adhesion':
		case 'natural-growth': {
			const own = row.key === 'adhesion' ? {} : growth;
			if (friction.kind !== 'adhesion') return own;
			const { coefficient, shearStrength } = friction;
			return { ...own, coefficient, shearStrength };
		}
		case 'deformation': {
			if (friction.kind !== 'deformation') return {};
			const { coefficient, deformation, referencePressure } = friction;
			return { coefficient, deformation, referencePressure };
		}
		case 'powder-film': {
			if (friction.kind !== 'film') return {};
			const { filmCoefficient, coefficient, breakthroughPressure, sharpness } = friction;
			return { filmCoefficient, coefficient, breakthroughPressure, sharpness };
		}
		default:
			return {};
	}
}

/** The rows' angles are degrees written in radians, cut short. */
function tenthOfDegree(radians: number): number {
	return degreesToRadians(Math.round(radiansToDegrees(radians) * 10) / 10);
}

/** Where a mechanism's numbers start: from the person's own set-up, else from the rows. */
export function startValues(row: MechanismRow, hang: Hang): Values {
	const starts = [...row.parameters, ...parametersOf(row)].map(({ field, unit, start }) => [
		field,
		unit === 'rad' ? tenthOfDegree(start) : start
	]);
	return { ...(Object.fromEntries(starts) as Values), ...ownValues(row, hang) };
}

/** The numbers that lie outside the range worth trying. */
export function strayParameters(row: MechanismRow, values: Values): Parameter[] {
	return parametersOf(row).filter((parameter) => {
		const value = values[parameter.field]!;
		if (canBeNone(parameter) && value === parameter.start) return false;
		const [from, to] = parameter.range;
		const dust = (to - from) * 1e-9;
		return value < from - dust || value > to + dust;
	});
}
