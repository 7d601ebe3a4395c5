import type { Box } from './geometry.ts';
import { handPart } from './hand-part.ts';
import { personPart } from './person-part.ts';
import type { ForcesShown, HandPart, PersonPart } from './types.ts';

export type Drawing = { width: number; height: number; person: PersonPart; hand: HandPart };

/** Below this width, px, the figure is drawn for a phone: smaller letters, a lower frame. */
const compactBelow = 460;
const narrowest = 340;

/** Lays out both parts side by side in a figure of that width (and height, else a fitting one), px. */
export function layoutForces(shown: ForcesShown, width: number, height?: number): Drawing {
	const full = Math.max(narrowest, width);
	const compact = full < compactBelow;
	const fontSize = compact ? 11 : 13;
	const tall = Math.max(
		compact ? 250 : 300,
		height ?? (compact ? 270 : Math.min(400, full * 0.58))
	);
	const split = Math.round(full * 0.47);
	const left: Box = { x: 0, y: 0, width: split, height: tall };
	const right: Box = { x: split, y: 0, width: full - split, height: tall };
	return {
		width: full,
		height: tall,
		person: personPart(shown, left, fontSize),
		hand: handPart(shown, right, fontSize)
	};
}
