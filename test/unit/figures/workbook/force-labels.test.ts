import { describe, expect, test } from 'vitest';
import { workbook } from '#core/workbook/workbook.ts';
import { bodyPictures } from '#figures/workbook/free-body.ts';
import { forceLabels } from '#figures/workbook/force-labels.ts';
import { boxesOverlap, boxInside } from '#plot/box.ts';
import { ProblemState } from '#state/workbook/problem.svelte.ts';
import { within } from '#test/within.ts';

const pictures = workbook.flatMap((family) =>
	family.setups.flatMap(({ number, title }) => {
		const problem = new ProblemState(family);
		problem.choose(number);
		const { diagram } = problem.drawing;
		return diagram ? bodyPictures(diagram).map((picture) => ({ title, picture })) : [];
	})
);

describe('free-body drawings of every arrangement', () => {
	test('there are many', () => expect(pictures.length).toBeGreaterThan(30));

	test('labels stand inside, clear of each other, one for each force', () => {
		for (const { title, picture } of pictures) {
			const labels = forceLabels(picture, []);
			expect(labels.length, title).toBe(picture.forces.length);
			const frame = { left: 0, top: 0, right: picture.width, bottom: picture.height };
			labels.forEach(({ box, text }, index) => {
				expect(boxInside(box, frame), `${title}: ${text}`).toBe(true);
				for (const other of labels.slice(index + 1))
					expect(boxesOverlap(box, other.box), `${title}: ${text}, ${other.text}`).toBe(false);
			});
		}
	});

	test('arrows are to one scale and stay on the drawing', () => {
		for (const { title, picture } of pictures)
			for (const { force, from, to } of picture.forces) {
				within(
					Math.hypot(to[0] - from[0], to[1] - from[1]),
					Math.hypot(...force.vector) * picture.scale,
					{
						absolute: 1e-6
					}
				);
				for (const [x, y] of [from, to]) {
					expect(x >= 0 && x <= picture.width, `${title}: ${force.name}`).toBe(true);
					expect(y >= 0 && y <= picture.height, `${title}: ${force.name}`).toBe(true);
				}
			}
	});
});
