import type { Box, Point, Segment } from './geometry.ts';
import {
	placeLabels,
	type LabelRequest,
	type PlacedLabel,
	type Surroundings
} from './place-labels.ts';
import { linesBox, type Lines } from './text.ts';
import type { Label, Note } from './types.ts';

/** A label that has no place yet. */
export type Draft = Omit<Label, 'box' | 'leader'> & { own: Segment };

export function labelRequest({ id, own, lines }: Draft, fontSize: number): LabelRequest {
	return { id, own, ...linesBox(lines, fontSize) };
}

/** Finds the places of all labels of a part; where they are too many, all in their brief form. */
export function placed(drafts: Draft[], fontSize: number, around: Surroundings): Label[] {
	const full = placeLabels(
		drafts.map((draft) => labelRequest(draft, fontSize)),
		around
	);
	if (full.clear) return withPlaces(drafts, full.places);
	const brief = drafts.map((draft) => ({
		...draft,
		lines: draft.lines.map((runs) => runs.filter((run) => !run.soft))
	}));
	const places = placeLabels(
		brief.map((draft) => labelRequest(draft, fontSize)),
		around,
		6
	);
	return withPlaces(brief, places.places);
}

function withPlaces(drafts: Draft[], places: PlacedLabel[]): Label[] {
	return drafts.map(({ id, kind, lines }, i) => {
		const { box, leader } = places[i]!;
		return { id, kind, lines, box, ...(leader ? { leader } : {}) };
	});
}

/** A text at a fixed place, given by its upper left corner, or upper right one. */
export function note(
	lines: Lines,
	at: Point,
	fontSize: number,
	side: 'left' | 'right' = 'left'
): Note {
	const size = linesBox(lines, fontSize);
	const box: Box = { x: side === 'left' ? at.x : at.x - size.width, y: at.y, ...size };
	return { lines, box };
}
