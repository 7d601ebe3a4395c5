import { error } from '@sveltejs/kit';
import { lessonList } from '#lessons/list.ts';
import { loadLesson } from '#lessons/load.ts';

export const entries = () => lessonList.map(({ key }) => ({ lesson: key }));

export async function load({ params }: { params: { lesson: string } }) {
	const lesson = await loadLesson(params.lesson);
	if (!lesson) error(404, 'There is no lesson of that name.');
	return { lesson };
}
