import { checkPairs, leftOver, sum, type Fit, type Pair } from './pairs.ts';

/** Friction as a power of load. */
export type PowerFit = Fit & {
	/** Friction at a load of 1 N, N (the factor of the power law). */
	factor: number;
	factorError: number;
	exponent: number;
	exponentError: number;
	/** Load in the middle of the pairs (geometric mean), N, and the friction ratio there. */
	referenceNormal: number;
	ratioAtReference: number;
};

/** Start values from the straight line in logarithms. */
function startValues(pairs: Pair[]): [number, number] {
	const usable = pairs.filter(({ friction }) => friction > 0);
	if (usable.length < 2) throw new RangeError('friction is 0 in nearly every pair: no power fits');
	const x = (pair: Pair) => Math.log(pair.normal);
	const y = (pair: Pair) => Math.log(pair.friction);
	const [mx, my] = [sum(usable, x) / usable.length, sum(usable, y) / usable.length];
	const squares = sum(usable, (pair) => (x(pair) - mx) ** 2);
	if (!(squares > 0)) throw new RangeError('normal is the same in every pair: vary the load');
	const slope = sum(usable, (pair) => (x(pair) - mx) * (y(pair) - my)) / squares;
	return [Math.exp(my - slope * mx), slope];
}

/** Sums of the two-parameter normal equations in ln factor and exponent. */
function normalEquations(pairs: Pair[], logFactor: number, exponent: number) {
	let [aa, ab, bb, ra, rb, rest] = [0, 0, 0, 0, 0, 0];
	for (const { normal, friction } of pairs) {
		const log = Math.log(normal);
		const value = Math.exp(logFactor + exponent * log);
		const left = friction - value;
		aa += value * value;
		ab += value * value * log;
		bb += value * value * log * log;
		ra += value * left;
		rb += value * log * left;
		rest += left * left;
	}
	return { aa, ab, bb, ra, rb, rest };
}

/**
 * Fits a power of load to pairs of normal force and friction, by least squares in newtons.
 * Formula: f = k Nⁿ; damped Gauss–Newton steps in (ln k, n) from the straight line in logarithms;
 * errors from s² (JᵀJ)⁻¹, s² = Σ residual²/(count − 2).
 * @param pairs at least three pairs, N
 * @returns factor, exponent, their standard errors, residuals, and the ratio at the middle load
 * Valid for: errors of the same size at every load.
 * Errors: RangeError naming the pair at fault, or that the load does not vary.
 * Source: nistStrd, DanWood (checked against it).
 * Example: pairs (1, 0.5), (4, 1), (16, 2) give factor 0.5 and exponent 0.5.
 */
export function fitPower(pairs: Pair[]): PowerFit {
	checkPairs(pairs, 3);
	const [start, slope] = startValues(pairs);
	let [logFactor, exponent] = [Math.log(start), slope];
	let damping = 1e-3;
	for (let turn = 0; turn < 500; turn += 1) {
		const { aa, ab, bb, ra, rb, rest } = normalEquations(pairs, logFactor, exponent);
		const [pa, pb] = [aa * (1 + damping), bb * (1 + damping)];
		const determinant = pa * pb - ab * ab;
		const stepA = (pb * ra - ab * rb) / determinant;
		const stepB = (pa * rb - ab * ra) / determinant;
		const tried = normalEquations(pairs, logFactor + stepA, exponent + stepB);
		if (tried.rest <= rest) {
			[logFactor, exponent] = [logFactor + stepA, exponent + stepB];
			damping = Math.max(damping / 10, 1e-15);
			if (Math.abs(stepA) + Math.abs(stepB) < 1e-14) break;
		} else if ((damping *= 10) > 1e12) break;
	}
	const { aa, ab, bb } = normalEquations(pairs, logFactor, exponent);
	const determinant = aa * bb - ab * ab;
	const factor = Math.exp(logFactor);
	const fit = leftOver(pairs, (normal) => factor * normal ** exponent, 2);
	const referenceNormal = Math.exp(sum(pairs, ({ normal }) => Math.log(normal)) / pairs.length);
	return {
		...fit,
		...{ factor, factorError: factor * fit.spread * Math.sqrt(bb / determinant) },
		...{ exponent, exponentError: fit.spread * Math.sqrt(aa / determinant) },
		...{ referenceNormal, ratioAtReference: factor * referenceNormal ** (exponent - 1) }
	};
}
