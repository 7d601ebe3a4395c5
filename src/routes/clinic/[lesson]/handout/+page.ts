import { error } from '@sveltejs/kit';
import { lessonList } from '#lessons/list.ts';
import { loadDrawer, loadLesson } from '#lessons/load.ts';
import { lessonSetup } from '#state/lesson/lesson-setup.ts';
import { computeResults } from '#state/setup/results.ts';
import { benchOf } from '../../parts/lesson-view.svelte.ts';

export const entries = () => lessonList.map(({ key }) => ({ lesson: key }));

export async function load({ params }: { params: { lesson: string } }) {
	const lesson = await loadLesson(params.lesson);
	if (!lesson) error(404, 'There is no lesson of that name.');
	const bench = benchOf(computeResults(lessonSetup(lesson.fields)), 'kg');
	return { lesson, drawer: await loadDrawer(lesson.picture(lesson.shown, bench).kind) };
}
