/** A smooth curve that is read one place at a time; value and rate belong to the last place. */
export type Curve = { value: number; rate: number; moveTo(at: number): void };

/** A place on a curve with what was read there. */
export type Reading = { at: number; value: number; rate: number };

/**
 * Reads a curve at one place.
 * @param curve the curve
 * @param at where
 * @returns place, value and rate
 * Source: derived.
 * Example: for value = at² the reading at 3 is { at: 3, value: 9, rate: 6 }.
 */
export function read(curve: Curve, at: number): Reading {
	curve.moveTo(at);
	return { at, value: curve.value, rate: curve.rate };
}

/**
 * Finds every place where a curve changes sign, on a stretch where it bends one way only.
 * A sign change is one root, by Newton's method within a bracket. With the same sign at both ends
 * the curve may still dip through zero between: the two end tangents meet on the far side of the
 * curve, so they either rule it out or say where to look next.
 * @param curve with its rate
 * @param left reading at the lower end
 * @param right reading at the upper end
 * @param trust longest stretch on which the end tangents may rule a root out (default: any)
 * @returns the places in order: none, one or two
 * Valid for: curves that bend one way only on the stretch; one that only touches zero has none.
 * Source: derived.
 * Example: at² − 2 between 0 and 2 gives 1.41421356.
 */
export function rootsOf(curve: Curve, left: Reading, right: Reading, trust = Infinity): number[] {
	const positive = left.value >= 0;
	if (positive !== right.value >= 0) return [rootBetween(curve, left, right)];
	const sign = positive ? 1 : -1;
	let low = left;
	let high = right;
	for (let step = 0; step < 60; step++) {
		if (sign * low.rate >= 0 || sign * high.rate <= 0) return [];
		let at =
			(high.value - low.value + low.rate * low.at - high.rate * high.at) / (low.rate - high.rate);
		if (!(at > low.at && at < high.at)) at = (low.at + high.at) / 2;
		const outOfReach = sign * (low.value + low.rate * (at - low.at)) > 0;
		if (outOfReach && high.at - low.at <= trust) return [];
		if (outOfReach) at = (low.at + high.at) / 2;
		const between = read(curve, at);
		if (positive !== between.value >= 0)
			return [rootBetween(curve, left, between), rootBetween(curve, between, right)];
		if (at === low.at || at === high.at) return [];
		if (sign * between.rate < 0) low = between;
		else high = between;
	}
	return [];
}

/** Newton's method, kept inside the bracket and replaced by halving wherever it is slow. */
function rootBetween(curve: Curve, left: Reading, right: Reading): number {
	const rising = right.value >= 0;
	let low = left.at;
	let high = right.at;
	let at = low - (left.value * (high - low)) / (right.value - left.value);
	if (!(at >= low && at <= high)) at = (low + high) / 2;
	let lastStep = high - low;
	for (let step = 0; step < 200; step++) {
		curve.moveTo(at);
		if (curve.value >= 0 === rising) high = at;
		else low = at;
		let next = at - curve.value / curve.rate;
		if (!(next >= low && next <= high) || Math.abs(next - at) > lastStep / 2)
			next = (low + high) / 2;
		lastStep = Math.abs(next - at);
		at = next;
		if (lastStep <= 1e-14 * Math.abs(at)) return at;
	}
	return at;
}
