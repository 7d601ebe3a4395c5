import { loadAtNetMass } from '../mechanics/load-at-net-mass.ts';
import type { Hang } from '../types.ts';
import { newtonsToKilograms } from '../units/force.ts';
import { flatterHandArea } from './flatter-hand.ts';
import type { MechanismKey, MechanismParameters } from './mechanism-parameters.ts';
import { plumbResult } from './plain-hang.ts';
import { slipProbe } from './slip-probe.ts';
import { swingAngleFromNudge } from './swing.ts';

type Doubt<Key extends MechanismKey> = (
	base: Hang,
	parameters: MechanismParameters[Key]
) => (netMass: number) => string | undefined;

/** Share of the hanging mass below which one rope angle overstates the lean under a fixed pulley. */
const leastShareOfMass = 0.6;

const doubts: { [Key in MechanismKey]?: Doubt<Key> } = {
	ropeLean:
		({ hangingMass }, { ropeAngle }) =>
		(netMass) =>
			ropeAngle !== 0 && netMass < leastShareOfMass * hangingMass
				? 'More than 40 % assist: under a fixed pulley the rope would stand more upright than this.'
				: undefined,
	counterweightLeftOn: ({ hangingMass }, { assistForce, ropeAngle }) => {
		const lightest = hangingMass - newtonsToKilograms(assistForce * Math.cos(ropeAngle));
		return (netMass) =>
			netMass < lightest
				? 'Lighter than the body under this rope: there are no plates to take off.'
				: undefined;
	},
	orderDrift:
		(_base, { firstMass }) =>
		(netMass) =>
			netMass < firstMass ? 'Lighter than the first go: nothing has drifted yet.' : undefined,
	swingSameImpulse:
		({ hangingMass }, { swingAngle }) =>
		(netMass) =>
			swingAngleFromNudge(swingAngle, hangingMass, netMass) >= Math.PI / 2
				? 'At this load the same nudge would throw the body past the horizontal.'
				: undefined,
	flatterHand(base, { exponent, largestFactor }) {
		const { fingers, padWidth, padLength } = base.grip;
		const probe = slipProbe(base);
		const whole = plumbResult(base, base.hangingMass);
		const patch = {
			padArea: whole.padArea,
			referenceForce: whole.normal / fingers,
			exponent,
			largestFactor
		};
		return (netMass) => {
			const { normal, leadsOff } = probe(loadAtNetMass(netMass, base));
			if (leadsOff || flatterHandArea(normal / fingers, patch) <= padWidth * padLength) {
				return undefined;
			}
			return 'The patch is larger than the end of the finger: strength is not known for such a hand.';
		};
	}
};

/**
 * Says where a mechanism's curve leaves what the mechanism stands for: draw it dashed there.
 * @param key which mechanism
 * @param base the set-up it acts on
 * @param parameters its numbers, SI units and radians
 * @returns a function from net mass, kg, above 0, to a sentence, or undefined where nothing is amiss
 * Valid for: the limits of each story. That nearly all friction was measured at lighter loads than a
 * hang's holds for every curve and is not repeated here.
 * @throws RangeError for a field outside its range
 * Source: derived.
 * Example: a leaning rope at 35 of 70 kg: "More than 40 % assist …"; at 60 kg nothing.
 */
export function mechanismDoubt<Key extends MechanismKey>(
	key: Key,
	base: Hang,
	parameters: MechanismParameters[Key]
): (netMass: number) => string | undefined {
	const doubt = doubts[key] as Doubt<Key> | undefined;
	return doubt ? doubt(base, parameters) : () => undefined;
}
