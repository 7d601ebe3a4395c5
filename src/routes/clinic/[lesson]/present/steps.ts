import type { Lesson, LessonText } from '#lessons/types.ts';

/** One screen of the presenter view. */
export type Step =
	| { kind: 'figure'; picture: string }
	| { kind: 'ask' }
	| { kind: 'mark' | 'compare' }
	| { kind: 'reveal'; picture: string; label: string; at: number }
	| { kind: 'says' | 'tempting' | 'formulas' | 'try' | 'unknown' | 'end' };

/** The screens of a lesson, in order: figures first. */
export function stepsOf(lesson: Lesson, text: LessonText): Step[] {
	const shown = [
		...lesson.pictures.filter(({ key }) => key === lesson.shown),
		...lesson.pictures.filter(({ key }) => key !== lesson.shown)
	];
	return [
		{ kind: 'figure', picture: 'forces' },
		{ kind: 'ask' },
		...(text.mark ? [{ kind: 'mark' } as const] : []),
		...(text.mark ? [{ kind: 'compare' } as const] : []),
		...shown.map(({ key, label }, at) => ({ kind: 'reveal' as const, picture: key, label, at })),
		{ kind: 'says' },
		{ kind: 'tempting' },
		{ kind: 'formulas' },
		{ kind: 'try' },
		{ kind: 'unknown' },
		{ kind: 'end' }
	];
}

/** Where the reveal starts. */
export const revealAt = (steps: readonly Step[]) =>
	steps.findIndex(({ kind }) => kind === 'reveal' || kind === 'compare');

export type Command =
	'next' | 'back' | 'reveal' | 'screen' | 'leave' | { vote: number; by: 1 | -1 };

/**
 * What a key asks of the presenter view. A clicker's page keys always turn the page; letters, digits
 * and arrows belong to a field or slider that has the focus.
 */
export function commandOf(
	{ key, code, shiftKey }: Pick<KeyboardEvent, 'key' | 'code' | 'shiftKey'>,
	inField: boolean
): Command | undefined {
	if (key === 'PageDown') return 'next';
	if (key === 'PageUp') return 'back';
	if (inField) return undefined;
	if (key === 'ArrowRight') return 'next';
	if (key === 'ArrowLeft') return 'back';
	if (key.toLowerCase() === 'r') return 'reveal';
	if (key.toLowerCase() === 'f') return 'screen';
	if (key === 'Escape') return 'leave';
	const digit = /^(?:Digit|Numpad)([1-9])$/.exec(code);
	return digit ? { vote: Number(digit[1]) - 1, by: shiftKey ? -1 : 1 } : undefined;
}
