import type { ContactModel, FrictionLaw, Hang, RegionAxis } from '#core/types.ts';

const degree = Math.PI / 180;

const laws: FrictionLaw[] = [
	{ kind: 'constant', coefficient: 0.64 },
	{ kind: 'adhesion', coefficient: 0.45, shearStrength: 42e3 },
	{ kind: 'power', coefficient: 0.64, referencePressure: 250e3, exponent: 0.8 },
	{
		kind: 'deformation',
		coefficient: 0.3,
		shearStrength: 20e3,
		deformation: 0.2,
		referencePressure: 114e3
	},
	{
		kind: 'film',
		filmCoefficient: 0.4,
		coefficient: 0.75,
		breakthroughPressure: 150e3,
		sharpness: 1
	}
];

/** What each axis runs through: the ends of the sliders. */
export const axes: { axis: RegionAxis; from: number; to: number }[] = [
	{ axis: 'slope', from: -15 * degree, to: 60 * degree },
	{ axis: 'coefficient', from: 0.2, to: 1.2 },
	{ axis: 'padArea', from: 80e-6, to: 330e-6 },
	{ axis: 'ropeAngle', from: -20 * degree, to: 30 * degree },
	{ axis: 'holdTime', from: 3, to: 60 }
];

export const load = { from: 20, to: 130 };

function hang(friction: FrictionLaw, change: Partial<Hang> = {}, contact?: ContactModel): Hang {
	return {
		hangingMass: 70,
		ropeAngle: 0,
		hands: 2,
		slope: 32 * degree,
		friction,
		grip: {
			fingers: 4,
			padWidth: 0.016,
			padLength: 0.021,
			padDepth: 0.005,
			contact: contact ?? { kind: 'fixed', padArea: 250e-6 }
		},
		strength: { referenceForce: 40 * 9.80665, referenceEdgeDepth: 0.02, holdTime: 5 },
		...change
	};
}

const growing: ContactModel = {
	kind: 'growing',
	padCoefficient: 60e-6,
	exponent: 0.32,
	padLimit: 330e-6
};

/** Every law on the plain hold, then the cases that are harder to solve. */
export const cases: { name: string; hang: Hang }[] = [
	...laws.map((law) => ({ name: law.kind, hang: hang(law) })),
	{
		name: 'constant, rope 10°',
		hang: hang(laws[0]!, { slope: 31 * degree, ropeAngle: 10 * degree })
	},
	{ name: 'film, growing patch', hang: hang(laws[4]!, {}, growing) },
	{
		name: 'constant, round, growing',
		hang: hang(laws[0]!, { slope: 24 * degree, radius: 0.06 }, growing)
	}
];
