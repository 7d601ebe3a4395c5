import { describe, test } from 'vitest';
import {
	counterweightForce,
	enduranceFraction,
	enduranceTime,
	frictionRatio,
	hangLoad,
	holdingRegion,
	holdingWindow,
	loadAtNetMass,
	tendonForces,
	type FrictionLaw
} from '#core/index.ts';
import { pulleyForce } from '#core/strength/pulley-force.ts';
import { baseHang } from '#test/own/mechanics/hangs.ts';
import { refuses } from './refuses.ts';

const rope = { hangingMass: 70, ropeAngle: 0 };

describe('loads name field, value and range', () => {
	test.each([
		[{ bodyMass: -1 }, 'bodyMass must be a number above 0 kg, but is -1'],
		[{ bodyMass: 0 }, 'bodyMass must be a number above 0 kg, but is 0'],
		[{ bodyMass: NaN }, 'bodyMass must be a number above 0 kg, but is NaN'],
		[{ bodyMass: Infinity }, 'bodyMass must be a number above 0 kg, but is Infinity'],
		[{ bodyMass: 70, addedMass: -2 }, 'addedMass must be a number at least 0 kg, but is -2'],
		[{ bodyMass: 70, assistForce: -5 }, 'assistForce must be a number at least 0 N, but is -5'],
		[
			{ bodyMass: 70, assistForce: 5, assistAngle: 4 },
			'assistAngle must be a number at least -3.14159 and at most 3.14159 rad, but is 4'
		],
		[
			{ bodyMass: 10, assistForce: 98.0665 },
			'assistForce must be a number at least 0 and below 98.0665 N, but is 98.0665'
		],
		[
			{ bodyMass: 10, assistForce: 500, assistAngle: Math.PI / 3 },
			'assistForce must be a number at least 0 and below 196.133 N, but is 500'
		]
	])('hangLoad(%o)', (o, message) => refuses(() => hangLoad(o), message));

	test('text is no number', () => {
		const text = '70' as unknown as number;
		refuses(() => hangLoad({ bodyMass: text }), 'bodyMass must be a number above 0 kg, but is 70');
	});

	test.each([
		[0, rope, 'netMass must be a number above 0 kg, but is 0'],
		[50, { ...rope, hangingMass: 0 }, 'hangingMass must be a number above 0 kg, but is 0'],
		[
			50,
			{ ...rope, ropeAngle: 2 },
			'ropeAngle must be a number above -1.5708 and below 1.5708 rad, but is 2'
		],
		[50, { ...rope, push: NaN }, 'push must be a finite number, but is NaN']
	])('loadAtNetMass(%d, %o)', (mass, o, message) => refuses(() => loadAtNetMass(mass, o), message));

	test.each([
		[-1, 0.9, 'mass must be a number at least 0 kg, but is -1'],
		[10, 0, 'efficiency must be a number above 0 and at most 1, but is 0'],
		[10, 1.1, 'efficiency must be a number above 0 and at most 1, but is 1.1']
	])('counterweightForce(%d, %d)', (mass, efficiency, message) =>
		refuses(() => counterweightForce(mass, efficiency), message)
	);
});

