import type { CapReason } from '#core/trials/plan/caps.ts';

/** Why a load is not suggested, in a few words for people. */
export const capWords: Record<CapReason, string> = {
	adult: 'not marked adult: no loads are suggested',
	pain: 'pain was noted today: no more loads are suggested',
	'own-maximum': 'the own maximum set in the plan',
	opened: 'the fingers opened at this load today',
	stopped: 'a hang was stopped at this load today',
	step: 'a tenth above the heaviest held so far',
	'first-trial': 'half the best guess, as nothing was held yet'
};
