import type { LeftOut } from '#core/trials/stories-in-play.ts';
import type { Grade, StoryRanges } from '#core/trials/story-ranges.ts';
import type { Story } from '#core/trials/trial.ts';

/** The stories in a few words. A rope that leans acts by its geometry in all of those that name it. */
export const storyWords: Record<Story, string> = {
	constant: 'grip the same at any load',
	rises: 'grips better when heavier',
	falls: 'grips worse when heavier',
	rope: 'the rope’s lean is enough',
	'rises+rope': 'rope’s lean, and better when heavier',
	'falls+rope': 'rope’s lean, and worse when heavier'
};

export const gradeWords: Record<Grade, string> = {
	'cannot-tell': 'can’t tell yet',
	leaning: 'leaning',
	'fairly-clear': 'fairly clear',
	clear: 'clear – in this set-up, on this day, if the list of stories is complete'
};

/** What the rope’s share means and does not mean. */
export const ropeNote =
	'The rope’s geometry always acts where the rope leans. “The rope’s lean is enough” says that these trials need nothing beside it; it does not rule out that load matters too.';

/** Whether the picture of stories may be read at all, rather than drawn in grey. */
export function readable(ranges: StoryRanges): boolean {
	return (
		ranges.ranges.length > 1 &&
		ranges.settled &&
		!ranges.guessDecides &&
		ranges.grade !== 'cannot-tell'
	);
}

/** Which story fits, in one or two sentences. */
export function verdictWords(ranges: StoryRanges): string {
	if (ranges.ranges.length < 2)
		return 'Can’t tell yet: these trials differ neither in load nor in rope side, so no story can be told from another.';
	if (ranges.guessDecides)
		return 'Can’t tell yet: the answer depends on the starting guess. Treat it as undecided.';
	if (!ranges.settled || ranges.grade === 'cannot-tell')
		return `Can’t tell yet. “${capital(storyWords[ranges.best])}” is ahead, but not by enough.`;
	const grade = gradeWords[ranges.grade];
	return `${capital(grade)}: ${storyWords[ranges.best]}.`;
}

/** Why stories are left out, one sentence a reason. */
export function leftOutWords(leftOut: readonly LeftOut[]): string[] {
	const reasons = new Set(leftOut.map(({ reason }) => reason));
	return [
		...(reasons.has('loads-equal')
			? ['Every load was the same: stories in which load matters are left out.']
			: []),
		...(reasons.has('rope-never-moved')
			? [
					'The rope was never moved: stories about the rope are left out, and a rope that leans could look just like a load effect.'
				]
			: [])
	];
}

/** What the trials say of warming up or tiring, from the share of the stories that have it in them. */
export function orderShareOf({ ranges }: StoryRanges): number {
	return ranges.reduce((sum, { weight, orderShare }) => sum + weight * orderShare, 0);
}

export function orderWords(share: number): string {
	if (share > 0.9) return 'Later hangs went differently: warming up or tiring is part of it.';
	if (share < 0.25) return 'No sign that later hangs went differently.';
	return 'Whether later hangs went differently: can’t tell yet.';
}

const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);
