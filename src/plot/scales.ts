/** A mapping from a plotted quantity to a place on the drawing, and back. */
export type Scale = {
	(value: number): number;
	/** The quantity at a place on the drawing. */
	invert: (place: number) => number;
	domain: readonly [number, number];
	range: readonly [number, number];
};

type Pair = readonly [number, number];

function build(
	domain: Pair,
	range: Pair,
	forth: (v: number) => number,
	back: (u: number) => number
): Scale {
	const [u0, u1] = [forth(domain[0]), forth(domain[1])];
	const [r0, r1] = range;
	// An empty domain would divide by nothing: everything then stands in the middle.
	const slope = u1 === u0 ? 0 : (r1 - r0) / (u1 - u0);
	const start = u1 === u0 ? (r0 + r1) / 2 : r0;
	const scale = (value: number) => start + (forth(value) - u0) * slope;
	const invert = (place: number) => back(slope === 0 ? u0 : u0 + (place - start) / slope);
	return Object.assign(scale, { invert, domain, range });
}

/** Equal steps of the quantity are equal steps on the drawing. */
export function linearScale(domain: Pair, range: Pair): Scale {
	return build(
		domain,
		range,
		(value) => value,
		(place) => place
	);
}

/** Equal factors of the quantity are equal steps on the drawing; both ends of the domain above 0. */
export function logScale(domain: Pair, range: Pair): Scale {
	if (!(domain[0] > 0 && domain[1] > 0)) {
		throw new RangeError(`domain ${domain[0]} to ${domain[1]}: both ends must lie above 0`);
	}
	return build(domain, range, Math.log, Math.exp);
}
