import { shownValue } from './shown-value.ts';
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
	return `${name} ${shownValue(Math.hypot(...vector), 'N', 3)}`;
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

/** A force's label, with a thin line to its arrow where it stands apart from it. */
export type ForceLabel = PlacedLabel & { kind: DrawnForce['kind']; leader?: [Point, Point] };

/** The arrow's point nearest to a label, and the label's edge that faces it. */
function leaderOf(box: Box, { from, to }: PlacedForce): [Point, Point] | undefined {
	const points = [0.15, 0.3, 0.45, 0.6, 0.75, 0.9, 1].map((share): Point => [
		from[0] + (to[0] - from[0]) * share,
		from[1] + (to[1] - from[1]) * share
	]);
	const edge = ([x, y]: Point): Point => [
		Math.max(box.cx - box.width / 2, Math.min(x, box.cx + box.width / 2)),
		Math.max(box.cy - box.height / 2, Math.min(y, box.cy + box.height / 2))
	];
	const far = (point: Point) => Math.hypot(point[0] - edge(point)[0], point[1] - edge(point)[1]);
	const nearest = points.reduce((best, each) => (far(each) < far(best) ? each : best));
	return far(nearest) > 11 ? [edge(nearest), nearest] : undefined;
}

/** Labels of a body's forces, clear of the arrows and of each other. */
export function forceLabels(picture: BodyPicture, taken: Box[]): ForceLabel[] {
	const height = labelSize * 1.2;
	const longestFirst = picture.forces
		.map((placed, index) => ({ placed, id: String(index), text: forceText(placed.force) }))
		.sort((a, b) => b.text.length - a.text.length);
	const outline = [...picture.outline, picture.outline[0]!];
	const labels = placeLabels(
		longestFirst.map(({ placed, id, text }) => ({
			...{ id, text, always: true },
			candidates: placesFor(placed, { width: textWidth(text, labelSize), height })
		})),
		{
			frame: { left: 2, top: 2, right: picture.width - 2, bottom: picture.height - 2 },
			lines: picture.forces.map(({ from, to }) => [from, to]),
			// Dashed surfaces show through; a label near its arrow is worth more than an empty ground.
			faint: [outline],
			boxes: taken
		}
	);
	return labels.map((label) => {
		const placed = picture.forces[Number(label.id)]!;
		const leader = leaderOf(label.box, placed);
		return { ...label, kind: placed.force.kind, ...(leader && { leader }) };
	});
}
