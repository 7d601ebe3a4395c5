import { loadAtNetMass } from '#core/mechanics/load-at-net-mass.ts';
import { ropeTerm } from '#core/trials/rope-term.ts';
import type { Condition } from '#core/trials/plan/types.ts';
import { degreesToRadians } from '#core/units/angle.ts';

const sign = { away: 1, plumb: 0, toward: -1 } as const;

/**
 * The rope term of every hang of a plan, as `makePlan` wants it. Undefined where slope, lean or body
 * mass is not known, or the slope, tilted by the rope, no longer dips toward the person.
 */
export function ropeTermOf(
	known: { slopeDegrees: number | null; leanDegrees: number | null; bodyMassKg: number | null },
	hangs: readonly Condition[]
): ((hang: Condition) => number) | undefined {
	const { slopeDegrees, leanDegrees, bodyMassKg } = known;
	if (slopeDegrees === null || leanDegrees === null || bodyMassKg === null) return undefined;
	const slope = degreesToRadians(slopeDegrees);
	const tiltOf = ({ load, ropeSide }: Condition) =>
		loadAtNetMass(load, {
			hangingMass: bodyMassKg,
			ropeAngle: sign[ropeSide] * degreesToRadians(leanDegrees)
		}).tilt;
	const dips = (angle: number) => angle > 0 && angle < Math.PI / 2;
	return dips(slope) && hangs.every((hang) => dips(slope + tiltOf(hang)))
		? (hang) => ropeTerm(slope, tiltOf(hang))
		: undefined;
}
