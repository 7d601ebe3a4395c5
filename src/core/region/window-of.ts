import { loadPath, type LoadPath } from '../strength/along-load.ts';
import type { PreparedHang } from '../strength/prepare-hang.ts';
import type { Interval, Limit } from '../types.ts';
import { gapCurves } from './gaps.ts';
import { knots } from './knots.ts';
import { rootsOf, type Curve, type Reading } from './roots.ts';

/** A net mass, kg, from which one of the limits allows the load or does not. */
type Edge = { at: number; limit: Limit; allows: boolean };

/** Step off a kink, as a share of its mass, to look at each side by itself. */
const nudge = 1e-11;

/**
 * Finds the net masses that hold, for a hang that is already checked and prepared.
 * Solves F_max − Q = 0 (slip) and strongest moment − moment = 0 (strength) on pieces where both
 * are smooth and bend one way only.
 * @param prepared the hang
 * @param from lower end of the range, kg, above 0
 * @param to upper end, kg, above from
 * @returns the intervals, lightest first, each end with what makes it
 * Valid for: along the protocol of loadAtNetMass.
 * Source: derived.
 * Example: see holdingWindow.
 */
export function windowOf(prepared: PreparedHang, from: number, to: number): Interval[] {
	const { hangingMass, ropeAngle } = prepared.hang;
	const edges: Edge[] = [];
	// A plumb rope pulls nobody aside, so its load axis has no kink at the hanging mass.
	const turn = ropeAngle === 0 ? from : Math.min(to, Math.max(from, hangingMass));
	if (turn > from) addEdges(prepared, loadPath(prepared, true), from, turn, edges);
	if (turn < to) addEdges(prepared, loadPath(prepared, false), turn, to, edges);
	return intervalsBetween(from, to, edges.sort(lightestFirst));
}

/** At a tie strength comes first and so names the edge. */
function lightestFirst(a: Edge, b: Edge): number {
	return a.at - b.at || (a.limit === b.limit ? 0 : a.limit === 'strength' ? -1 : 1);
}

/** Adds what each limit says at the start of every piece, and where it changes on the piece. */
function addEdges(
	prepared: PreparedHang,
	path: LoadPath,
	from: number,
	to: number,
	edges: Edge[]
): void {
	const curves = gapCurves(prepared, path);
	const { at, kinks, trust } = knots(prepared, path, from, to);
	let left = curves.both(from);
	for (let i = 1; i < at.length; i++) {
		const start = at[i - 1]!;
		const end = at[i]!;
		if (kinks.includes(start)) left = curves.both(start * (1 + nudge));
		const right = curves.both(kinks.includes(end) ? end * (1 - nudge) : end);
		if (left.leadsOff && right.leadsOff) edges.push({ at: start, limit: 'slip', allows: false });
		else {
			addChanges(curves.slip, 'slip', start, left.slip, right.slip, trust, edges);
			addChanges(curves.strength, 'strength', start, left.strength, right.strength, trust, edges);
		}
		left = right;
	}
}

function addChanges(
	curve: Curve,
	limit: Limit,
	start: number,
	left: Reading,
	right: Reading,
	trust: number,
	edges: Edge[]
): void {
	let allows = left.value >= 0;
	edges.push({ at: start, limit, allows });
	for (const at of rootsOf(curve, left, right, trust)) {
		allows = !allows;
		edges.push({ at, limit, allows });
	}
}

/** Walks the edges from light to heavy and keeps the stretches that both limits allow. */
function intervalsBetween(from: number, to: number, edges: Edge[]): Interval[] {
	const intervals: Interval[] = [];
	const allowed = { slip: false, strength: true };
	let open: Interval | undefined;
	for (const { at, limit, allows } of edges) {
		allowed[limit] = allows;
		const holds = allowed.slip && allowed.strength;
		if (holds && !open) {
			open = { from: at, to, lowerLimit: at > from ? limit : 'range', upperLimit: 'range' };
		} else if (!holds && open) {
			open.to = at;
			open.upperLimit = limit;
			if (at > open.from) intervals.push(open);
			open = undefined;
		}
	}
	if (open && to > open.from) intervals.push(open);
	return intervals;
}
