import { describe, expect, test } from 'vitest';
import { holdingRegion, holdingWindow } from '#core/index.ts';
import type { FrictionLaw, Hang, RegionAxis } from '#core/types.ts';
import { regionShape } from '#figures/region/region-shape.ts';
import { insideRing } from '#plot/inside-ring.ts';

const degree = Math.PI / 180;
const g = 9.80665;
const load = { from: 20, to: 130 };

type Choice = { law: FrictionLaw; slope: number; rope?: number; push?: number; best?: number };

function hang({ law, slope, rope = 0, push = 0, best = 40 }: Choice): Hang {
	return {
		...{ hangingMass: 70, ropeAngle: rope * degree, push, hands: 2, slope: slope * degree },
		friction: law,
		grip: {
			...{ fingers: 4, padWidth: 0.016, padLength: 0.021, padDepth: 0.005 },
			contact: { kind: 'fixed', padArea: 250e-6 }
		},
		strength: { referenceForce: best * g, referenceEdgeDepth: 0.02, holdTime: 5 }
	};
}

const constant: FrictionLaw = { kind: 'constant', coefficient: 0.64 };
const film: FrictionLaw = {
	...{ kind: 'film', filmCoefficient: 0.4, coefficient: 0.75 },
	...{ breakthroughPressure: 150e3, sharpness: 1 }
};
const deformation: FrictionLaw = {
	...{ kind: 'deformation', coefficient: 0.3, shearStrength: 20e3 },
	...{ deformation: 0.2, referencePressure: 114e3 }
};

const hangs: Record<string, Choice> = {
	constant: { law: constant, slope: 32 },
	'constant, leaning rope': { law: constant, slope: 31, rope: 10 },
	'constant, inward rope': { law: constant, slope: 33, rope: -10, best: 60 },
	'constant, pushed': { law: constant, slope: 31, push: 20, best: 60 },
	film: { law: film, slope: 32 },
	'film, inward rope': { law: { ...film, coefficient: 0.8 }, slope: 36, rope: -10 },
	'two intervals': { law: deformation, slope: 32.74, best: 90 },
	adhesion: { law: { kind: 'adhesion', coefficient: 0.45, shearStrength: 42e3 }, slope: 32 }
};
const axes: Partial<Record<RegionAxis, [number, number]>> = {
	slope: [-15 * degree, 60 * degree],
	padArea: [80e-6, 330e-6],
	ropeAngle: [-20 * degree, 30 * degree],
	holdTime: [3, 60]
};

function moved(base: Hang, axis: RegionAxis, value: number): Hang {
	if (axis === 'slope') return { ...base, slope: value };
	if (axis === 'ropeAngle') return { ...base, ropeAngle: value };
	if (axis === 'holdTime') return { ...base, strength: { ...base.strength, holdTime: value } };
	return { ...base, grip: { ...base.grip, contact: { kind: 'fixed', padArea: value } } };
}

const cases = Object.entries(hangs).flatMap(([name, choice]) =>
	Object.entries(axes).map(([axis, range]) => ({
		...{ name, choice, axis: axis as RegionAxis, from: range[0], to: range[1] }
	}))
);

describe('the drawn area is the core’s window at every axis value, drawn from 240 columns', () => {
	test.each(cases)('$name over $axis', ({ choice, axis, from, to }) => {
		const base = hang(choice);
		const region = holdingRegion(base, { axis, from, to, columns: 240, load });
		const shape = regionShape(region);
		const wrong: string[] = [];
		for (let i = 0; i < 97; i++) {
			const value = from + ((to - from) * (i + 0.37)) / 97;
			const window = holdingWindow(moved(base, axis, value), load);
			for (let netMass = 20.7; netMass < 130; netMass += 2.3) {
				// Straight pieces between columns may stray from a curved edge by about 1 kg where it is steep.
				const beside = (v: number, m: number) =>
					holdingWindow(moved(base, axis, v), load).some(({ from, to }) => m > from && m < to);
				const holds = window.some(({ from, to }) => netMass > from && netMass < to);
				const drawn = shape.rings.some(({ points }) => insideRing([value, netMass], points));
				if (holds === drawn) continue;
				const dv = (to - from) / 239 / 3;
				const nearEdge = [-dv, dv].some((d) => beside(value + d, netMass) !== holds);
				const nearEnd = window.some(
					(w) => Math.min(Math.abs(netMass - w.from), Math.abs(netMass - w.to)) < 0.3
				);
				if (!nearEdge && !nearEnd) wrong.push(`${value}, ${netMass}: ${holds}`);
			}
		}
		expect(wrong).toEqual([]);
	});

	test('the cases hold what they are meant to: upright edges, two intervals, crossings', () => {
		const over = (name: string) =>
			holdingRegion(hang(hangs[name]!), { axis: 'slope', from: 0, to: 1, columns: 240, load });
		const upright = regionShape(over('constant, inward rope')).edges.flatMap(({ points }) =>
			points.slice(1).filter((p, i) => p[0] === points[i]![0] && Math.abs(p[1] - points[i]![1]) > 5)
		);
		expect(upright).toHaveLength(1);
		expect(over('constant').crossings).toHaveLength(1);
		const two = over('two intervals').columns.some(({ intervals }) => intervals.length === 2);
		expect(two).toBe(true);
	});
});
