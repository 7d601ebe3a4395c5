/** A slip margin at a net load, kg. */
export type CurvePoint = { netMass: number; margin: number };

/** Loads, kg. */
export type LoadRange = { from: number; to: number };
