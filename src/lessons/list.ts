import { lessonGivens } from '#seeds/lessons.ts';

/** What the clinic's lists need of a lesson, without its words and figures. */
export type ListedLesson = {
	key: keyof typeof lessonGivens;
	letter: string;
	title: string;
	minutes: number;
	/** Key of its row in the reference's misconceptions. */
	misconception: string;
};

const listed = (
	key: ListedLesson['key'],
	letter: string,
	title: string,
	misconception: string
): ListedLesson => ({ key, letter, title, minutes: lessonGivens[key].minutes, misconception });

/** The lessons in the order they are taught. */
export const lessonList: readonly ListedLesson[] = [
	listed('cancels', 'a', 'Load cancels', 'heavier-slides'),
	listed('rope', 'b', 'Not quite plumb', 'normal-is-weight'),
	listed('pressure', 'c', 'Pressure and patch', 'more-area'),
	listed('window', 'd', 'The holding window', 'always-at-limit'),
	listed('fair', 'e', 'A fair test', 'few-goes')
];

/** The list's line for a lesson. */
export const listedLesson = (key: ListedLesson['key']): ListedLesson =>
	lessonList.find((lesson) => lesson.key === key)!;

/** The one taught after it, if any. */
export const lessonAfter = (key: string): ListedLesson | undefined =>
	lessonList[lessonList.findIndex((lesson) => lesson.key === key) + 1];
