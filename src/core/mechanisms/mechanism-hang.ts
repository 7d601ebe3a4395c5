import type { FrictionLaw, Hang } from '../types.ts';
import type { MechanismKey, MechanismParameters } from './mechanism-parameters.ts';
import { plumbResult } from './plain-hang.ts';
import { counterweightPush } from './steady-push.ts';

type HangOf<Key extends MechanismKey> = (base: Hang, parameters: MechanismParameters[Key]) => Hang;

const withLaw = (base: Hang, friction: FrictionLaw): Hang => ({ ...base, friction });

const underFilm: HangOf<'film'> = (base, parameters) =>
	withLaw(base, { kind: 'film', ...parameters });

/** The patch of the base, growing so that it is the same under the whole hanging mass. */
function growingPatch(base: Hang, exponent: number): Hang['grip'] {
	const { normal, padArea } = plumbResult(base, base.hangingMass);
	const padForce = normal / base.grip.fingers;
	return {
		...base.grip,
		contact: {
			kind: 'growing',
			padCoefficient: padArea / Math.pow(padForce, exponent),
			exponent,
			padLimit: base.grip.padWidth * base.grip.padLength
		}
	};
}

/** The mechanisms that a hang can hold, as the hang that holds them. */
const hangs: { [Key in MechanismKey]?: HangOf<Key> } = {
	constant: (base, { coefficient }) => withLaw(base, { kind: 'constant', coefficient }),
	ropeLean: (base, { ropeAngle }) => ({ ...base, ropeAngle }),
	steadyPush: (base, { push }) => ({ ...base, push: (base.push ?? 0) + push }),
	counterweightLeftOn: (base, { assistForce, ropeAngle }) => ({
		...base,
		push: (base.push ?? 0) + counterweightPush(assistForce, ropeAngle)
	}),
	roundedHold(base, { radius, exponent }) {
		const { padArea, meanSlope } = plumbResult(base, base.hangingMass);
		const turn = padArea / (2 * radius * base.grip.padWidth);
		return { ...base, slope: meanSlope - turn, radius, grip: growingPatch(base, exponent) };
	},
	adhesion: (base, { coefficient, shearStrength }) =>
		withLaw(base, { kind: 'adhesion', coefficient, shearStrength }),
	naturalGrowth: (base, { coefficient, shearStrength, exponent }) => ({
		...withLaw(base, { kind: 'adhesion', coefficient, shearStrength }),
		grip: growingPatch(base, exponent)
	}),
	deformation: (base, { coefficient, deformation, referencePressure }) =>
		withLaw(base, {
			kind: 'deformation',
			coefficient,
			shearStrength: 0,
			deformation,
			referencePressure
		}),
	film: underFilm,
	liquidFilm: underFilm
};

/**
 * Builds the hang that shows one mechanism, where a hang can.
 * The base is kept in everything the mechanism does not touch. Growing patches and rounded holds
 * agree with the base at its hanging mass, plumb.
 * @param key which mechanism
 * @param base the set-up it acts on; plainHang gives one in which nothing else acts
 * @param parameters its numbers, SI units and radians
 * @returns the hang, or undefined for a mechanism that only the board can show
 * Valid for: as the mechanism's own formula says.
 * @throws RangeError for a field outside its range
 * Source: derived.
 * Example: ropeLean with ropeAngle 0 is the plumb base.
 */
export function mechanismHang<Key extends MechanismKey>(
	key: Key,
	base: Hang,
	parameters: MechanismParameters[Key]
): Hang | undefined {
	const build = hangs[key] as HangOf<Key> | undefined;
	return build?.(base, parameters);
}
