import { anchorForce } from '#core/mechanics/anchor-force.ts';
import { counterweightForce } from '#core/mechanics/counterweight-force.ts';
import { loadAtNetMass } from '#core/mechanics/load-at-net-mass.ts';
import { pulleyOffset } from '#core/mechanics/pulley-offset.ts';
import {
	settledRope,
	settledRopeAtNetMass,
	type PulleyRig,
	type SettledRope
} from '#core/mechanics/settled-rope.ts';
import { sidewaysDemand, sidewaysToSlip } from '#core/mechanics/sideways-demand.ts';
import { leanToSlip } from '#core/mechanisms/rope-lean.ts';
import { evaluateHang } from '#core/strength/evaluate-hang.ts';
import type { Hang } from '#core/types.ts';
import { kilogramsToNewtons, newtonsToKilograms } from '#core/units/force.ts';
import { hangOf } from '#state/setup/to-hang.ts';
import { lightestNet, type Setup } from '#storage/codecs/setup.ts';

/** Assist that is shown where the set-up itself has none, kg. */
export const exampleAssist = 15;

/** The assist of a set-up, kg: its own, or an example. */
export function assistOf(setup: Setup): number {
	const own = -setup.change;
	return own > 0 ? own : Math.min(exampleAssist, setup.body - lightestNet);
}

export type RopeResults = ReturnType<typeof ropeResults>;

/**
 * Everything the rope page shows: one body under one pulley, at rest, SI.
 * The steady push is left out: here the body touches nothing but hold and rope.
 * Throws the core's RangeError where nothing comes to rest.
 */
export function ropeResults(setup: Setup, rig: PulleyRig) {
	const hangingMass = setup.body;
	const netMass = hangingMass - assistOf(setup);
	const rest = settledRopeAtNetMass(netMass, { hangingMass, rig });
	const own: Hang = { ...hangOf(setup), push: 0, ropeAngle: 0 };
	const atBodyMass = evaluateHang(own, loadAtNetMass(hangingMass, own));
	const slope = atBodyMass.meanSlope;
	const ratio = atBodyMass.ratio;
	const hang = constantHang(own, ratio, atBodyMass.padArea);
	const { vertical } = rest.load;
	const demand = demandAt(slope, rest);
	return {
		hangingMass,
		netMass,
		rest,
		rig,
		slope,
		ratio,
		hang,
		atBodyMass,
		plumbDemand: evaluateHang(hang, loadAtNetMass(netMass, hang)).demand,
		outwardDemand: evaluateHang(hang, rest.load).demand,
		demand,
		slipMargin: marginOf(ratio, demand),
		aside: {
			/** Sideways lean that alone would make the lighter hang slip. */
			leanToSlip: Math.atan(
				sidewaysToSlip({ slope: Math.max(0, slope), vertical, ratio }) /
					kilogramsToNewtons(hangingMass - netMass)
			)
		},
		fake: fakeOf({ slope, ratio, hangingMass, netMass, rig, hang }),
		bands: bandsOf({ efficiency: setup.efficiency, hangingMass, rest, rig, slope, ratio })
	};
}

/** The ratio that a settled rope asks of the hold, what it pulls to the side included. */
function demandAt(slope: number, { load, sidewaysForce }: SettledRope): number {
	const { vertical, horizontal: outward } = load;
	return sidewaysDemand({ slope, vertical, outward, sideways: sidewaysForce });
}

/** Slip margin of a constant ratio: 0 where the pull leads off, Infinity where nothing has to be rubbed. */
function marginOf(ratio: number, demand: number): number {
	return demand > 0 ? ratio / demand : Infinity;
}

/** The same hang with a ratio and a patch that no load changes. */
function constantHang(hang: Hang, coefficient: number, padArea: number): Hang {
	return {
		...hang,
		friction: { kind: 'constant', coefficient },
		grip: { ...hang.grip, contact: { kind: 'fixed', padArea } }
	};
}

/** How far the rope must lean, and the pulley sit out, for the lighter hang to fail with a constant ratio. */
function fakeOf(o: {
	slope: number;
	ratio: number;
	hangingMass: number;
	netMass: number;
	rig: PulleyRig;
	hang: Hang;
}) {
	const lean = leanToSlip(o);
	// A quarter turn stands for "no lean does it".
	if (Math.abs(lean) >= Math.PI / 2) return { lean, offset: NaN, slipMargin: NaN };
	const offset = pulleyOffset(lean, o);
	const load = loadAtNetMass(o.netMass, { hangingMass: o.hangingMass, ropeAngle: lean });
	return { lean, offset, slipMargin: evaluateHang(o.hang, load).slipMargin };
}

/** What one counterweight may do over a pulley that rubs: least, ideal, most. */
function bandsOf(o: {
	efficiency: number;
	hangingMass: number;
	rest: SettledRope;
	rig: PulleyRig;
	slope: number;
	ratio: number;
}) {
	const { efficiency, hangingMass, rig, slope, ratio } = o;
	const counterweight = newtonsToKilograms(o.rest.assistForce);
	const { low, ideal, high } = counterweightForce(counterweight, efficiency);
	const most = kilogramsToNewtons(hangingMass) * Math.min(1, rig.centre / rig.tieIn);
	return {
		counterweight,
		rows: [
			{ key: 'low', name: 'least: the body last rose', assistForce: low },
			{ key: 'ideal', name: 'a pulley without friction', assistForce: ideal },
			{ key: 'high', name: 'most: the body last sank', assistForce: high }
		].map((row) => {
			if (row.assistForce >= most) return { ...row, rest: undefined };
			const rest = settledRope({ hangingMass, assistForce: row.assistForce, rig });
			return {
				...row,
				rest,
				slipMargin: marginOf(ratio, demandAt(slope, rest)),
				/** A scale under the standing person, plumb beneath the pulley, hands off the hold. */
				scale: hangingMass - newtonsToKilograms(row.assistForce),
				anchor: anchorForce({
					bodyStrand: row.assistForce,
					weightStrand: ideal,
					angle: rest.lean
				})
			};
		})
	};
}

/** The settled rope and what it asks of the hold, along the load axis, lightest first. */
export function alongNetMass({ hangingMass, rig, slope }: RopeResults, count = 90) {
	const least = Math.max(lightestNet, hangingMass * (1 - rig.centre / rig.tieIn) + 1);
	return Array.from({ length: count + 1 }, (_, i) => {
		const netMass = least + ((hangingMass - least) * i) / count;
		const rest = settledRopeAtNetMass(netMass, { hangingMass, rig });
		return { netMass, rest, demand: demandAt(slope, rest) };
	});
}
