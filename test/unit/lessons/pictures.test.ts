import { expect, test } from 'vitest';
import { lessons } from '#lessons/index.ts';
import { computeResults } from '#state/setup/results.ts';
import { lessonSetup } from '#state/lesson/lesson-setup.ts';
import { within } from '#test/within.ts';
import { benchOf } from '../../../src/routes/clinic/parts/lesson-view.svelte.ts';

const margins = lessons.flatMap((lesson) => {
	const bench = benchOf(computeResults(lessonSetup(lesson.fields)), 'kg');
	return lesson.pictures.flatMap(({ key }) => {
		const picture = lesson.picture(key, bench);
		return picture.kind === 'margin' ? [{ lesson: lesson.key, key, picture, bench }] : [];
	});
});

test.each(margins)(
	'$lesson, $key: the marks lie on the lines they belong to',
	({ picture, bench }) => {
		const { netMass, slipMargin, strengthMargin } = picture.point ?? {
			...bench.contact,
			netMass: bench.netMass
		};
		expect(picture.series.length).toBeGreaterThan(0);
		for (const { kind, points } of picture.series) {
			if (kind === 'other') continue;
			const after = points.findIndex((point) => point.netMass >= netMass);
			const [a, b] = [points[Math.max(0, after - 1)]!, points[after]!];
			const share = a === b ? 0 : (netMass - a.netMass) / (b.netMass - a.netMass);
			// Straight between two points of the line.
			const drawn = a.margin + share * (b.margin - a.margin);
			within(kind === 'slip' ? slipMargin : strengthMargin, drawn, { relative: 2e-3 });
		}
	}
);
