/**
 * How the window ends on one side of a break carry on to the other side. The ends of each side
 * rise and alternate: lower, upper, lower, upper, …
 */
export type Alignment = {
	/** Index pairs: this end on the left carries on as that one on the right. */
	matched: [left: number, right: number][];
	/** First index of each neighbouring pair that stops here (an interval, or a gap between two). */
	endsLeft: number[];
	/** First index of each neighbouring pair that starts here. */
	startsRight: number[];
};

type Step = { cost: number; next?: Step; add?: (to: Alignment) => void };

/**
 * Joins ends across a break in the cheapest way, in kilograms moved: an end carries on, or a
 * neighbouring pair closes up or opens. Ends never swap order, and a lower end never becomes an
 * upper one, so no edge can join two unrelated intervals.
 */
export function alignEnds(left: readonly number[], right: readonly number[]): Alignment {
	const known = new Map<number, Step>();
	const solve = (i: number, j: number): Step => {
		const key = i * (right.length + 1) + j;
		const seen = known.get(key);
		if (seen) return seen;
		let best: Step = { cost: Infinity };
		const offer = (cost: number, next: Step, add: Step['add']) => {
			if (cost + next.cost < best.cost) best = { cost: cost + next.cost, next, add };
		};
		if (i === left.length && j === right.length) best = { cost: 0 };
		if (i < left.length && j < right.length && (i - j) % 2 === 0) {
			offer(Math.abs(left[i]! - right[j]!), solve(i + 1, j + 1), (to) => to.matched.push([i, j]));
		}
		if (i + 1 < left.length) {
			offer(left[i + 1]! - left[i]!, solve(i + 2, j), (to) => to.endsLeft.push(i));
		}
		if (j + 1 < right.length) {
			offer(right[j + 1]! - right[j]!, solve(i, j + 2), (to) => to.startsRight.push(j));
		}
		known.set(key, best);
		return best;
	};
	const alignment: Alignment = { matched: [], endsLeft: [], startsRight: [] };
	for (let step: Step | undefined = solve(0, 0); step; step = step.next) step.add?.(alignment);
	return alignment;
}
