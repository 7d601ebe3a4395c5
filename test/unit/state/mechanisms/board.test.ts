import { describe, expect, test } from 'vitest';
import { loadAtNetMass } from '#core/mechanics/load-at-net-mass.ts';
import { leanToSlip } from '#core/mechanisms/rope-lean.ts';
import { evaluateHang } from '#core/strength/evaluate-hang.ts';
import { degreesToRadians } from '#core/units/angle.ts';
import { mechanisms } from '#reference/mechanisms.ts';
import { rowOf } from '#reference/read.ts';
import { boardBase } from '#state/mechanisms/board-base.ts';
import { boardCurve, testedLoad } from '#state/mechanisms/board-curve.ts';
import { exploreQuery } from '#state/mechanisms/board-link.ts';
import {
	limitsOf,
	parametersOf,
	startValues,
	strayParameters
} from '#state/mechanisms/board-values.ts';
import { hangOf, loadOf } from '#state/setup/to-hang.ts';
import { readLink } from '#storage/codecs/link.ts';
import { firstSight, type Setup } from '#storage/codecs/setup.ts';
import { within } from '#test/within.ts';

const setups: Record<string, Setup> = {
	'first sight': { ...firstSight },
	'light, on a leaning rope': { ...firstSight, law: 'constant', change: -15, rope: 6, slope: 31 },
	'heavy, rounded, growing': {
		...firstSight,
		...{ law: 'adhesion', mu: 0.45, radius: 60, slope: 22, patch: 'growing', change: 20 }
	},
	'pushed, one hand': { ...firstSight, hands: 1, push: 25, body: 55, slope: 28 }
};
const drawn = mechanisms.filter(({ boardKey }) => boardKey !== null);

describe.each(Object.entries(setups))('the board at: %s', (_, setup) => {
	const base = boardBase(setup);
	const own = evaluateHang(hangOf(setup), loadOf(setup)).slipMargin;

	test.each(drawn.map((row) => [row.key, row] as const))(
		'%s passes through the point that Explore shows',
		(_key, row) => {
			const { points } = boardCurve(row, base, startValues(row, base.hang));
			const here = points.find(({ netMass }) => netMass === base.netMass)!;
			within(here.margin, own, { relative: 1e-12 });
			expect(points.length).toBeGreaterThan(40);
		}
	);

	test('what a hang can hold opens in Explore with the very curve of the board', () => {
		let opened = 0;
		for (const row of drawn) {
			const values = startValues(row, base.hang);
			const answer = exploreQuery(row, base, values);
			if (!row.expressibleInHang) expect(answer, row.key).toBe('board only');
			if (typeof answer === 'string') continue;
			opened++;
			const { setup: there, notes } = readLink(answer.query);
			expect(notes, row.key).toEqual([]);
			for (const { netMass, margin } of boardCurve(row, base, values).points) {
				const { slipMargin } = evaluateHang(hangOf(there), loadOf(there, netMass));
				within(slipMargin, margin, { relative: 3e-3 });
			}
		}
		expect(opened).toBeGreaterThan(5);
	});
});

test('a set-up under the film law, plumb, is the board’s film curve as Explore draws it', () => {
	const base = boardBase(setups['first sight']!);
	const row = rowOf(mechanisms, 'powder-film');
	for (const { netMass, margin } of boardCurve(row, base, startValues(row, base.hang)).points) {
		const load = loadAtNetMass(netMass, base.hang);
		within(evaluateHang(base.hang, load).slipMargin, margin, { relative: 1e-9 });
	}
});

test('signs and sizes of the rows come out of the curves at their starting numbers', () => {
	const base = boardBase({ ...firstSight, law: 'constant' });
	const signs = Object.fromEntries(
		drawn.map((row) => [row.key, boardCurve(row, base, startValues(row, base.hang))])
	);
	for (const row of drawn) {
		if (row.loadEffect !== 'either') expect(signs[row.key]!.sign, row.key).toBe(row.loadEffect);
	}
	// A push of 20 N: tan σ' = tan(σ + atan(P/V)), by hand from the statics.
	const slope = degreesToRadians(firstSight.slope);
	const demand = (kg: number) => Math.tan(slope + Math.atan(20 / (kg * 9.80665)));
	within(signs['steady-push']!.perTenKilograms, demand(70) / demand(80) - 1, { absolute: 1e-9 });
	within(signs['steady-push']!.perDoubling, demand(70 / Math.SQRT2) / demand(70 * Math.SQRT2) - 1, {
		absolute: 1e-9
	});
});

test('the lean that the board states is where evaluateHang starts to slip', () => {
	const base = boardBase({ ...firstSight, slope: 31 });
	const { plain } = base;
	for (const netMass of [63, 56, 35]) {
		const lean = leanToSlip({
			slope: plain.slope,
			ratio: plain.friction.coefficient,
			hangingMass: 70,
			netMass
		});
		const hang = { ...plain, ropeAngle: lean };
		within(evaluateHang(hang, loadAtNetMass(netMass, hang)).slipMargin, 1, { absolute: 1e-9 });
	}
});

test('loads past the published tests, on a short rope and on a full pad are doubted', () => {
	const base = boardBase({ ...firstSight });
	const whys = (key: string, values = {}) => {
		const row = rowOf(mechanisms, key);
		return boardCurve(row, base, { ...startValues(row, base.hang), ...values }).doubts;
	};
	expect(whys('steady-push')).toEqual([]);
	expect(whys('rope-lean').map(({ why, to }) => [why, to])).toEqual([['rope shortens', 42]]);
	expect(whys('rope-lean', { ropeAngle: 0 })).toEqual([]);
	const [untested] = whys('adhesion');
	within(untested!.from, testedLoad(base), { relative: 1e-12 });
	// 40 N square to the hold on each of eight pads.
	within(testedLoad(base), (40 * 8) / (9.80665 * Math.cos(degreesToRadians(33.5))), {
		relative: 1e-9
	});
	expect(whys('natural-growth', { exponent: 0.9 }).map(({ why }) => why)).toContain('pad full');
});

test('numbers may leave the range worth trying, and are then named; the formula still takes them', () => {
	const base = boardBase({ ...firstSight });
	for (const row of drawn) {
		const start = startValues(row, base.hang);
		expect(strayParameters(row, start), row.key).toEqual([]);
		for (const parameter of parametersOf(row)) {
			for (const [end, value] of limitsOf(row, parameter).entries()) {
				const values = { ...start, [parameter.field]: value };
				const { points } = boardCurve(row, base, values);
				expect(points.every(({ margin }) => margin >= 0)).toBe(true);
				if (value !== parameter.range[end]) {
					expect(strayParameters(row, values).map(({ field }) => field)).toEqual([parameter.field]);
				}
			}
		}
	}
});

test('where no friction is needed nothing is drawn', () => {
	expect(boardBase({ ...firstSight, slope: -5 }).drawable).toBe(false);
	expect(boardBase({ ...firstSight }).drawable).toBe(true);
});
