import { describe, test } from 'vitest';
import { evaluateHang, frictionRatio, hangLoad, loadAtNetMass } from '#core/index.ts';
import type { FrictionLaw } from '#core/types.ts';
import { within } from '#test/within.ts';
import { baseHang } from '../mechanics/hangs.ts';

// Own, not outside: arithmetic of the laws and of leaning ropes, done once more by the same people.

const degree = Math.PI / 180;
const g = 9.80665;

describe('own check values, not an outside source: what a lean asks of the skin', () => {
	test('a plumb hang on 33° asks tan 33° at any weight', () => {
		const hang = baseHang({ slope: 33 });
		for (const mass of [30, 70, 120])
			within(evaluateHang(hang, loadAtNetMass(mass, hang)).demand, 0.649408, { absolute: 1e-6 });
	});

	test.each([
		[33, 0.1, 5, 0.663],
		[33, 0.25, 5, 0.692],
		[33, 0.5, 2, 0.7],
		[33, 0.5, 5, 0.7813],
		[33, 0.5, -5, 0.5317],
		[33, 0.75, 5, 1.099],
		[20, 0.5, 5, 0.466]
	])('slope %i°, %d assist, rope %i°', (slope, assist, ropeAngle, demand) => {
		const hang = baseHang({ slope, ropeAngle });
		const { demand: found } = evaluateHang(hang, loadAtNetMass(70 * (1 - assist), hang));
		within(found, demand, { absolute: 6e-4 });
	});

	test.each([
		[100, 10, 1.654],
		[200, 10, 3.949],
		[200, 20, 7.609],
		[150, 5, 1.36]
	])('700 N person, %i N rope at %i°: tilt', (assistForce, angle, tilt) => {
		const load = hangLoad({ bodyMass: 700 / g, assistForce, assistAngle: angle * degree });
		within(load.tilt / degree, tilt, { absolute: 6e-4 });
	});

	test('that tilt moves the demand of a 25° slope from 0.4663 to 0.5019 or 0.4316', () => {
		const hang = baseHang({ slope: 25 });
		for (const [angle, demand] of [
			[0, 0.4663],
			[10, 0.5019],
			[-10, 0.4316]
		] as const) {
			const load = hangLoad({ bodyMass: 700 / g, assistForce: 100, assistAngle: angle * degree });
			within(evaluateHang(hang, load).demand, demand, { absolute: 1e-4 });
		}
	});

	test('70 kg on eight fingers', () => {
		const hang = baseHang({ slope: 0 });
		const { normal } = evaluateHang(hang, loadAtNetMass(70, hang));
		within(normal / 4, 85.8, { absolute: 0.1 });
	});
});

describe('own check values, not an outside source: laws', () => {
	const adhesion: FrictionLaw = { kind: 'adhesion', coefficient: 0.43, shearStrength: 3700 };
	const power: FrictionLaw = {
		kind: 'power',
		coefficient: 0.6,
		referencePressure: 1e5,
		exponent: 2 / 3
	};
	const ploughing: FrictionLaw = {
		kind: 'deformation',
		coefficient: 0,
		shearStrength: 0,
		deformation: 0.1,
		referencePressure: 114e3
	};

	test('a constant shear stress on a Hertz patch halves the ratio at eight times the load', () => {
		within(frictionRatio(power, 8e5) / frictionRatio(power, 1e5), 0.5, { relative: 1e-9 });
	});

	test('the sticking law moves by −shearStrength/p² per pascal', () => {
		const found = (frictionRatio(adhesion, 100100) - frictionRatio(adhesion, 99900)) / 200;
		within(found, -3700 / 1e10, { relative: 1e-5 });
	});

	test('ploughing doubles at eight times the load', () => {
		within(frictionRatio(ploughing, 8e5) / frictionRatio(ploughing, 1e5), 2, { relative: 1e-9 });
	});

	test('the mixed law is least at 33.4 N on 350 mm² (3 kPa, 0.10 at 40 N)', () => {
		const area = 350e-6;
		const law: FrictionLaw = {
			kind: 'deformation',
			coefficient: 0.45,
			shearStrength: 3000,
			deformation: 0.1,
			referencePressure: 40 / area
		};
		const ratio = (force: number) => frictionRatio(law, force / area);
		const least = Math.pow((3 * 3000 * area * Math.cbrt(40)) / 0.1, 3 / 4);
		within(least, 33.4, { relative: 0.005 });
		for (const away of [0.9, 1.1])
			within(Math.min(ratio(least * away), ratio(least)), ratio(least), { absolute: 0 });
	});
});
