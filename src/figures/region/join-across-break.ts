import type { Limit } from '#core/types.ts';
import { alignEnds } from './align-ends.ts';
import type { Region } from './types.ts';
import { endsOf, type End } from './window-ends.ts';

type Column = Region['columns'][number];

type Break = {
	at: number;
	/** The last one or two like columns on each side, the nearest last. */
	left: (Column | undefined)[];
	right: (Column | undefined)[];
	crossings: Region['crossings'];
	/** Axis distance of the two columns about the break. */
	spacing: number;
};

type Join = {
	/** The ends at the break as the left side, and the right side, arrives there. */
	left: End[];
	right: End[];
	/** Upright edges at the break, the holding side on the left as one goes from `from` to `to`. */
	uprights: { kind: Limit; from: number; to: number }[];
};

type Side = { ends: End[]; farther?: End[]; near: number; far: number };

function side(columns: (Column | undefined)[]): Side {
	const nearest = columns.at(-1)!;
	const other = columns.length > 1 ? columns[0] : undefined;
	return {
		ends: endsOf(nearest.intervals),
		farther: other && endsOf(other.intervals),
		near: nearest.value,
		far: other?.value ?? nearest.value
	};
}

/** How far past the nearest column the break lies, in steps from the farther to the nearest. */
const stepsTo = ({ near, far }: Side, at: number) =>
	near === far ? 0 : (at - near) / (near - far);

function carriedOn(from: Side, at: number): End[] {
	const steps = stepsTo(from, at);
	return from.ends.map(({ netMass, kind }, i) => {
		if (kind === 'range' || !from.farther) return { netMass, kind };
		return { kind, netMass: netMass + (netMass - from.farther[i]!.netMass) * steps };
	});
}

/**
 * Whether a pair of ends closes to a point at the break rather than being cut off there. Ends that
 * meet do so as a wedge or as a rounded nose, whose width squared falls at least evenly to 0; one
 * that is cut off keeps its width.
 */
function closes(from: Side, i: number, at: number): boolean {
	const width = (ends: End[]) => ends[i + 1]!.netMass - ends[i]!.netMass;
	const [now, before] = [width(from.ends), from.farther ? width(from.farther) : NaN];
	const steps = stepsTo(from, at);
	if (Number.isNaN(before)) return now < 5; // one lone column: a sliver is taken to close, kg
	return now ** 2 + (now ** 2 - before ** 2) * steps < 0.25 * now ** 2 || now < 1e-3;
}

/** Carries the windows on both sides of a break to it, and says how they meet there. */
export function joinAcrossBreak({ at, left, right, crossings, spacing }: Break): Join {
	const [from, to] = [side(left), side(right)];
	const [a, b] = [carriedOn(from, at), carriedOn(to, at)];
	const crossing = crossings.find(({ value }) => Math.abs(value - at) <= spacing);
	const alignment = alignEnds(
		a.map((end) => end.netMass),
		b.map((end) => end.netMass)
	);
	const drift = (s: Side, i: number) =>
		s.farther ? Math.abs(s.ends[i]!.netMass - s.farther[i]!.netMass) : 0;

	for (const [i, j] of alignment.matched) {
		const [one, other] = [a[i]!, b[j]!];
		const near = 0.2 + 2 * (drift(from, i) + drift(to, j));
		if (Math.abs(one.netMass - other.netMass) > near) continue;
		let meet = (one.netMass + other.netMass) / 2;
		if (one.kind === 'range') meet = one.netMass;
		else if (other.kind === 'range') meet = other.netMass;
		else if (crossing && one.kind !== other.kind && Math.abs(crossing.netMass - meet) <= near) {
			meet = crossing.netMass;
		}
		one.netMass = other.netMass = meet;
	}
	const closePairs = (ends: End[], s: Side, firsts: number[]) => {
		for (const i of firsts) {
			if (!closes(s, i, at)) continue;
			const [low, high] = [ends[i]!, ends[i + 1]!];
			let meet = (low.netMass + high.netMass) / 2;
			if (low.kind === 'range') meet = low.netMass;
			else if (high.kind === 'range') meet = high.netMass;
			else if (crossing && low.kind !== high.kind) meet = crossing.netMass;
			low.netMass = high.netMass = meet;
		}
	};
	closePairs(a, from, alignment.endsLeft);
	closePairs(b, to, alignment.startsRight);
	return { left: a, right: b, uprights: uprights(a, b) };
}

/** Where only one side holds at the break, an upright edge stands. */
function uprights(a: End[], b: End[]): Join['uprights'] {
	const holds = (ends: End[], m: number) =>
		ends.some((end, i) => i % 2 === 0 && end.netMass < m && m < ends[i + 1]!.netMass);
	const marks = [...new Set([...a, ...b].map((end) => end.netMass))].sort((x, y) => x - y);
	const edges: Join['uprights'] = [];
	for (let i = 0; i + 1 < marks.length; i++) {
		const [low, high] = [marks[i]!, marks[i + 1]!];
		const [onLeft, onRight] = [a, b].map((ends) => holds(ends, (low + high) / 2));
		if (onLeft === onRight) continue;
		// Only slipping can be the same at every load (a steady ratio cancels it); strength never is.
		edges.push({ kind: 'slip', from: onLeft ? low : high, to: onLeft ? high : low });
	}
	return edges;
}
