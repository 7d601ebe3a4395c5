import { fingers, type Finger } from '#reference/finger-lengths.ts';
import { sharing } from '#reference/sharing.ts';
import { type OwnSpec, readOwn, startOf, writeOwn } from '../own-numbers.ts';

const open = sharing.find(({ key }) => key === 'default-open')!.shares!;
const percent = (finger: Finger): OwnSpec => ({
	min: 0,
	max: 100,
	step: 1,
	start: Math.round(100 * open[finger])
});
const arm: OwnSpec = { min: 0, max: 16, step: 0.1, start: 0 };

/** Numbers of the finger page: degrees, millimetres and percent, as the address carries them. */
export const poseSpecs = {
	pip: { min: -10, max: 120, step: 1, start: 25 },
	dip: { min: -30, max: 80, step: 1, start: 20 },
	/** Pitch of the end segment from lying flat on the hold, tip lower positive. */
	pitch: { min: -30, max: 60, step: 1, start: 0 },
	/** How far the centre of pressure lies nearer the palm than the set-up has it. */
	shift: { min: -6, max: 10, step: 0.5, start: 0 },
	/** Share of the last joint's moment that no tendon carries. */
	passive: { min: 0, max: 0.5, step: 0.01, start: 0 },
	/** A person's own tendon arms; 0 takes the table's. */
	armDip: arm,
	armPip: arm,
	armFds: arm,
	index: percent('index'),
	middle: percent('middle'),
	ring: percent('ring'),
	little: percent('little')
} as const satisfies Record<string, OwnSpec>;

export type PoseKey = keyof typeof poseSpecs;
export type ArmSet = 'ketchum' | 'an';
export type Pose = Record<PoseKey, number> & { finger: Finger; arms: ArmSet };

export const armKeys = ['armDip', 'armPip', 'armFds'] as const;

/** The smallest arm a person may set, mm: below it tension grows without sense. */
export const leastArm = 2;

export const startPose: Pose = { ...startOf(poseSpecs), finger: 'index', arms: 'ketchum' };
export const poseKeys: readonly string[] = [...Object.keys(poseSpecs), 'finger', 'arms'];

/** Reads the page's part of an address. */
export function readPose(given: URLSearchParams): { pose: Pose; notes: string[] } {
	const { values, notes } = readOwn(poseSpecs, given);
	const pose: Pose = { ...values, finger: startPose.finger, arms: startPose.arms };
	const finger = given.get('finger');
	if (isFinger(finger)) pose.finger = finger;
	else if (finger !== null) notes.push('“finger” in the link is not known here; “index” is used.');
	const arms = given.get('arms');
	if (arms === 'ketchum' || arms === 'an') pose.arms = arms;
	else if (arms !== null) notes.push('“arms” in the link is not known here; “ketchum” is used.');
	for (const key of armKeys) if (pose[key] > 0) pose[key] = Math.max(leastArm, pose[key]);
	return { pose, notes };
}

/** The parts of an address that say a pose. */
export function writePose(pose: Pose): [string, string][] {
	const parts = writeOwn<PoseKey>(poseSpecs, pose);
	if (pose.finger !== startPose.finger) parts.push(['finger', pose.finger]);
	if (pose.arms !== startPose.arms) parts.push(['arms', pose.arms]);
	return parts;
}

/** A pose with some numbers changed, each kept within its range. */
export function posed(pose: Pose, patch: Partial<Pose>): Pose {
	const next = { ...pose, ...patch };
	for (const key of Object.keys(poseSpecs) as PoseKey[]) {
		const { min, max } = poseSpecs[key];
		next[key] = Math.min(max, Math.max(min, next[key]));
	}
	for (const key of armKeys) if (patch[key]) next[key] = Math.max(leastArm, next[key]);
	return next;
}

function isFinger(text: string | null): text is Finger {
	return (fingers as readonly string[]).includes(text ?? '');
}
