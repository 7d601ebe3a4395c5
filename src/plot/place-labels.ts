import { boxesOverlap, boxInside, lineEntersBox, type Box, type Frame } from './box.ts';
import type { Point } from './point.ts';

export type LabelRequest = {
	id: string;
	text: string;
	/** Where it could stand, best first. */
	candidates: readonly Box[];
	/** Drawn come what may: it then keeps clear of labels before lines, and never leaves the frame. */
	always?: boolean;
};

export type PlacedLabel = { id: string; text: string; box: Box };

/** Room left free round a label, in the drawing's units. */
const breath = 2;

function widened(box: Box): Box {
	return { ...box, width: box.width + 2 * breath, height: box.height + breath };
}

function pulledInside(box: Box, frame: Frame): Box {
	const [w, h] = [box.width / 2, box.height / 2];
	return {
		...box,
		angle: 0,
		cx: Math.max(Math.min(box.cx, frame.right - w), frame.left + w),
		cy: Math.max(Math.min(box.cy, frame.bottom - h), frame.top + h)
	};
}

/**
 * Gives labels their places, in the order asked: each takes its best candidate that lies within
 * the frame and clear of the lines, the given obstacles and every label placed before it; one clear
 * of the faint lines too is taken first. One that finds none is left out, unless it must always stand.
 */
export function placeLabels(
	requests: readonly LabelRequest[],
	taken: {
		frame: Frame;
		lines?: readonly (readonly Point[])[];
		/** Lines that a label may cross where it must. */
		faint?: readonly (readonly Point[])[];
		boxes?: readonly Box[];
	}
): PlacedLabel[] {
	const { frame, lines = [], faint = [], boxes = [] } = taken;
	const placed: PlacedLabel[] = [];
	for (const { id, text, candidates, always } of requests) {
		const clearOfBoxes = (box: Box) =>
			boxInside(box, frame) &&
			!boxes.some((other) => boxesOverlap(widened(box), other)) &&
			!placed.some((label) => boxesOverlap(widened(box), label.box));
		const clearOf = (some: typeof lines, box: Box) =>
			!some.some((line) => lineEntersBox(line, widened(box)));
		let box: Box | undefined;
		for (const candidate of candidates) {
			if (!clearOfBoxes(candidate) || !clearOf(lines, candidate)) continue;
			const best = clearOf(faint, candidate);
			if (best || !box) box = candidate;
			if (best) break;
		}
		if (!box && always) {
			const inside = candidates.map((candidate) => pulledInside(candidate, frame));
			box = inside.find(clearOfBoxes) ?? inside[0];
		}
		if (box) placed.push({ id, text, box });
	}
	return placed;
}
