import { describe, expect, test } from 'vitest';
import {
	counterweightForce,
	enduranceFraction,
	enduranceTime,
	evaluateHang,
	hangLoad,
	holdingWindow,
	loadAtNetMass,
	loadElasticity,
	tendonForces
} from '#core/index.ts';
import { within } from '#test/within.ts';
import { baseHang, rows } from './hangs.ts';

// Own, not outside: values of a second implementation of the same equations by the same people.

const g = 9.80665;
const degree = Math.PI / 180;
const millionth = { relative: 1e-6 };

describe('own check values, not an outside source: hangs', () => {
	test('the base hang at 70 kg', () => {
		const hang = baseHang();
		const result = evaluateHang(hang, loadAtNetMass(70, hang));
		within(result.force, 343.23275, millionth);
		within(result.normal, 291.07788, millionth);
		within(result.tangential, 181.885646, millionth);
		within(result.demand, 0.624869, millionth);
		within(result.pressure, 291077.88, millionth);
		within(result.strengthLimit, 311.924678, millionth);
		within(result.strengthMargin, 0.908785, millionth);
		expect(result.limiting).toBe('strength');
		expect(result.holds).toBe(false);
		expect(result.warnings).toEqual([]);
	});

	test.each(rows)('$name', (row) => {
		const at70 = evaluateHang(row.hang, loadAtNetMass(70, row.hang));
		within(at70.ratio, row.ratio, millionth);
		within(at70.slipMargin, row.slipMargin, millionth);
		within(at70.strengthMargin, row.strengthMargin, millionth);
		const at55 = evaluateHang(row.hang, loadAtNetMass(55, row.hang));
		within(at55.slipMargin, row.slipMarginAt55, millionth);
		within(loadElasticity(row.hang, 60), row.elasticityAt60, { absolute: 1e-5 });
	});

	test('a pull that leads off the hold', () => {
		const hang = baseHang({ slope: 60, ropeAngle: 30 });
		const result = evaluateHang(hang, loadAtNetMass(20, hang));
		within(result.normal, -73.5499, millionth);
		expect(result).toMatchObject({
			demand: Infinity,
			padArea: 0,
			pressure: 0,
			ratio: 0,
			frictionLimit: 0,
			slipMargin: 0,
			strengthLimit: Infinity,
			strengthMargin: Infinity,
			limiting: 'slip',
			holds: false
		});
		expect(result.warnings[0]).toMatch(/leads off the hold/);
		within(loadElasticity(hang, 20), NaN, { absolute: 0 });
	});
});

describe('own check values, not an outside source: load, time and tendons', () => {
	test('700 N person, 100 N rope at 10°', () => {
		const load = hangLoad({ bodyMass: 700 / g, assistForce: 100, assistAngle: 10 * degree });
		within(load.vertical, 601.5192, millionth);
		within(load.horizontal, 17.3648, { relative: 2e-6 });
		within(load.tilt / degree, 1.65357, { relative: 2e-6 });
	});

	test('endurance', () => {
		within(enduranceFraction(10), 0.94667, millionth);
		within(enduranceFraction(30), 0.734125, millionth);
		within(enduranceTime(0.5), 66, millionth);
	});

	test('10 kg counterweight, efficiency 0.83', () => {
		const { low, ideal, high } = counterweightForce(10, 0.83);
		within(low, 81.4, { absolute: 0.05 });
		within(ideal, 98.1, { absolute: 0.05 });
		within(high, 118.2, { absolute: 0.05 });
	});

	test.each([
		[0, 50, [12, 26.3856, 36.6814, 1.84615, 0.99919]],
		[-30, 20, [12.8923, 27.2779, 37.5737, 1.98343, 0.94461]]
	])('index chain, pitch %i°, last joint %i°', (pitch, dip, expected) => {
		const chain = tendonForces({
			contactDistance: 0.012,
			pitch: pitch * degree,
			dipFlexion: dip * degree,
			pipFlexion: 25 * degree,
			arms: { fdpDip: 0.0065, fdpPip: 0.0098, fdsPip: 0.0083 }
		});
		const { dipMoment, pipMoment, mcpMoment, fdp, fds, warnings } = chain;
		const seen = [dipMoment * 1e3, pipMoment * 1e3, mcpMoment * 1e3, fdp, fds];
		seen.forEach((value, i) => within(value, expected[i]!, { relative: 6e-6 }));
		expect(warnings).toEqual([]);
	});
});

describe('own check values, not an outside source: windows over 20 to 130 kg', () => {
	test.each(rows)('$name', ({ hang, window }) => {
		const found = holdingWindow(hang, { from: 20, to: 130 });
		expect(found.length).toBe(window.length);
		found.forEach(({ from, to }, i) => {
			within(from, window[i]![0], { absolute: 1e-3 });
			within(to, window[i]![1], { absolute: 1e-3 });
		});
	});
});
