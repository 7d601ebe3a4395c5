import { checkHang } from '../strength/check-hang.ts';
import { evaluateHang } from '../strength/evaluate-hang.ts';
import { loadAtNetMass } from '../mechanics/load-at-net-mass.ts';
import type { Hang, Limit } from '../types.ts';
import { requireAllowed } from '../units/allowed-range.ts';

/** Which of two hangs has the larger margin. */
export type Better = 'first' | 'second' | 'even';

/** One body mass of the sweep, kg: each hang's smaller margin and which limit makes it. */
export type MassSample = {
	bodyMass: number;
	first: { margin: number; limiting: Limit };
	second: { margin: number; limiting: Limit };
	better: Better;
};

/** Two margins closer than this, as a share, are even: rounding, not physics. */
const even = 1e-9;

/**
 * Gives one body both of two hangs, over a range of body mass, and finds where the better one changes.
 * margin = min(slip, strength) at net mass k M; strength is referenceForce · (M/M₀)^n
 * @param o.first one hang; its hangingMass M₀ is the mass its strength was measured at
 * @param o.second the other
 * @param o.multiple k, net mass over body mass, above 0
 * @param o.strengthExponent n: 0 strength stays as measured, 1 it keeps its ratio to body mass
 * @param o.from lightest body, kg, above 0
 * @param o.to heaviest body, kg, above from
 * @param o.steps samples of the sweep less one, at least 1 (default 200)
 * @returns the samples, and each body mass at which the better hang changes, kg to 1e-9, with which
 * is better on either side
 * Valid for: what else differs between the hangs stays as it is at every body mass. Two changes
 * within one step of the sweep cancel unseen.
 * @throws RangeError for a field outside its range
 * Source: derived.
 * Example: two hangs that differ in nothing are even everywhere: no changes.
 */
export function betterByMass(o: {
	first: Hang;
	second: Hang;
	multiple: number;
	strengthExponent: number;
	from: number;
	to: number;
	steps?: number;
}): { samples: MassSample[]; changes: { bodyMass: number; below: Better; above: Better }[] } {
	const { first, second, multiple, strengthExponent, from, to, steps = 200 } = o;
	checkHang(first);
	checkHang(second);
	requireAllowed('multiple', multiple, { above: 0 });
	requireAllowed('strengthExponent', strengthExponent, {});
	requireAllowed('from', from, { above: 0, unit: 'kg' });
	requireAllowed('to', to, { above: from, unit: 'kg' });
	requireAllowed('steps', steps, { min: 1, whole: true });
	const marginOf = (hang: Hang, bodyMass: number) => {
		const grown = (bodyMass / hang.hangingMass) ** strengthExponent;
		const { referenceForce } = hang.strength;
		const own: Hang = {
			...hang,
			hangingMass: bodyMass,
			strength: { ...hang.strength, referenceForce: referenceForce * grown }
		};
		const { slipMargin, strengthMargin, limiting } = evaluateHang(
			own,
			loadAtNetMass(multiple * bodyMass, own)
		);
		return { margin: Math.min(slipMargin, strengthMargin), limiting };
	};
	const sampleAt = (bodyMass: number): MassSample => {
		const one = marginOf(first, bodyMass);
		const other = marginOf(second, bodyMass);
		return { bodyMass, first: one, second: other, better: betterOf(one.margin, other.margin) };
	};
	const samples = Array.from({ length: steps + 1 }, (_, i) =>
		sampleAt(from + ((to - from) * i) / steps)
	);
	const changes = samples.slice(1).flatMap((right, i) => {
		const left = samples[i]!;
		if (left.better === right.better) return [];
		let [low, high] = [left.bodyMass, right.bodyMass];
		while (high - low > 1e-10 * high) {
			const middle = (low + high) / 2;
			if (sampleAt(middle).better === left.better) low = middle;
			else high = middle;
		}
		return [{ bodyMass: (low + high) / 2, below: left.better, above: right.better }];
	});
	return { samples, changes };
}

function betterOf(one: number, other: number): Better {
	if (one === other || Math.abs(one - other) <= even * Math.min(one, other)) return 'even';
	return one > other ? 'first' : 'second';
}
