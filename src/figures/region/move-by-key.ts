import { clamp } from '#plot/clamp.ts';
import type { RegionPoint } from './types.ts';

export type MoveRanges = {
	value: { from: number; to: number; step: number; bigStep: number };
	netMass: { from: number; to: number; step: number; bigStep: number };
};

/**
 * Where a key takes the point, or undefined when the key means nothing here. Arrows move along
 * their own direction whichever of the two sliders has the focus; page keys, Home and End move
 * the one that has it.
 */
export function moveByKey(
	key: string,
	focused: 'value' | 'netMass',
	point: RegionPoint,
	ranges: MoveRanges
): Partial<RegionPoint> | undefined {
	const by = (what: 'value' | 'netMass', change: number): Partial<RegionPoint> => {
		const { from, to } = ranges[what];
		return { [what]: clamp(point[what] + change, Math.min(from, to), Math.max(from, to)) };
	};
	const { from, to, bigStep } = ranges[focused];
	switch (key) {
		case 'ArrowRight':
			return by('value', ranges.value.step);
		case 'ArrowLeft':
			return by('value', -ranges.value.step);
		case 'ArrowUp':
			return by('netMass', ranges.netMass.step);
		case 'ArrowDown':
			return by('netMass', -ranges.netMass.step);
		case 'PageUp':
			return by(focused, bigStep);
		case 'PageDown':
			return by(focused, -bigStep);
		case 'Home':
			return { [focused]: Math.min(from, to) };
		case 'End':
			return { [focused]: Math.max(from, to) };
		default:
			return undefined;
	}
}
