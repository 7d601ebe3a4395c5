import type { Citation } from '../types.ts';

/** Units and the constants of measurement. */
export const unitsCitations = {
	nistSp811: {
		authors: 'Thompson A, Taylor BN',
		year: 2008,
		title: 'Guide for the Use of the International System of Units (SI)',
		where: 'NIST Special Publication 811',
		how: 'memory'
	}
} as const satisfies Record<string, Citation>;
