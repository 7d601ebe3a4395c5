import type { Citation } from '../types.ts';

/** Units and the constants of measurement. */
export const unitsCitations = {
	w3cOrientation: {
		authors: 'World Wide Web Consortium',
		year: null,
		title: 'DeviceOrientation Event Specification',
		where: 'w3.org/TR/orientation-event',
		how: 'memory',
		note: 'Axes and order of turns from memory.'
	},
	nistSp811: {
		authors: 'Thompson A, Taylor BN',
		year: 2008,
		title: 'Guide for the Use of the International System of Units (SI)',
		where: 'NIST Special Publication 811',
		how: 'memory'
	}
} as const satisfies Record<string, Citation>;
