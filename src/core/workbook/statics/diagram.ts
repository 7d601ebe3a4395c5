/** A place or a force in the plane: x to the right, y up. */
export type Vector = [x: number, y: number];

/** A body as a closed outline in metres. A moving one carries its mass and acceleration. */
export type Body = {
	id: string;
	name: string;
	outline: Vector[];
	mass?: number;
	acceleration?: Vector;
};

/** One force on one body; components in newtons, drawn from `at`. */
export type DrawnForce = {
	body: string;
	kind: 'weight' | 'normal' | 'friction' | 'push' | 'rope' | 'reaction';
	name: string;
	/** TeX. */
	symbol: string;
	at: Vector;
	vector: Vector;
};

/** A free-body diagram as data; a page draws it. */
export type Diagram = {
	bodies: Body[];
	/** Surfaces, ropes and other fixed lines, for orientation. */
	lines: { name: string; from: Vector; to: Vector }[];
	forces: DrawnForce[];
	/** True where moments are meant to balance too (bars, climbers, blocks that may tip). */
	rigid?: boolean;
};

export const along = (angle: number, size = 1): Vector => [
	size * Math.cos(angle),
	size * Math.sin(angle)
];
export const add = (a: Vector, b: Vector): Vector => [a[0] + b[0], a[1] + b[1]];

/**
 * What the drawn forces on one body leave over, as a share of the largest.
 * Formula: |sum of forces − mass · acceleration| / largest force.
 * @param diagram the diagram
 * @param body id of the body
 * @returns 0 when they balance
 * Source: derived
 */
export function imbalance(diagram: Diagram, body: string): number {
	const forces = diagram.forces.filter((each) => each.body === body);
	const of = diagram.bodies.find((each) => each.id === body);
	const inertia = of?.acceleration?.map((a) => a * (of.mass ?? 0)) ?? [0, 0];
	const left = [0, 1].map((i) => forces.reduce((sum, each) => sum + each.vector[i]!, -inertia[i]!));
	const largest = Math.max(...forces.map((each) => Math.hypot(...each.vector)), 1e-300);
	return Math.hypot(left[0]!, left[1]!) / largest;
}

/**
 * Moment that the drawn forces on one body leave over, as a share of the largest single moment.
 * @param diagram the diagram, at rest
 * @param body id of the body
 * @returns 0 when they balance
 * Source: derived
 */
export function momentImbalance(diagram: Diagram, body: string): number {
	const forces = diagram.forces.filter((each) => each.body === body);
	const pivot = forces[0]?.at ?? [0, 0];
	const moments = forces.map(
		({ at, vector }) => (at[0] - pivot[0]) * vector[1] - (at[1] - pivot[1]) * vector[0]
	);
	const largest = Math.max(...moments.map(Math.abs), 1e-300);
	return Math.abs(moments.reduce((sum, each) => sum + each, 0)) / largest;
}
