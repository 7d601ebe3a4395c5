import fc from 'fast-check';
import type { ContactModel, FrictionLaw, Hang } from '#core/types.ts';

const degree = Math.PI / 180;

// The same hangs on every run; set PROPERTY_SEED to look at others.
fc.configureGlobal({ seed: Number(process.env.PROPERTY_SEED ?? 20) });

/** A number between two bounds, neither NaN nor infinite; next to nothing is nothing. */
export function between(min: number, max: number): fc.Arbitrary<number> {
	return fc
		.double({ min, max, noNaN: true, noDefaultInfinity: true })
		.map((value) => (Math.abs(value) < 1e-12 ? 0 : value));
}

/** Laws of all five kinds whose ratio is somewhere near a hang's demand. */
export const anyLaw: fc.Arbitrary<FrictionLaw> = fc.oneof(
	fc.record({ kind: fc.constant('constant' as const), coefficient: between(0.1, 1.5) }),
	fc.record({
		kind: fc.constant('adhesion' as const),
		coefficient: between(0.05, 1),
		shearStrength: between(0, 80e3)
	}),
	fc.record({
		kind: fc.constant('power' as const),
		coefficient: between(0.2, 1.2),
		referencePressure: between(50e3, 500e3),
		exponent: between(0.3, 1.5)
	}),
	fc.record({
		kind: fc.constant('deformation' as const),
		coefficient: between(0.05, 0.6),
		shearStrength: between(0, 60e3),
		deformation: between(0.01, 0.4),
		referencePressure: between(50e3, 500e3)
	}),
	fc.record({
		kind: fc.constant('film' as const),
		filmCoefficient: between(0.05, 0.8),
		coefficient: between(0.2, 1.5),
		breakthroughPressure: between(50e3, 500e3),
		sharpness: between(0.5, 6)
	})
);

export const anyContact: fc.Arbitrary<ContactModel> = fc.oneof(
	fc.record({ kind: fc.constant('fixed' as const), padArea: between(80e-6, 400e-6) }),
	fc.record({
		kind: fc.constant('growing' as const),
		padCoefficient: between(30e-6, 120e-6),
		exponent: between(0.05, 0.6),
		padLimit: between(150e-6, 400e-6)
	})
);

/** Hangs as the screen allows them, and somewhat beyond. */
export const anyHang: fc.Arbitrary<Hang> = fc
	.record({
		hangingMass: between(40, 150),
		ropeAngle: fc.oneof(fc.constant(0), between(-30 * degree, 40 * degree)),
		push: fc.oneof(fc.constant(0), between(-80, 80)),
		hands: fc.constantFrom(1 as const, 2 as const),
		slope: between(-20 * degree, 65 * degree),
		radius: fc.oneof(fc.constant(undefined), between(0.02, 0.2)),
		friction: anyLaw,
		fingers: fc.constantFrom(1, 2, 3, 4),
		padDepth: between(0, 0.008),
		contact: anyContact,
		referenceForce: between(100, 1200),
		holdTime: between(1, 120)
	})
	.map(({ fingers, padDepth, contact, referenceForce, holdTime, radius, ...rest }) => ({
		...rest,
		...(radius === undefined ? {} : { radius }),
		grip: { fingers, padWidth: 0.016, padLength: 0.021, padDepth, contact },
		strength: { referenceForce, referenceEdgeDepth: 0.018, holdTime }
	}));

/** The same hang without anything that pulls sideways. */
export function plumb(hang: Hang): Hang {
	return { ...hang, ropeAngle: 0, push: 0 };
}
