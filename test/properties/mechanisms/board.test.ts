import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { loadAtNetMass } from '#core/mechanics/load-at-net-mass.ts';
import {
	anchoredCurve,
	effectPerDoubling,
	effectPerTenKilograms,
	loadSign
} from '#core/mechanisms/load-effect.ts';
import { mechanismHang } from '#core/mechanisms/mechanism-hang.ts';
import { mechanismCurve, mechanismKeys } from '#core/mechanisms/mechanism-margin.ts';
import type { MechanismKey, MechanismParameters } from '#core/mechanisms/mechanism-parameters.ts';
import { plainHang } from '#core/mechanisms/plain-hang.ts';
import { leanToSlip } from '#core/mechanisms/rope-lean.ts';
import { evaluateHang } from '#core/strength/evaluate-hang.ts';
import type { Hang } from '#core/types.ts';
import { mechanisms } from '#reference/mechanisms.ts';
import { within } from '#test/within.ts';

const degree = Math.PI / 180;
const share = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** Plain hangs of many people on many holds: plumb, flat, fixed patch, constant ratio. */
const plain: fc.Arbitrary<Hang> = fc
	.record({
		mass: share(45, 110),
		slope: share(15 * degree, 40 * degree),
		coefficient: share(0.3, 1),
		padArea: share(150e-6, 320e-6),
		fingers: fc.constantFrom(2, 3, 4),
		hands: fc.constantFrom<1 | 2>(1, 2)
	})
	.map(({ mass, slope, coefficient, padArea, fingers, hands }) => ({
		hangingMass: mass,
		ropeAngle: 0,
		push: 0,
		hands,
		slope,
		friction: { kind: 'constant', coefficient },
		grip: {
			fingers,
			padWidth: 0.016,
			padLength: 0.021,
			padDepth: 0.005,
			contact: { kind: 'fixed', padArea }
		},
		strength: { referenceForce: 400, referenceEdgeDepth: 0.02, holdTime: 5 }
	}));

const coefficientOf = (hang: Hang) => (hang.friction as { coefficient: number }).coefficient;

/** Parameters that switch each mechanism off, its ratio being the base's own. */
const off: { [Key in MechanismKey]: (base: Hang) => MechanismParameters[Key] } = {
	constant: (base) => ({ coefficient: coefficientOf(base) }),
	ropeLean: () => ({ ropeAngle: 0 }),
	steadyPush: () => ({ push: 0 }),
	counterweightLeftOn: () => ({ assistForce: 0, ropeAngle: 0.2 }),
	swingSameAngle: () => ({ swingAngle: 0 }),
	swingSameImpulse: () => ({ swingAngle: 0 }),
	squeeze: () => ({ squeeze: 0 }),
	roundedHold: () => ({ radius: 1e9, exponent: 0.32 }),
	orderDrift: () => ({ drift: 0, firstMass: 40, step: 5 }),
	adhesion: (base) => ({ coefficient: coefficientOf(base), shearStrength: 0 }),
	naturalGrowth: (base) => ({
		coefficient: coefficientOf(base),
		shearStrength: 0,
		exponent: 0.32
	}),
	saturation: (base) => ({ coefficient: coefficientOf(base), saturationPressure: Infinity }),
	deformation: (base) => ({
		coefficient: coefficientOf(base),
		deformation: 0,
		referencePressure: 114e3
	}),
	interlock: (base) => ({
		coefficient: coefficientOf(base),
		interlock: 0,
		penetrationPressure: 1e5
	}),
	film: (base) => ({
		filmCoefficient: coefficientOf(base),
		coefficient: coefficientOf(base),
		breakthroughPressure: 1e5,
		sharpness: 1
	}),
	liquidFilm: (base) => ({
		filmCoefficient: coefficientOf(base),
		coefficient: coefficientOf(base),
		breakthroughPressure: 1e5,
		sharpness: 1
	}),
	sittingTime: (base) => ({
		coefficient: coefficientOf(base),
		rise: 1,
		timeConstant: 6,
		time: 5
	}),
	shearLoss: (base) => ({
		coefficient: coefficientOf(base),
		loss: 0,
		referencePressure: 114e3
	}),
	flatterHand: (base) => ({
		coefficient: coefficientOf(base),
		shearStrength: 0,
		exponent: 1.3,
		largestFactor: 2
	})
};

const rowsWithCurves = mechanisms.filter((row) => row.boardKey !== null);

