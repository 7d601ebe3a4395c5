import { frictionRatio } from '../friction/friction-ratio.ts';
import { loadAtNetMass } from '../mechanics/load-at-net-mass.ts';
import { loadFromForces } from '../mechanics/load-from-forces.ts';
import { evaluateHang, type HangResult } from '../strength/evaluate-hang.ts';
import type { Hang } from '../types.ts';
import { flatterHandArea } from './flatter-hand.ts';
import { interlockRatio } from './interlock.ts';
import type { MechanismKey, MechanismParameters } from './mechanism-parameters.ts';
import { orderDriftFactor } from './order-drift.ts';
import { plumbResult } from './plain-hang.ts';
import { saturationRatio } from './saturation.ts';
import { shearLossRatio } from './shear-loss.ts';
import { sittingRatio } from './sitting-time.ts';
import { swingAngleFromNudge } from './swing.ts';

type OwnMargin<Key extends MechanismKey> = (
	base: Hang,
	netMass: number,
	parameters: MechanismParameters[Key]
) => number;

function resultAt(base: Hang, netMass: number): HangResult {
	return evaluateHang(base, loadAtNetMass(netMass, base));
}

/** The slip margin when the hold gives another ratio than the base's law; 0 and Infinity stay. */
function marginWith(result: HangResult, ratio: number): number {
	if (!(result.normal > 0) || !(result.tangential > 0)) return result.slipMargin;
	return (ratio * result.normal) / result.tangential;
}

/** Normal force on one pad, N; where the pull leads off, any number will do. */
const padForce = (base: Hang, result: HangResult): number =>
	result.normal > 0 ? result.normal / base.grip.fingers : 1;

const pressureOf = (result: HangResult): number => (result.pressure > 0 ? result.pressure : 1);

/** The pull at the outer turning point of a swing. */
function swung(base: Hang, netMass: number, angle: number): number {
	const { vertical, horizontal } = loadAtNetMass(netMass, base);
	if (angle >= Math.PI / 2) return 0;
	return evaluateHang(
		base,
		loadFromForces(vertical, horizontal + vertical * Math.tan(angle), netMass)
	).slipMargin;
}

/** The mechanisms that no hang can hold. */
export const ownMargins: { [Key in MechanismKey]?: OwnMargin<Key> } = {
	swingSameAngle: (base, netMass, { swingAngle }) => swung(base, netMass, swingAngle),
	swingSameImpulse: (base, netMass, { swingAngle }) =>
		swung(base, netMass, swingAngleFromNudge(swingAngle, base.hangingMass, netMass)),
	squeeze(base, netMass, { squeeze }) {
		const result = resultAt(base, netMass);
		const normal = result.normal + squeeze / base.hands;
		if (!(result.normal > 0) || !(result.tangential > 0)) return result.slipMargin;
		const pressure = normal / (base.grip.fingers * result.padArea);
		return (frictionRatio(base.friction, pressure) * normal) / result.tangential;
	},
	orderDrift: (base, netMass, parameters) =>
		resultAt(base, netMass).slipMargin * orderDriftFactor(netMass, parameters),
	saturation(base, netMass, parameters) {
		const result = resultAt(base, netMass);
		return marginWith(result, saturationRatio(pressureOf(result), parameters));
	},
	interlock(base, netMass, parameters) {
		const result = resultAt(base, netMass);
		return marginWith(result, interlockRatio(pressureOf(result), parameters));
	},
	sittingTime(base, netMass, parameters) {
		const result = resultAt(base, netMass);
		const force = padForce(base, result);
		return marginWith(result, sittingRatio(parameters.time, { ...parameters, force }));
	},
	shearLoss(base, netMass, parameters) {
		const result = resultAt(base, netMass);
		return marginWith(result, shearLossRatio(padForce(base, result), parameters));
	},
	flatterHand(base, netMass, { coefficient, shearStrength, exponent, largestFactor }) {
		const result = resultAt(base, netMass);
		const force = padForce(base, result);
		const whole = plumbResult(base, base.hangingMass);
		const padArea = flatterHandArea(force, {
			padArea: whole.padArea,
			referenceForce: whole.normal / base.grip.fingers,
			exponent,
			largestFactor
		});
		return marginWith(result, coefficient + (shearStrength * padArea) / force);
	}
};
