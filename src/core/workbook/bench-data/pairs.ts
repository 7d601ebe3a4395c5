/** One measured pair: what presses (normal force) and the friction at which it starts or slides, N. */
export type Pair = { normal: number; friction: number };

/** What every fit reports: its estimates with standard errors, and what it leaves over. */
export type Fit = {
	/** Friction left over at each pair, N. */
	residuals: number[];
	/** Sum of squares of the residuals, N². */
	rest: number;
	/** Residual standard deviation, N. */
	spread: number;
	/** Pairs minus estimates. */
	freedom: number;
};

/**
 * Checks measured pairs once, at the border.
 * @param pairs the pairs, N
 * @param least least number of pairs
 * Errors: RangeError naming the pair (counted from 1) or the number of pairs at fault.
 * Source: derived
 */
export function checkPairs(pairs: Pair[], least: number): void {
	if (pairs.length < least)
		throw new RangeError(`pairs = ${pairs.length}: at least ${least} are needed`);
	pairs.forEach(({ normal, friction }, index) => {
		if (!(normal > 0) || !Number.isFinite(normal))
			throw new RangeError(`pair ${index + 1}: normal = ${normal} N must be above 0`);
		if (!(friction >= 0) || !Number.isFinite(friction))
			throw new RangeError(`pair ${index + 1}: friction = ${friction} N must not be below 0`);
	});
}

/** Sum over pairs. */
export function sum(pairs: Pair[], of: (pair: Pair) => number): number {
	return pairs.reduce((total, pair) => total + of(pair), 0);
}

/** Residuals of a fitted law and what follows from them. */
export function leftOver(pairs: Pair[], law: (normal: number) => number, estimates: number): Fit {
	const residuals = pairs.map(({ normal, friction }) => friction - law(normal));
	const rest = residuals.reduce((total, each) => total + each * each, 0);
	const freedom = pairs.length - estimates;
	return { residuals, rest, spread: Math.sqrt(rest / freedom), freedom };
}