/** A row's starting values as its curve takes them. */
function startOf(row: (typeof mechanisms)[number]) {
	return Object.fromEntries(
		row.parameters.map(({ field, start }) => [field, start])
	) as unknown as MechanismParameters[MechanismKey];
}

describe('rows and curves belong together', () => {
	test('each curve has its row and each row’s curve exists', () => {
		const named = rowsWithCurves.map((row) => row.boardKey);
		expect(new Set(named)).toEqual(new Set(mechanismKeys));
	});

	test('a row’s parameters are those its curve takes', () => {
		const base = fc.sample(plain, { numRuns: 1, seed: 1 })[0]!;
		for (const row of rowsWithCurves) {
			const key = row.boardKey as MechanismKey;
			const fields = row.parameters.map((parameter) => parameter.field);
			expect(new Set(fields), row.key).toEqual(new Set(Object.keys(off[key](base))));
		}
	});

	test('what the row says of Explore is what the core can build', () => {
		const base = fc.sample(plain, { numRuns: 1, seed: 2 })[0]!;
		for (const row of rowsWithCurves) {
			const hang = mechanismHang(row.boardKey as MechanismKey, base, startOf(row));
			expect(hang !== undefined, row.key).toBe(row.expressibleInHang);
		}
	});
});

describe('each curve on a plain hang', () => {
	for (const key of mechanismKeys) {
		test(`${key}, switched off, is the plain constant law at every load`, () => {
			fc.assert(
				fc.property(plain, share(25, 140), (base, netMass) => {
					const bare = evaluateHang(base, loadAtNetMass(netMass, base)).slipMargin;
					const curve = mechanismCurve(key, base, off[key](base) as never);
					within(curve(netMass), bare, { relative: 1e-7 });
				})
			);
		});
	}

	for (const row of rowsWithCurves.filter(({ loadEffect }) => loadEffect !== 'either')) {
		test(`${row.key} at its starting values: ${row.loadEffect}`, () => {
			fc.assert(
				fc.property(plain, (base) => {
					const curve = mechanismCurve(row.boardKey as MechanismKey, base, startOf(row) as never);
					expect(loadSign(curve, { from: 0.5 * base.hangingMass, to: base.hangingMass })).toBe(
						row.loadEffect
					);
				})
			);
		});
	}

	test('a leaning rope: the sign flips with the side, and only the light half is touched', () => {
		fc.assert(
			fc.property(plain, share(1 * degree, 8 * degree), (base, ropeAngle) => {
				const [from, to] = [0.6 * base.hangingMass, 0.99 * base.hangingMass];
				const away = mechanismCurve('ropeLean', base, { ropeAngle });
				const toward = mechanismCurve('ropeLean', base, { ropeAngle: -ropeAngle });
				expect(loadSign(away, { from, to })).toBe('heavier is easier');
				expect(loadSign(toward, { from, to })).toBe('lighter is easier');
				const heavy = { from: base.hangingMass, to: 1.5 * base.hangingMass };
				expect(loadSign(away, heavy)).toBe('no change');
			})
		);
	});

	test('a steady push or a counterweight left on: the sign is that of the push', () => {
		fc.assert(
			fc.property(plain, share(5, 60), share(1 * degree, 15 * degree), (base, push, lean) => {
				const range = { from: 0.6 * base.hangingMass, to: 1.4 * base.hangingMass };
				const sign = (outward: 1 | -1) => [
					loadSign(mechanismCurve('steadyPush', base, { push: outward * push }), range),
					loadSign(
						mechanismCurve('counterweightLeftOn', base, {
							assistForce: 4 * push,
							ropeAngle: outward * lean
						}),
						range
					)
				];
				expect(sign(1)).toEqual(['heavier is easier', 'heavier is easier']);
				expect(sign(-1)).toEqual(['lighter is easier', 'lighter is easier']);
			})
		);
	});

	test('drift in rising order: improving looks like “heavier is easier”, tiring like the other', () => {
		fc.assert(
			fc.property(plain, share(0.005, 0.1), (base, drift) => {
				const at = (d: number) =>
					loadSign(mechanismCurve('orderDrift', base, { drift: d, firstMass: 30, step: 5 }), {
						from: 30,
						to: 100
					});
				expect(at(drift)).toBe('heavier is easier');
				expect(at(-drift)).toBe('lighter is easier');
			})
		);
	});

	test('the lean that starts a slip is the lean at which the curve is 1', () => {
		fc.assert(
			fc.property(plain, share(0.4, 0.95), (base, part) => {
				const netMass = part * base.hangingMass;
				const ratio = coefficientOf(base);
				const lean = leanToSlip({
					slope: base.slope,
					ratio,
					hangingMass: base.hangingMass,
					netMass
				});
				const margin = mechanismCurve('ropeLean', base, { ropeAngle: lean })(netMass);
				within(margin, 1, { relative: 1e-9 });
			})
		);
	});
});

