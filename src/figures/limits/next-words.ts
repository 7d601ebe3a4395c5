import type { BlockedBy } from '#core/trials/caps.ts';

/** Why a load is not suggested. */
export const blockWords: Record<BlockedBy, string> = {
	adult: 'the person is not marked adult: no loads are suggested',
	pain: 'pain was noted: no loads are suggested',
	'own-maximum': 'above the own maximum',
	opened: 'above a load at which the fingers opened in this session',
	stopped: 'above a load that was stopped in this session',
	'first-trial': 'nothing was held yet: half the best guess at most, for a start',
	step: 'more than a tenth above the heaviest held to the target time',
	limit: 'more than 1 in 4 that it is over the limit',
	'opening-risk': 'the fingers would open more than 1 time in 4'
};

/** How much a trial would teach. The bounds are judgement; the measure is in nats. */
export function lessonWords(information: number): string {
	if (information >= 0.15) return 'a lot';
	return information >= 0.05 ? 'some' : 'little';
}

export const sideWords = {
	away: 'rope away from the wall',
	toward: 'rope toward the wall',
	plumb: 'rope plumb'
} as const;

/** A chance as people say it: in twenty, and never quite none or all. */
export function chanceWords(chance: number): string {
	if (chance < 0.025) return 'hardly ever';
	if (chance > 0.975) return 'nearly always';
	return `${Math.round(chance * 20) * 5} %`;
}
