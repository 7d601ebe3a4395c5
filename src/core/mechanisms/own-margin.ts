import { frictionRatio } from '../friction/friction-ratio.ts';
import { loadAtNetMass } from '../mechanics/load-at-net-mass.ts';
import type { Contact } from '../strength/contact-at.ts';
import type { Hang } from '../types.ts';
import { flatterHandArea } from './flatter-hand.ts';
import { interlockRatio } from './interlock.ts';
import type { MarginCurve } from './load-effect.ts';
import type { MechanismKey, MechanismParameters } from './mechanism-parameters.ts';
import { orderDriftFactor } from './order-drift.ts';
import { plumbResult } from './plain-hang.ts';
import { saturationRatio } from './saturation.ts';
import { shearLossRatio } from './shear-loss.ts';
import { sittingRatio } from './sitting-time.ts';
import { slipMarginOf, slipProbe } from './slip-probe.ts';
import { swingAngleFromNudge } from './swing.ts';

type OwnMargin<Key extends MechanismKey> = (
	base: Hang,
	parameters: MechanismParameters[Key]
) => MarginCurve;

/** The curve of a base whose law is replaced by a ratio of the contact's own. */
function withRatio(base: Hang, ratioOf: (contact: Readonly<Contact>) => number): MarginCurve {
	const probe = slipProbe(base);
	return (netMass) => {
		const contact = probe(loadAtNetMass(netMass, base));
		return contact.leadsOff ? 0 : slipMarginOf(contact, ratioOf(contact));
	};
}

/** The curve at the outer turning point of a swing, whose half angle may change with load. */
function swung(base: Hang, angleAt: (netMass: number) => number): MarginCurve {
	const probe = slipProbe(base);
	return (netMass) => {
		const { vertical, horizontal } = loadAtNetMass(netMass, base);
		const angle = angleAt(netMass);
		if (angle >= Math.PI / 2) return 0;
		return slipMarginOf(probe({ vertical, horizontal: horizontal + vertical * Math.tan(angle) }));
	};
}

/** The mechanisms that no hang can hold, as curves of slip margin against net mass. */
export const ownMargins: { [Key in MechanismKey]?: OwnMargin<Key> } = {
	swingSameAngle: (base, { swingAngle }) => swung(base, () => swingAngle),
	swingSameImpulse: (base, { swingAngle }) =>
		swung(base, (netMass) => swingAngleFromNudge(swingAngle, base.hangingMass, netMass)),
	squeeze(base, { squeeze }) {
		const extra = squeeze / base.hands;
		return withRatio(base, ({ normal, pressure }) => {
			// The squeeze presses as well as it holds: both the pressure and the limit grow by it.
			const pressed = (normal + extra) / normal;
			return frictionRatio(base.friction, pressure * pressed) * pressed;
		});
	},
	orderDrift(base, parameters) {
		const still = withRatio(base, ({ ratio }) => ratio);
		return (netMass) => still(netMass) * orderDriftFactor(netMass, parameters);
	},
	saturation: (base, parameters) =>
		withRatio(base, ({ pressure }) => saturationRatio(pressure, parameters)),
	interlock: (base, parameters) =>
		withRatio(base, ({ pressure }) => interlockRatio(pressure, parameters)),
	sittingTime: (base, parameters) =>
		withRatio(base, ({ normal }) =>
			sittingRatio(parameters.time, { ...parameters, force: normal / base.grip.fingers })
		),
	shearLoss: (base, parameters) =>
		withRatio(base, ({ pressure }) => shearLossRatio(pressure, parameters)),
	flatterHand(base, { coefficient, shearStrength, exponent, largestFactor }) {
		const { fingers } = base.grip;
		const whole = plumbResult(base, base.hangingMass);
		const patch = {
			padArea: whole.padArea,
			referenceForce: whole.normal / fingers,
			exponent,
			largestFactor
		};
		return withRatio(base, ({ normal }) => {
			const force = normal / fingers;
			return coefficient + (shearStrength * flatterHandArea(force, patch)) / force;
		});
	}
};
