import { describe, test } from 'vitest';
import {
	evaluateHang,
	holdingWindow,
	loadAtNetMass,
	loadElasticity,
	type ContactModel,
	type Hang
} from '#core/index.ts';
import { checkHang } from '#core/strength/check-hang.ts';
import { baseHang } from '#test/own/mechanics/hangs.ts';
import { refuses } from '../refuses.ts';

function withGrip(change: Partial<Hang['grip']>): Hang {
	const hang = baseHang();
	return { ...hang, grip: { ...hang.grip, ...change } };
}

function withStrength(change: Partial<Hang['strength']>): Hang {
	const hang = baseHang();
	return { ...hang, strength: { ...hang.strength, ...change } };
}

const load = loadAtNetMass(70, { hangingMass: 70, ropeAngle: 0 });

describe('hangs name field, value and range', () => {
	const fixed: ContactModel = { kind: 'fixed', padArea: 0 };
	const growing: ContactModel = {
		kind: 'growing',
		padCoefficient: 70e-6,
		exponent: 0.32,
		padLimit: 330e-6
	};
	test.each<[string, Hang, string]>([
		[
			'mass',
			{ ...baseHang(), hangingMass: -1 },
			'hang.hangingMass must be a number above 0 kg, but is -1'
		],
		[
			'rope',
			{ ...baseHang(), ropeAngle: NaN },
			'hang.ropeAngle must be a number above -1.5708 and below 1.5708 rad, but is NaN'
		],
		[
			'push',
			{ ...baseHang(), push: Infinity },
			'hang.push must be a finite number, but is Infinity'
		],
		[
			'hands',
			{ ...baseHang(), hands: 3 as 1 },
			'hang.hands must be a whole number at least 1 and at most 2, but is 3'
		],
		[
			'slope',
			{ ...baseHang(), slope: 2 },
			'hang.slope must be a number at least -1.5708 and at most 1.5708 rad, but is 2'
		],
		['radius', { ...baseHang(), radius: 0 }, 'hang.radius must be a number above 0 m, but is 0'],
		[
			'fingers',
			withGrip({ fingers: 2.5 }),
			'grip.fingers must be a whole number at least 1 and at most 4, but is 2.5'
		],
		['pad width', withGrip({ padWidth: 0 }), 'grip.padWidth must be a number above 0 m, but is 0'],
		[
			'pad length',
			withGrip({ padLength: NaN }),
			'grip.padLength must be a number above 0 m, but is NaN'
		],
		[
			'pad depth',
			withGrip({ padDepth: -0.001 }),
			'grip.padDepth must be a number at least 0 m, but is -0.001'
		],
		['area', withGrip({ contact: fixed }), 'contact.padArea must be a number above 0 m², but is 0'],
		[
			'area coefficient',
			withGrip({ contact: { ...growing, padCoefficient: 0 } }),
			'contact.padCoefficient must be a number above 0 m²/N^exponent, but is 0'
		],
		[
			'area exponent',
			withGrip({ contact: { ...growing, exponent: 1.5 } }),
			'contact.exponent must be a number at least 0 and at most 1, but is 1.5'
		],
		[
			'area limit',
			withGrip({ contact: { ...growing, padLimit: -1 } }),
			'contact.padLimit must be a number above 0 m², but is -1'
		],
		[
			'area model',
			withGrip({ contact: { kind: 'wet' } as unknown as ContactModel }),
			'contact.kind must be fixed or growing, but is wet'
		],
		[
			'best hang',
			withStrength({ referenceForce: 0 }),
			'strength.referenceForce must be a number above 0 N, but is 0'
		],
		[
			'edge deeper than the pad',
			withStrength({ referenceEdgeDepth: 0.022 }),
			'strength.referenceEdgeDepth must be a number above 0 and at most 0.021 m, but is 0.022'
		],
		[
			'reference time',
			withStrength({ referenceHoldTime: 400 }),
			'strength.referenceHoldTime must be a number above 0 and at most 390 s, but is 400'
		],
		[
			'hold time past the formula',
			withStrength({ holdTime: 391 }),
			'strength.holdTime must be a number above 0 and at most 390 s, but is 391'
		]
	])('%s', (_name, hang, message) => {
		refuses(() => checkHang(hang), message);
		refuses(() => evaluateHang(hang, load), message);
		refuses(() => loadElasticity(hang, 60), message);
		refuses(() => holdingWindow(hang, { from: 20, to: 130 }), message);
	});

	test('a load that is none', () => {
		const hang = baseHang();
		refuses(
			() => evaluateHang(hang, { ...load, vertical: 0 }),
			'load.vertical must be a number above 0 N, but is 0'
		);
		refuses(
			() => evaluateHang(hang, { ...load, horizontal: NaN }),
			'load.horizontal must be a finite number, but is NaN'
		);
		refuses(() => loadElasticity(hang, 0), 'netMass must be a number above 0 kg, but is 0');
	});
});
