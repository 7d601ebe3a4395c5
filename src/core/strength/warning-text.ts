/** What the model has to say about a hang, in words for the screen; the keys stay, words may change. */
export const warningText = {
	leadsOff:
		'The pull leads off the hold: nothing presses the fingers onto it. Make the hold less steep, or bring the rope nearer to plumb.',
	noFrictionNeeded:
		'No friction is needed here: the pull is square to the hold or leads into it, which supposes a stop behind the fingers. Check the slope, the rope angle and the push.',
	patchLargerThanPad:
		'The contact area is larger than the fingertip pad, so the pad is used instead. Enter a smaller area, or measure a larger pad.',
	fingersPressedShut:
		'The force presses the end of the finger shut instead of opening it, so this model sets no strength limit here.',
	ropeAngleAtHighAssist:
		'More than 40 % of the hanging mass is on the rope. Under a fixed pulley a leaning rope comes nearer to plumb as the assist grows: measure its angle at this load.',
	inwardRope:
		'The rope leads toward the wall: this supposes that nothing of the body touches the wall.',
	tightRadius:
		'The hold is rounded more tightly than 20 mm: the even pressure supposed over the patch is a rough guess there.'
} as const;

/** Names a warning independently of its wording. */
export type WarningCode = keyof typeof warningText;
