import type { LoadSign, PresetLaw, Row } from './types.ts';

/** A starting point for the friction of a hold: a whole law in SI units, and how far to believe it. */
export type SurfacePreset = Row & {
	name: string;
	condition: string;
	law: PresetLaw;
	/** What a heavier hang does on it, fixed patch and plumb rope. */
	loadEffect: LoadSign;
	/** True where the law's shape or a number that decides its sign was set by us. */
	hypothesis: boolean;
	/** A ratio that changes while one holds: limit over start, time constant in seconds. */
	sitting?: {
		rise: number;
		riseRange: readonly [number, number];
		timeConstant: number;
		timeRange: readonly [number, number];
	};
};

/** Pressure of 40 N on 350 mm², Pa: where the deformation presets state their size. */
const fortyNewtonPad = 40 / 350e-6;

/** Teaching presets. All editable; none is a property of a material. */
export const surfacePresets: readonly SurfacePreset[] = [
	{
		key: 'limestone-bare',
		name: 'Limestone, bare hand',
		condition: 'tilted at body weight until it slipped, eleven climbers',
		law: { kind: 'constant', coefficient: 0.64 },
		loadEffect: 'no change',
		hypothesis: false,
		source: ['magazineRockFriction', 'amca2012'],
		status: 'seen',
		note: 'One load only, so the constant law is the plainest reading; a magazine gives the number.'
	},
	{
		key: 'sandstone-bare',
		name: 'Sandstone, bare hand',
		condition: 'tilted at body weight until it slipped, eleven climbers',
		law: { kind: 'constant', coefficient: 0.74 },
		loadEffect: 'no change',
		hypothesis: false,
		source: ['magazineRockFriction', 'amca2012'],
		status: 'seen',
		note: 'As for limestone.'
	},
	{
		key: 'limestone-chalked',
		name: 'Limestone, chalked hand',
		condition: 'tilted at body weight until it slipped, eleven climbers',
		law: { kind: 'constant', coefficient: 0.76 },
		loadEffect: 'no change',
		hypothesis: false,
		source: ['amca2012', 'magazineRockFriction'],
		status: 'derived',
		note: 'Bare value raised by 18.7 %. Another study found that chalk lowers the ratio.'
	},
	{
		key: 'sandstone-chalked',
		name: 'Sandstone, chalked hand',
		condition: 'tilted at body weight until it slipped, eleven climbers',
		law: { kind: 'constant', coefficient: 0.9 },
		loadEffect: 'no change',
		hypothesis: false,
		source: ['amca2012', 'magazineRockFriction'],
		status: 'derived',
		note: 'Bare value raised by 21.6 %.'
	},
	{
		key: 'granite-chalked',
		name: 'Granite, chalked hand',
		condition: 'set between the others; a study says only that it is below sandstone',
		law: { kind: 'constant', coefficient: 0.75 },
		loadEffect: 'no change',
		hypothesis: false,
		source: ['li2001'],
		status: 'assumed'
	},
	{
		key: 'dry-generic',
		name: 'Dry finger, hard surface',
		condition: 'dry skin on an ordinary hard solid',
		law: {
			kind: 'deformation',
			coefficient: 0.45,
			shearStrength: 1000,
			deformation: 0.02,
			referencePressure: fortyNewtonPad
		},
		loadEffect: 'either',
		hypothesis: true,
		source: ['derler2012'],
		status: 'assumed',
		note: 'Sum near the typical 0.5; its parts are set by us. From 40 to 80 N a pad it changes by 0.2 %.'
	},
	{
		key: 'dry-rough',
		name: 'Dry finger, rough surface',
		condition: 'dry skin on coarse texture',
		law: {
			kind: 'deformation',
			coefficient: 0.45,
			shearStrength: 1000,
			deformation: 0.08,
			referencePressure: fortyNewtonPad
		},
		loadEffect: 'either',
		hypothesis: true,
		source: ['derler2012', 'derler2009'],
		status: 'assumed',
		note: 'On the side of “heavier is slightly easier” (3 % from 40 to 80 N a pad) by assumption, not by measurement.'
	},
	{
		key: 'moist-smooth',
		name: 'Moist finger, smooth sealed surface',
		condition: 'gloss paint, resin, glass',
		law: { kind: 'adhesion', coefficient: 0.35, shearStrength: 5000 },
		loadEffect: 'lighter is easier',
		hypothesis: false,
		sitting: { rise: 3, riseRange: [1, 10], timeConstant: 6, timeRange: [2, 15] },
		source: ['derler2012', 'dzidek2017pnas', 'adams2013'],
		status: 'assumed',
		note: 'The form is published; the two numbers are set by us. While one holds, the ratio can rise several times.'
	},
	{
		key: 'moist-smooth-measured',
		name: 'Finger pad on aluminium, two-term reading',
		condition: 'sliding pad, 1 to 20 N, taken at 110 mm²',
		law: { kind: 'adhesion', coefficient: 0.43, shearStrength: 3700 },
		loadEffect: 'lighter is easier',
		hypothesis: false,
		source: ['seo2009'],
		status: 'derived',
		note: 'Line through the ratios at 1 and 20 N; the area is from memory. Far beyond the measured load at a hang.'
	},
	{
		key: 'power-measured',
		name: 'Finger pad on aluminium, power reading',
		condition: 'sliding pad, 1 to 20 N, carried on to 40 N a pad',
		law: {
			kind: 'power',
			coefficient: 0.39,
			referencePressure: fortyNewtonPad,
			exponent: 0.794
		},
		loadEffect: 'lighter is easier',
		hypothesis: false,
		source: ['seo2009'],
		status: 'derived',
		note: 'The exponent is in force and includes the pad’s own growth; with a fixed patch it is a bound.'
	},
	{
		key: 'dusty-film',
		name: 'Dusty or over-chalked hold',
		condition: 'a loose layer that pressure might break through',
		law: {
			kind: 'film',
			filmCoefficient: 0.4,
			coefficient: 0.75,
			breakthroughPressure: 150_000,
			sharpness: 1
		},
		loadEffect: 'heavier is easier',
		hypothesis: true,
		source: ['li2001', 'fuss2012chalk', 'carre2012'],
		status: 'assumed',
		note: 'Assumed, not shown by experiments: a slippery layer has been seen, its pressure of break-through has never been measured.'
	}
];
