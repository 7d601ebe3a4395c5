import type { NumberKey } from '#storage/codecs/setup.ts';

/** Words for the numbers that a lesson's sliders move; a mass takes the unit in use. */
export const controlWords: Partial<
	Record<NumberKey, { label: string; unit: string; mass?: true }>
> = {
	change: { label: 'Assist (−) or added load', unit: 'kg', mass: true },
	slope: { label: 'Hold slope', unit: '°' },
	mu: { label: 'Friction coefficient', unit: '' },
	rope: { label: 'Rope angle from plumb', unit: '°' },
	area: { label: 'Contact area of a finger', unit: 'mm²' },
	shear: { label: 'Shear strength of the sticking', unit: 'kPa' },
	hold: { label: 'Hold time', unit: 's' }
};
