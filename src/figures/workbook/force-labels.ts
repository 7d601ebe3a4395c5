import { shownValue } from './shown-value.ts';
import type { DrawnForce } from '#core/workbook/statics/diagram.ts';
import type { Box } from '#plot/box.ts';
import type { Point } from '#plot/point.ts';
import { textWidth } from '#plot/text-width.ts';
import type { BodyPicture } from './free-body.ts';
import { placesFor, quarrel, type Ground, type Place } from './label-costs.ts';

export const labelSize = 14;

/** A force in words with its size. */
export function forceText({ name, vector }: DrawnForce): string {
	return `${name} ${shownValue(Math.hypot(...vector), 'N', 3)}`;
}

/** A force's label, with a thin line to its arrow where it stands apart from it. */
export type ForceLabel = {
	id: string;
	text: string;
	box: Box;
	kind: DrawnForce['kind'];
	leader?: [Point, Point];
};

/** One place for each label: each in turn takes the one that suits the others best, a few times over. */
function settle(choices: Place[][]): Place[] {
	const taken = choices.map((places) => places[0]!);
	for (let round = 0; round < 4; round += 1) {
		let moved = false;
		choices.forEach((places, index) => {
			const costOf = (place: Place) =>
				taken.reduce(
					(sum, other, i) => (i === index ? sum : sum + quarrel(place, other)),
					place.cost
				);
			const best = places.reduce((a, b) => (costOf(b) < costOf(a) ? b : a), taken[index]!);
			if (best !== taken[index]) moved = true;
			taken[index] = best;
		});
		if (!moved) break;
	}
	return taken;
}

/** Labels of a body's forces, clear of the arrows and of each other as far as there is room. */
export function forceLabels(picture: BodyPicture, taken: Box[]): ForceLabel[] {
	const ground: Ground = {
		frame: { left: 2, top: 2, right: picture.width - 2, bottom: picture.height - 2 },
		boxes: taken,
		arrows: picture.forces.map(({ from, to }) => [from, to]),
		faint: [[...picture.outline, picture.outline[0]!], ...picture.lines]
	};
	const texts = picture.forces.map(({ force }) => forceText(force));
	const choices = picture.forces.map((placed, index) =>
		placesFor(
			placed,
			{ width: textWidth(texts[index]!, labelSize), height: labelSize * 1.2 },
			ground
		)
	);
	return settle(choices).map(({ box, leader }, index) => ({
		...{ id: String(index), text: texts[index]!, box, kind: picture.forces[index]!.force.kind },
		...(leader && { leader })
	}));
}
