import { firstShare, largestStep, rounding } from '../cap-values.ts';

/** What the caps need to know of a trial: the public trial's fields that bear on them. */
export type CapTrial = {
	/** Net load, kg. */
	load: number;
	outcome: 'held' | 'slipped' | 'opened' | 'stopped' | 'unknown';
	/** Seconds held. */
	seconds?: number;
	reason?: 'pain' | 'other';
	session?: number;
};

/** Which rule blocks a load. */
export type CapReason =
	'adult' | 'pain' | 'own-maximum' | 'opened' | 'stopped' | 'step' | 'first-trial';

/** What the caps need to know of the person and the session. Loads in kg, times in s. */
export type CapRules = {
	ownMaximum: number;
	bestGuess: number;
	adult: boolean;
	/** Time a hang must last to count as held; left out, every trial marked held counts. */
	targetSeconds?: number;
	/** The present session; left out, the session of the last trial. */
	session?: number;
};

/**
 * Says how heavy the next hang in this grip may be at most, and which rule says so.
 *
 * The lowest of: the person's own maximum; 1.10 × the heaviest load held to the target time
 * in this grip (with nothing held yet, half the best guess); the lightest load that opened or was
 * stopped in this session. A slip raises no cap. Pain in this session, or a person not marked
 * adult, gives 0: no hang is suggested. One half and 1.10 are judgement, not measurement.
 *
 * @param trials trials with this grip, oldest first; left-out ones and warm-ups count too
 * @param rules own maximum and best guess in kg, both above 0; adult; target time in s; session
 * @returns limit in kg (0: none) and the reason; of equal caps the first in the order above
 * @throws RangeError when the own maximum or the best guess is not above 0
 * Source: derived
 * Example: one hang held at 40 kg, own maximum 90, best guess 80 → { limit: 44, reason: 'step' }
 */
export function loadCap(
	trials: readonly CapTrial[],
	rules: CapRules
): { limit: number; reason: CapReason } {
	for (const field of ['ownMaximum', 'bestGuess'] as const) {
		if (!(rules[field] > 0)) {
			throw new RangeError(`${field} is ${rules[field]}; it must be above 0 kg`);
		}
	}
	if (!rules.adult) return { limit: 0, reason: 'adult' };
	const session = rules.session ?? trials.at(-1)?.session;
	const here = trials.filter((trial) => trial.session === session);
	if (here.some((trial) => trial.reason === 'pain')) return { limit: 0, reason: 'pain' };

	const caps: { limit: number; reason: CapReason }[] = [
		{ limit: rules.ownMaximum, reason: 'own-maximum' }
	];
	for (const outcome of ['opened', 'stopped'] as const) {
		const loads = here.filter((trial) => trial.outcome === outcome).map(({ load }) => load);
		if (loads.length > 0) caps.push({ limit: Math.min(...loads), reason: outcome });
	}
	const held = trials.filter((trial) => isHeld(trial, rules.targetSeconds)).map((t) => t.load);
	caps.push(
		held.length > 0
			? { limit: largestStep * Math.max(...held), reason: 'step' }
			: { limit: firstShare * rules.bestGuess, reason: 'first-trial' }
	);
	return caps.reduce((lowest, cap) => (cap.limit < lowest.limit ? cap : lowest));
}

/**
 * Says which rule blocks a load, or null when none does.
 *
 * @param load net load asked for, kg, above 0
 * @param cap from `loadCap`, kg
 * @returns the cap's rule where the load lies above it, or null
 * Source: derived
 * Example: 45 kg against { limit: 44, reason: 'step' } → 'step'
 */
export function overCap(
	load: number,
	{ limit, reason }: { limit: number; reason: CapReason }
): CapReason | null {
	return load <= limit * rounding ? null : reason;
}

function isHeld(trial: CapTrial, targetSeconds: number | undefined): boolean {
	if (trial.outcome !== 'held') return false;
	return (
		trial.seconds === undefined || targetSeconds === undefined || trial.seconds >= targetSeconds
	);
}
