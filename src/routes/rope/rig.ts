import type { PulleyRig } from '#core/mechanics/settled-rope.ts';
import type { OwnSpec } from '../own-numbers.ts';

/** Numbers of the rope page, metres, but for the two pulls, kg: as the address carries them. */
export const rigSpecs = {
	up: { min: 0, max: 4, step: 0.05, start: 0.6 },
	out: { min: -1, max: 1.5, step: 0.01, start: 0.3 },
	side: { min: -1, max: 1, step: 0.01, start: 0 },
	tie: { min: 0.7, max: 1.5, step: 0.01, start: 1.09 },
	middle: { min: 0.8, max: 1.4, step: 0.01, start: 1.09 },
	raise: { min: 0.5, max: 100, step: 0.1, start: 12 },
	lower: { min: 0.1, max: 100, step: 0.1, start: 8.3 }
} as const satisfies Record<string, OwnSpec>;

export type RigKey = keyof typeof rigSpecs;
export type RigNumbers = Record<RigKey, number>;

export function rigOf({ up, out, side, tie, middle }: RigNumbers): PulleyRig {
	return { height: up, outward: out, sideways: side, tieIn: tie, centre: middle };
}
