import { loadAtNetMass } from '#core/mechanics/load-at-net-mass.ts';
import type { Condition } from '#core/trials/plan/types.ts';
import { degreesToRadians } from '#core/units/angle.ts';

const sign = { away: 1, plumb: 0, toward: -1 } as const;

/**
 * How much a leaning rope changes the friction asked for: ln(tan(slope + tilt)/tan slope), for
 * every hang of a plan. Undefined where slope, lean or body mass is not known, or the slope does not
 * dip toward the person all the way.
 */
export function ropeTermOf(known: {
	slopeDegrees: number | null;
	leanDegrees: number | null;
	bodyMassKg: number | null;
}): ((hang: Condition) => number) | undefined {
	const { slopeDegrees, leanDegrees, bodyMassKg } = known;
	if (slopeDegrees === null || leanDegrees === null || bodyMassKg === null) return undefined;
	const slope = degreesToRadians(slopeDegrees);
	const lean = degreesToRadians(leanDegrees);
	const term = ({ load, ropeSide }: Condition) => {
		const { tilt } = loadAtNetMass(load, {
			hangingMass: bodyMassKg,
			ropeAngle: sign[ropeSide] * lean
		});
		return Math.log(Math.tan(slope + tilt) / Math.tan(slope));
	};
	return slope > 0 ? term : undefined;
}
