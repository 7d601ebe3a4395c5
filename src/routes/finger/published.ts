import { pulleyForce } from '#core/strength/pulley-force.ts';
import { tendonForces } from '#core/strength/tendon-forces.ts';
import { jointAngles } from '#reference/joint-angles.ts';
import { fingerLengths } from '#reference/finger-lengths.ts';
import { momentArms } from '#reference/moment-arms.ts';
import { publishedRatios } from '#reference/published-ratios.ts';
import type { Fact } from '#reference/types.ts';
import type { ArmSet } from './pose.ts';

type Grip = 'crimp' | 'slope';

const factOf = (key: string): Fact => publishedRatios.find((row) => row.key === key)!;
const valueOf = (key: string) => factOf(key).value!;

/**
 * The index finger at the published joint angles of a grip, pad flat on a level hold, contact
 * 12 mm from the last joint, bone axis 5 mm above the skin: what stands beside the published ratios.
 */
function modelAt(grip: Grip, set: ArmSet) {
	const angles = jointAngles.find(({ key }) => key === grip)!;
	const bones = fingerLengths.find(({ key }) => key === 'index')!;
	const arms = momentArms.find((row) => row.finger === 'index' && row.set === set)!;
	const { fdp, fds } = tendonForces({
		contactDistance: 0.012,
		pitch: 0,
		dipFlexion: angles.dip!,
		pipFlexion: angles.pip!,
		boneDepth: 0.005,
		middleLength: bones.middle,
		proximalLength: bones.proximal,
		arms: { fdpDip: arms.fdpAtDip, fdpPip: arms.fdpAtPip, fdsPip: arms.fdsAtPip },
		passiveDipShare: grip === 'crimp' ? valueOf('passive-dip-share') : 0
	});
	return { fdp, pulley: pulleyForce(fdp, angles.pip!), flexors: fds > 0 ? fdp / fds : Infinity };
}

export type PublishedRow = {
	key: string;
	what: string;
	grip: Grip;
	published: number;
	fact: Fact;
	/** Worked out from two read forces. */
	derived: boolean;
	model: Record<ArmSet, number>;
	note?: string;
};

const both = (grip: Grip, of: 'fdp' | 'pulley' | 'flexors'): Record<ArmSet, number> => ({
	ketchum: modelAt(grip, 'ketchum')[of],
	an: modelAt(grip, 'an')[of]
});

/** Published ratios and the chain's own, side by side. */
export function publishedRows(): PublishedRow[] {
	const grips: Grip[] = ['crimp', 'slope'];
	const overTip = (part: 'fdp' | 'a2' | 'a4', what: string, of: 'fdp' | 'pulley') =>
		grips.map((grip) => ({
			key: `${part}-${grip}`,
			what,
			grip,
			published: valueOf(`${part}-${grip}`) / valueOf(`tip-${grip}`),
			fact: factOf(`${part}-${grip}`),
			derived: true,
			model: both(grip, of)
		}));
	return [
		...grips.map((grip) => ({
			key: `flexors-${grip}`,
			what: 'deep over superficial flexor (FDP:FDS)',
			grip,
			published: valueOf(`flexors-${grip}`),
			fact: factOf(`flexors-${grip}`),
			derived: false,
			model: both(grip, 'flexors'),
			note: 'the bare planar chain does not reach it'
		})),
		...overTip('fdp', 'deep flexor over fingertip force', 'fdp'),
		...overTip('a2', 'A2 pulley over fingertip force', 'pulley'),
		...overTip('a4', 'A4 pulley over fingertip force', 'pulley'),
		{
			key: 'a2-living',
			what: 'A2 pulley over fingertip force, living people',
			grip: 'crimp',
			published: valueOf('a2-to-tip-living'),
			fact: factOf('a2-to-tip-living'),
			derived: false,
			model: both('crimp', 'pulley'),
			note: 'two or three times the chain’s'
		}
	];
}

/** Crimp over slope, A2 and A4: two published figures that disagree by an order of magnitude. */
export function crimpOverSlope() {
	return (['a2', 'a4'] as const).map((pulley) => ({
		pulley: pulley.toUpperCase(),
		cadaver: valueOf(`${pulley}-crimp`) / valueOf(`${pulley}-slope`),
		cadaverFact: factOf(`${pulley}-crimp`),
		remembered: factOf(`${pulley}-crimp-over-slope`),
		model: modelAt('crimp', 'ketchum').pulley / modelAt('slope', 'ketchum').pulley
	}));
}
