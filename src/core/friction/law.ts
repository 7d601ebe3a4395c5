import type { FrictionLaw } from '../types.ts';

/** The member of the union with one kind. */
export type LawOf<Kind extends FrictionLaw['kind']> = Extract<FrictionLaw, { kind: Kind }>;

/** What every friction law answers; one file a law. Pressures are mean pad pressures in Pa, above 0. */
export type LawFormula<Law extends FrictionLaw> = {
	/** The friction ratio μ(p). */
	ratio(law: Law, pressure: number): number;

	/** How the ratio moves with the logarithm of pressure, dμ/d ln p. */
	ratioSlope(law: Law, pressure: number): number;

	/**
	 * The pressure at which the friction limit μN, drawn against the normal force N, turns from
	 * bending one way to bending the other; NaN where it never does. With μ₁ = dμ/d ln p,
	 * μ₂ = d²μ/d ln p² and pressure growing as N^share, it is the root of μ₁ + share · μ₂ = 0.
	 * `share` is 1 for a fixed patch and 1 − exponent for a growing one.
	 */
	bendPressure(law: Law, share: number): number;

	/** Stops numbers the law has no meaning for, with a RangeError. */
	check(law: Law): void;
};
