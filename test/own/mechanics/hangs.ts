import type { ContactModel, FrictionLaw, Hang } from '#core/types.ts';

const degree = Math.PI / 180;
const g = 9.80665;

export type Change = Partial<Pick<Hang, 'hands' | 'radius' | 'push'>> & {
	slope?: number;
	ropeAngle?: number;
	friction?: FrictionLaw;
	contact?: ContactModel;
	referenceForce?: number;
};

/** The base hang of the own check values, with changes; slope and rope angle in degrees, force in kg. */
export function baseHang(change: Change = {}): Hang {
	const { slope = 32, ropeAngle = 0, referenceForce = 40, friction, contact, ...rest } = change;
	return {
		hangingMass: 70,
		ropeAngle: ropeAngle * degree,
		hands: 2,
		slope: slope * degree,
		friction: friction ?? { kind: 'constant', coefficient: 0.64 },
		grip: {
			fingers: 4,
			padWidth: 0.016,
			padLength: 0.021,
			padDepth: 0.005,
			contact: contact ?? { kind: 'fixed', padArea: 250e-6 }
		},
		strength: {
			referenceForce: referenceForce * g,
			referenceEdgeDepth: 0.02,
			holdTime: 5
		},
		...rest
	};
}

const adhesion: FrictionLaw = { kind: 'adhesion', coefficient: 0.45, shearStrength: 42e3 };
const film = (coefficient: number): FrictionLaw => ({
	kind: 'film',
	filmCoefficient: 0.4,
	coefficient,
	breakthroughPressure: 150e3,
	sharpness: 1
});
const growing = (padCoefficient: number): ContactModel => ({
	kind: 'growing',
	padCoefficient,
	exponent: 0.32,
	padLimit: 330e-6
});

export type Row = {
	name: string;
	hang: Hang;
	ratio: number;
	slipMargin: number;
	strengthMargin: number;
	slipMarginAt55: number;
	elasticityAt60: number;
	/** Window over 20 to 130 kg, kg. */
	window: [number, number][];
};

function row(
	name: string,
	change: Change,
	values: [number, number, number, number, number],
	window: [number, number][]
): Row {
	const [ratio, slipMargin, strengthMargin, slipMarginAt55, elasticityAt60] = values;
	return {
		name,
		hang: baseHang(change),
		...{ ratio, slipMargin, strengthMargin, slipMarginAt55, elasticityAt60, window }
	};
}

/** Every row of the own second implementation: not an outside source. */
export const rows: Row[] = [
	row('constant 0.64', {}, [0.64, 1.024214, 0.908785, 1.024214, 0], [[20, 63.6149]]),
	row(
		'adhesion 0.45, 42 kPa',
		{ friction: adhesion },
		[0.594291, 0.951065, 0.908785, 1.014041, -0.27224],
		[[20, 57.7596]]
	),
	row(
		'film 0.40 to 0.75, 150 kPa',
		{ friction: film(0.75) },
		[0.69973, 1.119802, 0.908785, 1.07832, 0.16137],
		[[37.1036, 63.6149]]
	),
	row(
		'power 0.64 at 250 kPa, 0.8',
		{ friction: { kind: 'power', coefficient: 0.64, referencePressure: 250e3, exponent: 0.8 } },
		[0.620821, 0.993521, 0.908785, 1.042615, -0.2],
		[[20, 63.6149]]
	),
	row(
		'deformation 0.50, 20 kPa, 0.08 at 114 kPa',
		{
			friction: {
				kind: 'deformation',
				coefficient: 0.5,
				shearStrength: 20e3,
				deformation: 0.08,
				referencePressure: 114e3
			}
		},
		[0.678053, 1.085112, 0.908785, 1.101585, -0.06658],
		[[20, 63.6149]]
	),
	row(
		'constant 0.64, slope 31°, rope 10°',
		{ slope: 31, ropeAngle: 10 },
		[0.64, 1.065139, 0.905782, 0.957712, 0.45223],
		[[60.3282, 63.6083]]
	),
	row(
		'constant 0.64, slope 31°, push 20 N',
		{ slope: 31, push: 20 },
		[0.64, 0.998097, 0.910573, 0.980875, 0.07439],
		[]
	),
	row(
		'adhesion, growing 70e-6',
		{ friction: adhesion, contact: growing(70e-6) },
		[0.609302, 0.975087, 0.95644, 1.020518, -0.19189],
		[[20, 61.0311]]
	),
	row(
		'constant 0.64, tip slope 24°, radius 60 mm',
		{ slope: 24, radius: 0.06 },
		[0.64, 1.046008, 0.907128, 1.046008, 0],
		[[20, 63.4989]]
	),
	row(
		'constant 0.64, tip slope 24°, radius 60 mm, growing 60e-6',
		{ slope: 24, radius: 0.06, contact: growing(60e-6) },
		[0.64, 1.061689, 0.884394, 1.083588, -0.0839],
		[[20, 60.6535]]
	),
	row(
		'constant 0.64, one hand, 60 kg',
		{ hands: 1, referenceForce: 60 },
		[0.64, 1.024214, 0.681589, 1.024214, 0],
		[[20, 47.7112]]
	),
	row(
		'constant 0.64, slope −10°',
		{ slope: -10 },
		[0.64, Infinity, 1.03734, Infinity, NaN],
		[[20, 72.6138]]
	),
	row(
		'film 0.40 to 0.80, slope 36°, rope −10°',
		{ friction: film(0.8), slope: 36, ropeAngle: -10 },
		[0.737181, 1.014643, 0.923837, 1.084927, -0.28959],
		[[20, 64.3997]]
	),
	row(
		'deformation 0.30, 20 kPa, 0.20 at 114 kPa, slope 32.74°, 90 kg',
		{
			slope: 32.74,
			referenceForce: 90,
			friction: {
				kind: 'deformation',
				coefficient: 0.3,
				shearStrength: 20e3,
				deformation: 0.2,
				referencePressure: 114e3
			}
		},
		[0.641888, 0.998309, 2.050197, 0.994944, 0.00859],
		[
			[20, 45.1016],
			[73.2652, 130]
		]
	)
];
