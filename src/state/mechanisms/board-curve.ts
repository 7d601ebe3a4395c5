import {
	anchoredCurve,
	effectPerDoubling,
	effectPerTenKilograms,
	loadSign,
	type LoadSign,
	type MarginCurve
} from '#core/mechanisms/load-effect.ts';
import { mechanismHang } from '#core/mechanisms/mechanism-hang.ts';
import { mechanismCurve } from '#core/mechanisms/mechanism-margin.ts';
import type { MechanismKey, MechanismParameters } from '#core/mechanisms/mechanism-parameters.ts';
import { loadAtNetMass } from '#core/mechanics/load-at-net-mass.ts';
import { slipProbe } from '#core/mechanisms/slip-probe.ts';
import type { Hang } from '#core/types.ts';
import type { MechanismRow } from '#reference/types.ts';
import type { BoardBase } from './board-base.ts';
import { canBeNone, parametersOf, type Values } from './board-values.ts';

export type CurvePoint = { netMass: number; margin: number };

/** Loads at which a curve is not to be trusted, kg, and why. */
export type Doubt = { from: number; to: number; why: 'rope shortens' | 'pad full' | 'untested' };

export type BoardCurve = {
	points: CurvePoint[];
	sign: LoadSign;
	perDoubling: number;
	perTenKilograms: number;
	doubts: Doubt[];
};

/** Heaviest load on one fingertip in the published tests that were read, N. */
export const testedTo = 40;

/** Even loads of each curve; small figures need no more. */
const samples = 41;

/** The mechanism's numbers as its formula takes them. */
function formulaValues(row: MechanismRow, values: Values): MechanismParameters[MechanismKey] {
	const left = parametersOf(row).filter(
		(parameter) => canBeNone(parameter) && values[parameter.field] === parameter.start
	);
	const kept = Object.entries(values).filter(([field]) => left.every((one) => one.field !== field));
	return Object.fromEntries(kept) as MechanismParameters[MechanismKey];
}

/** The curve of one mechanism before it is scaled to the person's own point. */
export function ownCurve(row: MechanismRow, base: BoardBase, values: Values): MarginCurve {
	return mechanismCurve(
		row.boardKey as MechanismKey,
		base.plain,
		formulaValues(row, values) as never
	);
}

/** The hang that shows a mechanism, where a hang can; its ratio is not scaled yet. */
export function ownHang(row: MechanismRow, base: BoardBase, values: Values): Hang | undefined {
	const key = row.boardKey as MechanismKey;
	return mechanismHang(key, base.plain, formulaValues(row, values) as never);
}

/**
 * Computes one mechanism's curve through the person's own point, and what load does along it.
 * @param row a mechanism with a curve
 * @param base what it acts on
 * @param values its numbers
 * Throws the core's RangeError for numbers that the formula does not take.
 */
export function boardCurve(row: MechanismRow, base: BoardBase, values: Values): BoardCurve {
	const { range, netMass, contact, plain } = base;
	const curve = anchoredCurve(ownCurve(row, base, values), {
		netMass,
		margin: contact.slipMargin
	});
	const at = (share: number) => range.from + (range.to - range.from) * share;
	const loads = Array.from({ length: samples }, (_, i) => at(i / (samples - 1)));
	const corners = [plain.hangingMass, netMass, values.firstMass ?? NaN].filter(
		(load) => load > range.from && load < range.to
	);
	return {
		points: [...new Set([...loads, ...corners])]
			.sort((a, b) => a - b)
			.map((load) => ({ netMass: load, margin: curve(load) })),
		sign: loadSign(curve, { ...range, samples }),
		perDoubling: effectPerDoubling(curve, netMass),
		perTenKilograms: effectPerTenKilograms(curve, netMass),
		doubts: doubtsOf(row, base, values)
	};
}

function doubtsOf(row: MechanismRow, base: BoardBase, values: Values): Doubt[] {
	const { range, plain } = base;
	const doubts: Doubt[] = [];
	if (row.key === 'rope-lean' && values.ropeAngle !== 0) {
		// Past some 40 % assist the angle of a rope from a fixed pulley shrinks.
		doubts.push({ from: range.from, to: 0.6 * plain.hangingMass, why: 'rope shortens' });
	}
	if (['rounded-hold', 'natural-growth'].includes(row.key)) {
		const from = padFullFrom(ownHang(row, base, values)!, range);
		if (from !== undefined) doubts.push({ from, to: range.to, why: 'pad full' });
	}
	if (!['geometry', 'order'].includes(row.family)) {
		const from = testedLoad(base);
		if (from < range.to) {
			doubts.push({ from: Math.max(from, range.from), to: range.to, why: 'untested' });
		}
	}
	return doubts.filter(({ from, to }) => to > from);
}

/** Net mass, kg, at which each pad presses as hard as in the heaviest tests. */
export function testedLoad({ plain }: BoardBase): number {
	const { normal } = slipProbe(plain)(loadAtNetMass(plain.hangingMass, plain));
	return (plain.hangingMass * testedTo * plain.grip.fingers) / normal;
}

/** The load from which a growing patch has become the whole pad, kg. */
function padFullFrom(hang: Hang, { from, to }: BoardBase['range']): number | undefined {
	const { contact } = hang.grip;
	if (contact.kind !== 'growing') return undefined;
	const probe = slipProbe(hang);
	const full = (load: number) =>
		probe(loadAtNetMass(load, hang)).padArea >= contact.padLimit * (1 - 1e-9);
	if (!full(to)) return undefined;
	let [low, high] = [from, to];
	if (full(low)) return low;
	while (high - low > 0.05) {
		const middle = (low + high) / 2;
		if (full(middle)) high = middle;
		else low = middle;
	}
	return high;
}