describe('a hang that holds a mechanism', () => {
	test('has in evaluateHang the slip margin that the curve draws', () => {
		const expressible = rowsWithCurves.filter((row) => row.expressibleInHang);
		fc.assert(
			fc.property(plain, fc.constantFrom(...expressible), share(25, 140), (base, row, netMass) => {
				const key = row.boardKey as MechanismKey;
				const hang = mechanismHang(key, base, startOf(row) as never)!;
				const { slipMargin } = evaluateHang(hang, loadAtNetMass(netMass, hang));
				expect(mechanismCurve(key, base, startOf(row) as never)(netMass)).toBe(slipMargin);
			})
		);
	});
});

describe('the plain hang', () => {
	test('is plain, agrees with the set-up’s plumb slope, patch and ratio, and is its own plain hang', () => {
		fc.assert(
			fc.property(plain, share(0.02, 0.3), share(30, 100), (flat, radius, netMass) => {
				const rich: Hang = {
					...flat,
					slope: flat.slope - 0.1,
					radius,
					ropeAngle: 0.1,
					push: 15,
					friction: { kind: 'adhesion', coefficient: 0.4, shearStrength: 2e4 },
					grip: {
						...flat.grip,
						contact: { kind: 'growing', padCoefficient: 7e-5, exponent: 0.3, padLimit: 3e-4 }
					}
				};
				const bare = plainHang(rich, netMass);
				const curve = (m: number) => evaluateHang(bare, loadAtNetMass(m, bare)).slipMargin;
				expect(loadSign(curve, { from: 20, to: 150 })).toBe('no change');
				const plumb = evaluateHang(
					rich,
					loadAtNetMass(netMass, { hangingMass: netMass, ropeAngle: 0 })
				);
				within(curve(netMass), plumb.slipMargin, { relative: 1e-12 });
				expect(plainHang(bare, 50)).toEqual(bare);
			})
		);
	});
});

describe('the size of an effect', () => {
	test('a power of load gives its own share per doubling and per ten kilograms', () => {
		fc.assert(
			fc.property(share(-2, 2), share(20, 120), (exponent, netMass) => {
				const curve = (m: number) => Math.pow(m / 50, exponent);
				within(effectPerDoubling(curve, netMass), Math.pow(2, exponent) - 1, { absolute: 1e-9 });
				within(
					effectPerTenKilograms(curve, netMass),
					Math.pow((netMass + 10) / netMass, exponent) - 1,
					{ absolute: 1e-9 }
				);
			})
		);
	});

	test('anchoring moves a curve through a point and leaves its shares alone', () => {
		fc.assert(
			fc.property(share(-1, 1), share(20, 120), share(0.2, 3), (exponent, netMass, margin) => {
				const curve = (m: number) => 0.7 * Math.pow(m, exponent);
				const anchored = anchoredCurve(curve, { netMass, margin });
				within(anchored(netMass), margin, { relative: 1e-12 });
				within(effectPerDoubling(anchored, 60), effectPerDoubling(curve, 60), { absolute: 1e-12 });
			})
		);
	});

	test('there is no share where a margin is 0 or Infinity, and such curves are not scaled', () => {
		expect(effectPerDoubling(() => Infinity, 60)).toBeNaN();
		expect(effectPerTenKilograms((m) => (m < 65 ? 0 : 1), 60)).toBeNaN();
		expect(anchoredCurve(() => Infinity, { netMass: 60, margin: 1 })(70)).toBe(Infinity);
	});

	test('signs on made-up curves', () => {
		const range = { from: 20, to: 100 };
		expect(loadSign((m) => m, range)).toBe('heavier is easier');
		expect(loadSign((m) => -m + 1000, range)).toBe('lighter is easier');
		expect(loadSign(() => 2, range)).toBe('no change');
		expect(loadSign((m) => Math.abs(m - 60), range)).toBe('either');
		expect(loadSign(() => Infinity, range)).toBe('no change');
		expect(() => loadSign((m) => m, { from: 50, to: 50 })).toThrow(
			/^to must be a number above 50 kg/
		);
	});
});
