/** What a column measures; decides which units it may stand in. */
export type Dimension = 'mass' | 'angle' | 'length' | 'area' | 'time' | 'temperature' | 'share';

type Convert = (value: number) => number;
const same: Convert = (value) => value;
const times =
	(factor: number): Convert =>
	(value) =>
		value * factor;

/** Units a file may use, and the way into the notebook's own: kg, °, mm, mm², s, °C, %. */
const units: Record<Dimension, Record<string, Convert>> = {
	mass: {
		kg: same,
		kgf: same,
		g: times(0.001),
		// International pound, exact by definition (NIST SP 811, appendix B).
		lb: times(0.45359237),
		lbs: times(0.45359237),
		lbf: times(0.45359237),
		// Standard gravity, exact by definition (the same source).
		n: times(1 / 9.80665)
	},
	angle: { deg: same, '°': same, degrees: same, rad: times(180 / Math.PI) },
	length: { mm: same, cm: times(10), m: times(1000), in: times(25.4) },
	area: { mm2: same, 'mm²': same, cm2: times(100), 'cm²': times(100) },
	time: { s: same, sec: same, seconds: same, min: times(60), ms: times(0.001) },
	temperature: { c: same, '°c': same, f: fahrenheit, '°f': fahrenheit },
	share: { '%': same }
};

function fahrenheit(value: number): number {
	return ((value - 32) * 5) / 9;
}

/** The conversion from a unit, or undefined when this quantity is not measured in it. */
export function conversionFrom(dimension: Dimension, unit: string): Convert | undefined {
	const known = units[dimension];
	const name = unit.toLowerCase();
	return Object.hasOwn(known, name) ? known[name] : undefined;
}
