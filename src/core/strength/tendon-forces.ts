import { requireAllowed } from '../units/allowed-range.ts';
import { jointPositions, type FingerChain, type Vector } from './finger-chain.ts';

/** Lever arms of the two finger flexors, m: deep flexor (FDP) at both joints, the other at one. */
export type TendonArms = { fdpDip: number; fdpPip: number; fdsPip: number };

/** Index finger: bone lengths by X-ray (buryanovKotiuk2010), bone depth assumed. */
const indexFinger = { boneDepth: 0.005, middleLength: 0.02238, proximalLength: 0.03978 };

const angle = { min: -Math.PI, max: Math.PI, unit: 'rad' };
const length = { above: 0, unit: 'm' };

/**
 * Finds the moments about the joints of one finger and the tendon forces that balance them.
 * m_J = J_x F_y − J_y F_x; FDP = (1 − k) m_D / r_D; FDS = (m_P − r_P · FDP) / r_S
 * @param o.contactDistance d, last joint to centre of pressure, m, above 0
 * @param o.pitch a₃ of the end segment, rad, tip lower positive
 * @param o.dipFlexion flexion of the last joint, rad, negative when overstretched
 * @param o.pipFlexion flexion of the middle joint, rad
 * @param o.arms lever arms of the tendons, m, above 0
 * @param o.force of the hold on the finger, N, x away from the wall, y up (default 1 N up)
 * @param o.passiveDipShare k, share of the last joint's moment carried without tendon, 0 to below 1
 * (default 0)
 * @param o.boneDepth h, bone axis above the skin contact, m (default 5 mm, an assumption)
 * @param o.middleLength L_m, m (default index, 22.38 mm)
 * @param o.proximalLength L_p, m (default index, 39.78 mm)
 * @returns moments of the force about the joints, N·m, positive when they open the finger; tendon
 * forces, N, never below 0; warnings in words
 * Valid for: teaching; uncertain by about a factor 2. Never a margin to injury.
 * @throws RangeError for a field outside its range
 * Source: ketchum1978 and buryanovKotiuk2010 for the defaults; equations derived.
 * Example: d 12 mm, pitch 0, DIP 50°, PIP 25°, arms 6.5/9.8/8.3 mm, 1 N up: fdp 1.84615, fds 0.99919.
 */
export function tendonForces(
	o: Omit<FingerChain, keyof typeof indexFinger> &
		Partial<typeof indexFinger> & { arms: TendonArms; force?: Vector; passiveDipShare?: number }
): {
	dipMoment: number;
	pipMoment: number;
	mcpMoment: number;
	fdp: number;
	fds: number;
	warnings: string[];
} {
	const { arms, force = { x: 0, y: 1 }, passiveDipShare = 0 } = o;
	const chain: FingerChain = {
		contactDistance: requireAllowed('contactDistance', o.contactDistance, length),
		pitch: requireAllowed('pitch', o.pitch, angle),
		dipFlexion: requireAllowed('dipFlexion', o.dipFlexion, angle),
		pipFlexion: requireAllowed('pipFlexion', o.pipFlexion, angle),
		boneDepth: requireAllowed('boneDepth', o.boneDepth ?? indexFinger.boneDepth, {
			min: 0,
			unit: 'm'
		}),
		middleLength: requireAllowed(
			'middleLength',
			o.middleLength ?? indexFinger.middleLength,
			length
		),
		proximalLength: requireAllowed(
			'proximalLength',
			o.proximalLength ?? indexFinger.proximalLength,
			length
		)
	};
	requireAllowed('arms.fdpDip', arms.fdpDip, length);
	requireAllowed('arms.fdpPip', arms.fdpPip, length);
	requireAllowed('arms.fdsPip', arms.fdsPip, length);
	requireAllowed('force.x', force.x, { unit: 'N' });
	requireAllowed('force.y', force.y, { unit: 'N' });
	requireAllowed('passiveDipShare', passiveDipShare, { min: 0, below: 1 });

	const joints = jointPositions(chain);
	const dipMoment = momentAbout(joints.dip, force);
	const pipMoment = momentAbout(joints.pip, force);
	const mcpMoment = momentAbout(joints.mcp, force);
	const fdp = ((1 - passiveDipShare) * dipMoment) / arms.fdpDip;
	const fds = (pipMoment - arms.fdpPip * Math.max(0, fdp)) / arms.fdsPip;
	const warnings: string[] = [];
	if (fdp < 0) {
		warnings.push(
			'The force bends the last joint instead of opening it, and no finger flexor balances that: the deep flexor is shown as 0.'
		);
	}
	if (fds < 0) {
		warnings.push(
			fdp > 0
				? 'The deep flexor alone over-supplies the middle joint: an extensor or another sharing is needed. The superficial flexor is shown as 0.'
				: 'The force bends the middle joint instead of opening it, and no finger flexor balances that: the superficial flexor is shown as 0.'
		);
	}
	return {
		dipMoment,
		pipMoment,
		mcpMoment,
		fdp: Math.max(0, fdp),
		fds: Math.max(0, fds),
		warnings
	};
}

function momentAbout(joint: Vector, force: Vector): number {
	return joint.x * force.y - joint.y * force.x;
}