describe('laws name field, value and range', () => {
	const constant: FrictionLaw = { kind: 'constant', coefficient: 0.6 };
	test.each<[FrictionLaw, number, string]>([
		[constant, 0, 'pressure must be a number above 0 Pa, but is 0'],
		[constant, -1, 'pressure must be a number above 0 Pa, but is -1'],
		[
			{ ...constant, coefficient: -0.1 },
			1e5,
			'friction.coefficient must be a number at least 0, but is -0.1'
		],
		[
			{ kind: 'adhesion', coefficient: 0.4, shearStrength: -1 },
			1e5,
			'friction.shearStrength must be a number at least 0 Pa, but is -1'
		],
		[
			{ kind: 'power', coefficient: 0.6, referencePressure: 0, exponent: 0.8 },
			1e5,
			'friction.referencePressure must be a number above 0 Pa, but is 0'
		],
		[
			{ kind: 'power', coefficient: 0.6, referencePressure: 1e5, exponent: 3 },
			1e5,
			'friction.exponent must be a number at least 0 and at most 2, but is 3'
		],
		[
			{
				kind: 'deformation',
				coefficient: 0.5,
				shearStrength: 0,
				deformation: NaN,
				referencePressure: 1e5
			},
			1e5,
			'friction.deformation must be a number at least 0, but is NaN'
		],
		[
			{
				kind: 'film',
				filmCoefficient: 0.4,
				coefficient: 0.7,
				breakthroughPressure: 0,
				sharpness: 1
			},
			1e5,
			'friction.breakthroughPressure must be a number above 0 Pa, but is 0'
		],
		[
			{
				kind: 'film',
				filmCoefficient: 0.4,
				coefficient: 0.7,
				breakthroughPressure: 1e5,
				sharpness: 0
			},
			1e5,
			'friction.sharpness must be a number above 0 and at most 20, but is 0'
		],
		[
			{ kind: 'glue' } as unknown as FrictionLaw,
			1e5,
			'friction.kind must be one of constant, adhesion, power, deformation, film, but is glue'
		]
	])('frictionRatio(%o, %d)', (law, pressure, message) =>
		refuses(() => frictionRatio(law, pressure), message)
	);
});

describe('windows, regions, times and tendons name field, value and range', () => {
	const hang = baseHang();
	const range = { from: 20, to: 130 };
	const sweep = { axis: 'slope' as const, from: 0, to: 1, columns: 10, load: range };

	test.each([
		[{ from: 0, to: 130 }, 'from must be a number above 0 kg, but is 0'],
		[{ from: 20, to: 20 }, 'to must be a number above 20 kg, but is 20'],
		[{ from: 20, to: NaN }, 'to must be a number above 20 kg, but is NaN']
	])('holdingWindow over %o', (o, message) => refuses(() => holdingWindow(hang, o), message));

	test.each([
		[{ ...sweep, from: NaN }, 'from must be a finite number, but is NaN'],
		[{ ...sweep, to: -1 }, 'to must be a number above 0, but is -1'],
		[
			{ ...sweep, columns: 1 },
			'columns must be a whole number at least 2 and at most 10000, but is 1'
		],
		[{ ...sweep, load: { from: -1, to: 5 } }, 'load.from must be a number above 0 kg, but is -1'],
		[{ ...sweep, load: { from: 9, to: 5 } }, 'load.to must be a number above 9 kg, but is 5'],
		[
			{ ...sweep, load: { ...range, present: 0 } },
			'load.present must be a number above 0 kg, but is 0'
		],
		[
			{ ...sweep, axis: 'mood' as 'slope' },
			'axis must be one of slope, coefficient, padArea, ropeAngle, holdTime, but is mood'
		]
	])('holdingRegion over %o', (o, message) => refuses(() => holdingRegion(hang, o), message));

	test('times', () => {
		refuses(
			() => enduranceFraction(390.1),
			'seconds must be a number at least 0 and at most 390 s, but is 390.1'
		);
		refuses(
			() => enduranceFraction(-1),
			'seconds must be a number at least 0 and at most 390 s, but is -1'
		);
		refuses(
			() => enduranceTime(0.1),
			'fraction must be a number at least 0.2 and at most 1, but is 0.1'
		);
	});

	test('tendons', () => {
		const finger = {
			contactDistance: 0.012,
			pitch: 0,
			dipFlexion: 0,
			pipFlexion: 0,
			arms: { fdpDip: 0.0065, fdpPip: 0.0098, fdsPip: 0.0083 }
		};
		refuses(
			() => tendonForces({ ...finger, contactDistance: 0 }),
			'contactDistance must be a number above 0 m, but is 0'
		);
		refuses(
			() => tendonForces({ ...finger, passiveDipShare: 1 }),
			'passiveDipShare must be a number at least 0 and below 1, but is 1'
		);
		refuses(
			() => tendonForces({ ...finger, arms: { ...finger.arms, fdsPip: NaN } }),
			'arms.fdsPip must be a number above 0 m, but is NaN'
		);
		refuses(() => pulleyForce(-1, 1), 'tension must be a number at least 0 N, but is -1');
	});
});
