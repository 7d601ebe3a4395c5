import type { Reading, Status } from '#reference/types.ts';

export const marks: Record<Status, string> = {
	seen: 'read in its source',
	derived: 'worked out from read values',
	memory: 'from memory',
	assumed: 'assumed, not measured',
	'common practice': 'common practice, no source'
};

export const readings: Record<Reading, string> = {
	seen: 'read',
	'abstract seen': 'abstract or excerpt read',
	'seen second-hand': 'read through another source',
	'title seen': 'title seen only',
	memory: 'from memory'
};
