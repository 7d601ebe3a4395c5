import { formatNumber } from '#core/units/format-number.ts';
import { massIn, type MassUnit } from '#core/units/mass-text.ts';
import { outcomeWords } from '#figures/trials/outcome-words.ts';
import type { Trial } from '#storage/codecs/notebook/records.ts';

/** A mass as it was read: what was written down is shown in full, to a hundredth. */
export function readMass(kilograms: number, unit: MassUnit): string {
	return `${formatNumber(massIn(kilograms, unit), { digits: 5 })}\u00a0${unit}`;
}

/** Where the rope leads, in a word or two. */
export function ropeText({
	ropeSide,
	ropeDegrees
}: Pick<Trial, 'ropeSide' | 'ropeDegrees'>): string {
	const angle = ropeDegrees ? ` ${formatNumber(ropeDegrees)}°` : '';
	if (ropeSide === null) return angle ? `leans${angle}` : '';
	return ropeSide + angle;
}

export function secondsText(seconds: number | null): string {
	return seconds === null ? '' : `${formatNumber(seconds)}\u00a0s`;
}

/** A trial in one sentence, for those who hear the sheet. */
export function trialSentence(name: string, trial: Trial, unit: MassUnit): string {
	const rope = ropeText(trial);
	return [
		`${name}: ${readMass(trial.loadKg, unit)}`,
		rope && `rope ${rope}`,
		outcomeWords[trial.outcome],
		secondsText(trial.seconds),
		trial.leftOut !== null && `left out: ${trial.leftOut}`
	]
		.filter(Boolean)
		.join(', ');
}

export const reachWords: Record<Trial['reached'], string> = {
	scale: 'read on the scale',
	body: 'body mass alone',
	plates: 'plates added',
	counterweight: 'counterweight',
	both: 'plates and counterweight',
	unknown: 'not said'
};

export const reasonWords: Record<NonNullable<Trial['stopReason']>, string> = {
	pain: 'pain',
	opening: 'about to open',
	slipping: 'about to slip',
	other: 'other'
};

export const kindWords: Record<Trial['kind'], string> = {
	'warm-up': 'warm-up',
	check: 'check load',
	test: 'trial'
};

export const sideOptions = [
	{ value: 'away', label: 'away from wall' },
	{ value: 'plumb', label: 'plumb' },
	{ value: 'toward', label: 'toward wall' }
] as const;
