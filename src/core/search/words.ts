/** Why a story cannot tell what was seen, in words for the screen; keys stay, words may change. */
export const reasonText = {
	ratioNotRising:
		'A ratio that does not rise with pressure cannot give a larger slip margin to the heavier hang, unless something else pushes outward.',
	ratioRising:
		'A ratio that rises with pressure cannot let the go with the lower pressure hold while the one with the higher pressure slips.',
	orderDisagrees:
		'A drift goes one way only, and this law would need it to go up between some goes and down between others.',
	strengthDisagrees:
		'The fingers opened at a load that they held, or nearly held, in another go: one strength cannot do both.',
	noSlope: 'No slope in the range lets the barely held go come out as barely held.',
	noneFound:
		'None of the set-ups that were tried meets every go, and moving the closest one step by step did not help. That is no proof: a set-up outside the ranges, or between those tried, may.'
} as const;
export type ReasonKey = keyof typeof reasonText;

/** What has to be said beside a story that can tell it. */
export const noteText = {
	notProbable:
		'That a story can tell it does not make it likely. The share says how finely it must be tuned within the stated ranges; it is not a probability.',
	risingUnpublished:
		'No published body-weight hang shows a friction ratio that rises with load. Most published work says harder or no change.',
	deformationTooLarge:
		'Every set-up found needs a deformation part above 0.1 at 114 kPa. Slick holds are not known to have one; even rough surfaces seldom do.',
	pushFromOutside:
		'Something must push the hands outward (positive) or inward (negative) as steadily in the heavy hangs as in the light ones: hips, feet, or a counterweight left on.',
	driftInOrder:
		'The drift needs the goes to have been done in this order. Other orders would have come out differently.',
	foundByRefining:
		'None of the drawn set-ups fits. This one was reached by moving the closest of them step by step: it takes fine tuning.',
	fewFound: 'Fewer than ten set-ups were found: another seed may find none.'
} as const;
export type NoteKey = keyof typeof noteText;
