import { error } from '@sveltejs/kit';
import { lessonOf, lessons } from '#lessons/index.ts';

export const entries = () => lessons.map(({ key }) => ({ lesson: key }));

export function load({ params }: { params: { lesson: string } }) {
	if (!lessonOf(params.lesson)) error(404, 'There is no lesson of that name.');
	return { key: params.lesson };
}
