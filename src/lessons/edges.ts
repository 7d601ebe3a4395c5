import { holdingWindow } from '#core/region/holding-window.ts';
import type { Hang, Interval } from '#core/types.ts';
import { kilograms, say } from './say.ts';
import type { Says, Writing } from './types.ts';

/** The one window of a set-up that has one; a lesson with another window would tell a false story. */
export function onlyWindow(hang: Hang, range: Writing['range']): Interval {
	const windows = holdingWindow(hang, range);
	const [window] = windows;
	if (!window || windows.length > 1) {
		throw new RangeError(
			`window must be one stretch of load for this lesson, but is ${windows.length}`
		);
	}
	return window;
}

/** "loads from 60 kg to 90 kg hold", or what is left of it where the range ends first. */
export function windowSays({ from, to, lowerLimit, upperLimit }: Interval, o: Writing): Says {
	const low = kilograms(from, o.mass, 'window.from');
	const high = kilograms(to, o.mass, 'window.to');
	if (lowerLimit === 'range' && upperLimit === 'range') return say`every load here holds`;
	if (lowerLimit === 'range') return say`every load up to ${high} holds`;
	if (upperLimit === 'range') return say`every load from ${low} holds`;
	return say`loads from ${low} to ${high} hold`;
}
