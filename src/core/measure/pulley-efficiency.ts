import { requireAllowed } from '../units/allowed-range.ts';
import { roundingSpread, type Measured } from './measured.ts';

/**
 * Finds a pulley's efficiency from the pulls that just raise and just lower one weight.
 * η = √(T_lower/T_raise): raising takes W/η, lowering gives η W, so the weight drops out
 * @param o.raise pull while the weight goes slowly up, above 0, N or kg
 * @param o.lower pull while it goes slowly down, above 0 and at most raise, same unit
 * @param o.step resolution of the scale, same unit, 0 or more (default 0)
 * @returns η and its spread from the scale's resolution; low and high, the band of a hanging
 * counterweight's assist at rest as multiples of its weight: η to 1/η
 * Valid for: slow, steady pulls over the same rope and pulley.
 * @throws RangeError for a field outside its range
 * Source: ropelab
 * Example: 12 kg up and 8.3 kg down: 0.832.
 */
export function pulleyEfficiency(o: {
	raise: number;
	lower: number;
	step?: number;
}): Measured & { low: number; high: number } {
	const { raise, lower, step = 0 } = o;
	requireAllowed('raise', raise, { above: 0 });
	requireAllowed('lower', lower, { above: 0, max: raise });
	requireAllowed('step', step, { min: 0 });
	const value = Math.sqrt(lower / raise);
	const reading = roundingSpread(step);
	const spread = (value / 2) * Math.hypot(reading / raise, reading / lower);
	return { value, spread, low: value, high: 1 / value };
}

/**
 * Finds the friction ratio between rope and a round bar that an efficiency would mean.
 * μ = −ln η/β, from T₁/T₂ = e^(μβ)
 * @param efficiency η, above 0 and at most 1
 * @param wrap β, angle the rope bends through, rad, above 0 (π for up and over)
 * @returns ratio
 * Valid for: comparison only. Rope thickness and stiffness matter too, so take efficiency as measured.
 * @throws RangeError for a field outside its range
 * Source: bakerHaynes, chapter 9 (belt friction)
 * Example: 0.53 over half a turn: 0.202.
 */
export function capstanRatio(efficiency: number, wrap: number): number {
	requireAllowed('efficiency', efficiency, { above: 0, max: 1 });
	requireAllowed('wrap', wrap, { above: 0, unit: 'rad' });
	return -Math.log(efficiency) / wrap;
}
