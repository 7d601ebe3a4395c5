import type { FingerChain, Vector } from '#core/strength/finger-chain.ts';
import { pulleyForce } from '#core/strength/pulley-force.ts';
import { tendonForces, type TendonArms } from '#core/strength/tendon-forces.ts';
import { degreesToRadians } from '#core/units/angle.ts';
import { millimetresToMetres } from '#core/units/length.ts';
import { fingerLengths, fingers, type Finger } from '#reference/finger-lengths.ts';
import { momentArms, type MomentArmRow } from '#reference/moment-arms.ts';
import type { Results } from '#state/setup/results.ts';
import { order } from './order.ts';
import type { ArmSet, Pose } from './pose.ts';

/** Nearest that the centre of pressure may come to the last joint, m. */
const nearest = 0.001;

export type FingerResults = ReturnType<typeof fingerResults>;
export type OneFinger = NonNullable<ReturnType<typeof oneFinger>>;

/** Everything the finger page shows, SI: the chosen finger, the others, and the moved contact. */
export function fingerResults(results: Results, pose: Pose) {
	const shares = sharesOf(results.hang.grip.fingers, pose);
	const of = (finger: Finger, set: ArmSet, patch: Partial<Pose> = {}) =>
		oneFinger(results, { ...pose, ...patch, finger }, set, shares[finger]);
	const moved = { shift: pose.shift + 4 };
	const chosen = of(pose.finger, pose.arms) ?? of(pose.finger, 'ketchum')!;
	return {
		shares,
		/** Sum of the shares as typed, over the fingers on the hold, %. */
		typed: order.slice(0, results.hang.grip.fingers).reduce((sum, key) => sum + pose[key], 0),
		chosen,
		sets: { ketchum: of(pose.finger, 'ketchum')!, an: of(pose.finger, 'an') },
		moved: of(pose.finger, pose.arms, moved) ?? of(pose.finger, 'ketchum', moved)!,
		all: fingers.map((finger) => of(finger, 'ketchum')!),
		handForce: results.contact.force
	};
}

/** Each finger's part of the load on its hand: as typed, over the fingers on the hold. */
export function sharesOf(count: number, pose: Pose): Record<Finger, number> {
	const onHold = order.slice(0, count);
	const sum = onHold.reduce((total, finger) => total + pose[finger], 0);
	const share = (finger: Finger) =>
		onHold.includes(finger) ? (sum > 0 ? pose[finger] / sum : 1 / onHold.length) : 0;
	return {
		index: share('index'),
		middle: share('middle'),
		ring: share('ring'),
		little: share('little')
	};
}

/** The chain of one finger under its share, with one set of arms; nothing where the set lacks it. */
function oneFinger(results: Results, pose: Pose, set: ArmSet, share: number) {
	const { finger } = pose;
	const table = momentArms.find((row) => row.finger === finger && row.set === set);
	if (!table) return undefined;
	const { contact, hang, load } = results;
	const bones = lengthsOf(finger);
	const middle = lengthsOf('middle');
	const { padLength: ownPad, padWidth, padDepth } = hang.grip;
	// The set-up's pad is the middle finger's; the others' are shorter as their bones are.
	const padLength = (ownPad * (bones.distal + bones.softTip)) / (middle.distal + middle.softTip);
	const patch = Math.min(contact.padArea / padWidth, padLength);
	const wished = padLength - patch / 2 - millimetresToMetres(pose.shift);
	const chain: FingerChain = {
		contactDistance: Math.min(padLength, Math.max(nearest, wished)),
		pitch: degreesToRadians(pose.pitch) - contact.meanSlope,
		dipFlexion: degreesToRadians(pose.dip),
		pipFlexion: degreesToRadians(pose.pip),
		boneDepth: padDepth,
		middleLength: bones.middle,
		proximalLength: bones.proximal
	};
	const arms = armsOf(table, set === pose.arms ? pose : undefined);
	const direction: Vector = { x: -Math.sin(load.tilt), y: Math.cos(load.tilt) };
	const perNewton = tendonForces({
		...chain,
		arms,
		force: direction,
		passiveDipShare: pose.passive
	});
	const force = contact.force * share;
	const bend = Math.max(0, chain.pipFlexion);
	return {
		...{ finger, set, share, force, direction, chain, arms, padLength, perNewton },
		mcp: perNewton.mcpMoment - table.fdpAtMcp * perNewton.fdp - table.fdsAtMcp * perNewton.fds,
		pulley: pulleyForce(perNewton.fdp, bend),
		ratio: perNewton.fds > 0 ? perNewton.fdp / perNewton.fds : Infinity,
		table
	};
}

function lengthsOf(finger: Finger) {
	return fingerLengths.find(({ key }) => key === finger)!;
}

function armsOf(table: MomentArmRow, own?: Pose): TendonArms {
	const arm = (typed: number | undefined, tabulated: number) =>
		typed ? millimetresToMetres(typed) : tabulated;
	return {
		fdpDip: arm(own?.armDip, table.fdpAtDip),
		fdpPip: arm(own?.armPip, table.fdpAtPip),
		fdsPip: arm(own?.armFds, table.fdsAtPip)
	};
}
