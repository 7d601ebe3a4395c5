import { anchorForce } from '#core/mechanics/anchor-force.ts';
import { counterweightForce } from '#core/mechanics/counterweight-force.ts';
import { loadAtNetMass } from '#core/mechanics/load-at-net-mass.ts';
import { pulleyOffset } from '#core/mechanics/pulley-offset.ts';
import { settledRope, settledRopeAtNetMass, type PulleyRig } from '#core/mechanics/settled-rope.ts';
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
	const { vertical, horizontal } = rest.load;
	return {
		hangingMass,
		netMass,
		rest,
		rig,
		slope,
		ratio,
		hang,
		atBodyMass,
		lighter: evaluateHang(hang, rest.load),
		lighterOwn: evaluateHang(own, rest.load),
		plumb: evaluateHang(hang, loadAtNetMass(netMass, hang)),
		aside: {
			demand: sidewaysDemand({
				slope,
				vertical,
				outward: horizontal,
				sideways: rest.sidewaysForce
			}),
			/** Sideways lean that alone would make the lighter hang slip. */
			leanToSlip: Math.atan(
				sidewaysToSlip({ slope: Math.max(0, slope), vertical, ratio }) /
					kilogramsToNewtons(hangingMass - netMass)
			)
		},
		fake: fakeOf({ slope, ratio, hangingMass, netMass, rig, hang }),
		bands: bandsOf(setup.efficiency, hangingMass, rest.assistForce, rig, hang)
	};
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
function bandsOf(
	efficiency: number,
	hangingMass: number,
	tension: number,
	rig: PulleyRig,
	hang: Hang
) {
	const counterweight = newtonsToKilograms(tension);
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
				slipMargin: evaluateHang(hang, rest.load).slipMargin,
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
		const { vertical, horizontal: outward } = rest.load;
		const demand = sidewaysDemand({ slope, vertical, outward, sideways: rest.sidewaysForce });
		return { netMass, rest, demand };
	});
}
