import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { loadAtNetMass } from '#core/mechanics/load-at-net-mass.ts';
import { holdingWindow } from '#core/region/holding-window.ts';
import { evaluateHang } from '#core/strength/evaluate-hang.ts';
import type { FrictionLaw } from '#core/types.ts';
import { hangFrom } from '#core/workbook/hang/hang-formulas.ts';
import { hang } from '#core/workbook/hang/hang.ts';
import { textbookTwin } from '#core/workbook/hang/textbook-twin.ts';
import { incline } from '#core/workbook/incline/incline.ts';
import { within } from '#test/within.ts';
import { givensOf } from '../../properties/workbook/samples.ts';

const degree = Math.PI / 180;

/** The core's law from a set-up's numbers, told apart by their names. */
function lawOf(v: Record<string, number>): FrictionLaw {
	const { coefficient = 0, shearStrength = 0, referencePressure = 1 } = v;
	if (v.filmCoefficient !== undefined)
		return {
			...{ kind: 'film', filmCoefficient: v.filmCoefficient, coefficient },
			...{ breakthroughPressure: v.breakthroughPressure!, sharpness: v.sharpness! }
		};
	if (v.deformation !== undefined)
		return {
			kind: 'deformation',
			coefficient,
			shearStrength,
			deformation: v.deformation,
			referencePressure
		};
	if (v.exponent !== undefined)
		return { kind: 'power', coefficient, referencePressure, exponent: v.exponent };
	if (v.shearStrength !== undefined) return { kind: 'adhesion', coefficient, shearStrength };
	return { kind: 'constant', coefficient };
}

describe('the hang family is the hang of the core (own, not outside)', () => {
	test.each(hang.setups.map((setup) => [setup.id, setup] as const))(
		'%s: every result',
		(_, setup) => {
			const more = fc.record({
				ropeAngle: fc.integer({ min: -10, max: 15 }).map((d) => d * degree),
				push: fc.integer({ min: -30, max: 30 }),
				hands: fc.constantFrom(1, 2),
				fingers: fc.integer({ min: 3, max: 4 }),
				padArea: fc.integer({ min: 150, max: 330 }).map((mm) => mm * 1e-6),
				referenceForce: fc.integer({ min: 300, max: 700 })
			});
			fc.assert(
				fc.property(givensOf(setup), more, (given, extra) => {
					const all: Record<string, number> = { ...given, ...extra };
					const load = loadAtNetMass(all.netMass!, {
						hangingMass: all.hangingMass!,
						ropeAngle: all.ropeAngle!,
						push: all.push!
					});
					const wanted = evaluateHang(hangFrom(all, lawOf(all)), load);
					for (const ask of [
						'force',
						'normal',
						'tangential',
						'demand',
						'pressure',
						'ratio',
						'frictionLimit',
						'slipMargin',
						'strengthLimit',
						'strengthMargin'
					] as const) {
						const { solutions } = hang.solve({ ...all, arrangement: setup.number }, ask);
						within(solutions[0]?.value ?? Infinity, wanted[ask], { relative: 1e-12 });
					}
				}),
				{ numRuns: 40, seed: 6 }
			);
		}
	);

	const base = { hangingMass: 70, ropeAngle: 0, push: 0, hands: 2, fingers: 4, padArea: 2.5e-4 };
	const rows: [string, Record<string, number>][] = [
		[
			'constant, rope 10°',
			{ ...base, slope: 31 * degree, ropeAngle: 10 * degree, coefficient: 0.64, arrangement: 1 }
		],
		[
			'adhesion',
			{ ...base, slope: 32 * degree, coefficient: 0.45, shearStrength: 42e3, arrangement: 2 }
		],
		[
			'film',
			{
				...base,
				slope: 32 * degree,
				filmCoefficient: 0.4,
				coefficient: 0.75,
				breakthroughPressure: 15e4,
				sharpness: 1,
				arrangement: 5
			}
		],
		[
			'deformation',
			{
				...base,
				slope: 32.74 * degree,
				coefficient: 0.3,
				shearStrength: 2e4,
				deformation: 0.2,
				referencePressure: 114e3,
				arrangement: 4
			}
		]
	];
	test.each(rows)(
		'%s: the loads at the edge are the slip edges of the holding window',
		(_, given) => {
			const strong = { ...given, referenceForce: 9e4 };
			const edges = holdingWindow(hangFrom(strong, lawOf(given)), { from: 20, to: 130 }).flatMap(
				(each) => [
					...(each.lowerLimit === 'slip' ? [each.from] : []),
					...(each.upperLimit === 'slip' ? [each.to] : [])
				]
			);
			const found = hang
				.solve(given, 'netMass')
				.solutions.map(({ value }) => value)
				.filter((m) => m >= 20 && m <= 130);
			expect(edges.length).toBeGreaterThan(0);
			expect(found).toHaveLength(edges.length);
			found.forEach((each, index) => within(each, edges[index]!, { absolute: 1e-6 }));
		}
	);

	test('the lesson rows: one edge at 60.328 kg; two at 45.102 and 73.265 kg', () => {
		const loads = (given: Record<string, number>) =>
			hang.solve(given, 'netMass').solutions.map(({ value }) => value);
		within(loads(rows[0]![1])[0]!, 60.3282, { absolute: 1e-3 });
		const [low, high, ...more] = loads(rows[3]![1]);
		within(low!, 45.1016, { absolute: 1e-3 });
		within(high!, 73.2652, { absolute: 1e-3 });
		expect(more).toEqual([]);
	});

	test('where load cancels: any load, or none', () => {
		const at = (coefficient: number) =>
			hang.solve({ ...base, slope: 32 * degree, coefficient, arrangement: 1 }, 'netMass');
		expect([at(0.64).regime, at(0.6).regime]).toEqual(['any load', 'no load']);
		expect(at(Math.tan(32 * degree)).regime).toBe('any');
	});

	test('the textbook twin has the same forces as one hand', () => {
		const given = { ...base, slope: 31 * degree, ropeAngle: 10 * degree, referenceForce: 500 };
		const whole = hangFrom(given, { kind: 'adhesion', coefficient: 0.45, shearStrength: 42e3 });
		const load = loadAtNetMass(55, { hangingMass: 70, ropeAngle: 10 * degree });
		const wanted = evaluateHang(whole, load);
		const twin = textbookTwin(whole, 55)!;
		const at = (ask: string) => incline.solve(twin.given, ask).solutions[0]!.value;
		within(at('normal'), wanted.normal, { relative: 1e-12 });
		within(at('frictionNeeded'), wanted.tangential, { relative: 1e-12 });
		within(at('frictionLimit'), wanted.frictionLimit, { relative: 1e-12 });
		expect(textbookTwin({ ...whole, slope: -0.4 }, 70)).toBeUndefined();
	});
});
