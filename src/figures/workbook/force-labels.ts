import { shown } from '#core/workbook/statics/units.ts';
import type { DrawnForce } from '#core/workbook/statics/diagram.ts';
import type { Box } from '#plot/box.ts';
import { aroundPoint } from '#plot/label-candidates.ts';
import { placeLabels, type PlacedLabel } from '#plot/place-labels.ts';
import type { Point } from '#plot/point.ts';
import { textWidth } from '#plot/text-width.ts';
import type { BodyPicture, PlacedForce } from './free-body.ts';

export const labelSize = 14;

/** A force in words with its size. */
export function forceText({ name, vector }: DrawnForce): string {
	return `${name} ${shown(Math.hypot(...vector), 'N', 3)}`;
}

/** Places by an arrow, best first: about its tip, then along it, then farther off. */
function placesFor({ from, to }: PlacedForce, size: { width: number; height: number }): Box[] {
	const part = (share: number): Point => [
		from[0] + (to[0] - from[0]) * share,
		from[1] + (to[1] - from[1]) * share
	];
	return [4, 12, 24, 40].flatMap((gap) =>
		[1, 0.75, 0.5, 0.25].flatMap((share) => aroundPoint(part(share), size, gap))
	);
}

/** Labels of a body's forces, clear of the arrows and of each other. */
export function forceLabels(picture: BodyPicture, taken: Box[]): PlacedLabel[] {
	const height = labelSize * 1.2;
	const longestFirst = picture.forces
		.map((placed, index) => ({ placed, id: String(index), text: forceText(placed.force) }))
		.sort((a, b) => b.text.length - a.text.length);
	const outline = [...picture.outline, picture.outline[0]!];
	return placeLabels(
		longestFirst.map(({ placed, id, text }) => ({
			...{ id, text, always: true },
			candidates: placesFor(placed, { width: textWidth(text, labelSize), height })
		})),
		{
			frame: { left: 2, top: 2, right: picture.width - 2, bottom: picture.height - 2 },
			lines: picture.forces.map(({ from, to }) => [from, to]),
			faint: [outline, ...picture.lines, ...picture.others],
			boxes: taken
		}
	);
}
