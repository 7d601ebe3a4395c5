import {
	emptyMovingContact,
	moveAlong,
	type LoadPath,
	type MovingContact
} from '../strength/along-load.ts';
import type { PreparedHang } from '../strength/prepare-hang.ts';
import type { Curve, Reading } from './roots.ts';

/** What is left of each limit at one net mass: 0 at an edge, negative where the hang fails. */
export type Gaps = { slip: Reading; strength: Reading; leadsOff: boolean };

/** Both gaps along one load path, together at one mass or each as a curve of its own. */
export type GapCurves = { slip: Curve; strength: Curve; both(at: number): Gaps };

/** Share of the friction needed that rounding may take: a hold exactly at its limit holds. */
const rounding = 1e-14;

/** One record, filled again at every mass: the solver runs thousands of times a frame. */
const moving: MovingContact = emptyMovingContact();

/**
 * Gives what is left of each limit along a load path: friction limit less friction needed (N), and
 * the largest moment less the moment about the last joints (N·m).
 * @param prepared the hang
 * @param path horizontal force against net mass
 * @returns curves against net mass, with their rates per kg
 * Valid for: masses on the path's side of the hanging mass.
 * Source: derived.
 * Example: at an edge of a holding window one of the two gaps is 0.
 */
export function gapCurves(prepared: PreparedHang, path: LoadPath): GapCurves {
	const slip: Curve = {
		value: 0,
		rate: 0,
		moveTo(at) {
			moveAlong(prepared, path, at, moving);
			slip.value = slipGap();
			slip.rate = moving.frictionRate - moving.tangentialRate;
		}
	};
	const strength: Curve = {
		value: 0,
		rate: 0,
		moveTo(at) {
			moveAlong(prepared, path, at, moving);
			strength.value = prepared.strongestMoment - moving.moment;
			strength.rate = -moving.momentRate;
		}
	};
	const both = (at: number): Gaps => {
		slip.moveTo(at);
		return {
			slip: { at, value: slip.value, rate: slip.rate },
			strength: { at, value: prepared.strongestMoment - moving.moment, rate: -moving.momentRate },
			leadsOff: moving.leadsOff
		};
	};
	return { slip, strength, both };
}

function slipGap(): number {
	return moving.frictionLimit - moving.tangential + rounding * Math.abs(moving.tangential);
}
