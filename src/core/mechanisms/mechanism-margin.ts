import { loadAtNetMass } from '../mechanics/load-at-net-mass.ts';
import { evaluateHang } from '../strength/evaluate-hang.ts';
import type { Hang } from '../types.ts';
import { mechanismHang } from './mechanism-hang.ts';
import type { MechanismKey, MechanismParameters } from './mechanism-parameters.ts';
import { ownMargins } from './own-margin.ts';

/** The mechanisms that have a curve, geometry first. */
export const mechanismKeys: readonly MechanismKey[] = [
	'ropeLean',
	'steadyPush',
	'counterweightLeftOn',
	'swingSameAngle',
	'swingSameImpulse',
	'squeeze',
	'roundedHold',
	'orderDrift',
	'constant',
	'adhesion',
	'naturalGrowth',
	'saturation',
	'deformation',
	'interlock',
	'film',
	'liquidFilm',
	'sittingTime',
	'shearLoss',
	'flatterHand'
];

/** The slip margin of one mechanism against net mass, kg. */
export type MarginCurve = (netMass: number) => number;

/**
 * Finds the slip margin at one load when one mechanism acts on a set-up.
 * limit of friction over friction needed, as in evaluateHang
 * @param key which mechanism
 * @param base the set-up it acts on; plainHang gives one in which nothing else makes load matter
 * @param netMass m, kg, above 0
 * @param parameters its numbers, SI units and radians
 * @returns slip margin: 1 at the edge of slipping, 0 where the pull leads off, Infinity where no
 * friction is needed
 * Valid for: as the mechanism's own formula says.
 * @throws RangeError for a field outside its range
 * Source: derived.
 * Example: constant with coefficient 0.64 at slope 32°, any load: 1.024214.
 */
export function mechanismMargin<Key extends MechanismKey>(
	key: Key,
	base: Hang,
	netMass: number,
	parameters: MechanismParameters[Key]
): number {
	return mechanismCurve(key, base, parameters)(netMass);
}

/**
 * Builds the curve of slip margin against net mass for one mechanism, ready to draw.
 * @param key which mechanism
 * @param base the set-up it acts on
 * @param parameters its numbers, SI units and radians
 * @returns a function from net mass, kg, to slip margin
 * Valid for: as mechanismMargin.
 * @throws RangeError for a field outside its range
 * Source: derived.
 * Example: mechanismCurve('constant', base, { coefficient: 0.64 })(70) is mechanismMargin at 70 kg.
 */
export function mechanismCurve<Key extends MechanismKey>(
	key: Key,
	base: Hang,
	parameters: MechanismParameters[Key]
): MarginCurve {
	const hang = mechanismHang(key, base, parameters);
	if (hang) return (netMass) => evaluateHang(hang, loadAtNetMass(netMass, hang)).slipMargin;
	const own = ownMargins[key];
	if (own) return (netMass) => own(base, netMass, parameters);
	throw new RangeError(`key must be one of ${mechanismKeys.join(', ')}, but is ${String(key)}`);
}
