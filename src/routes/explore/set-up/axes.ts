import type { AxisKind } from '#storage/codecs/setup.ts';

/** What can lie across the holding region: its words, and how its SI values are shown. */
export const axes: Record<
	AxisKind,
	{ label: string; unit: string; perUnit: number; step: number; bigStep: number }
> = {
	padArea: { label: 'Contact area', unit: 'mm²', perUnit: 1e6, step: 5e-6, bigStep: 25e-6 },
	slope: {
		label: 'Hold slope',
		unit: '°',
		perUnit: 180 / Math.PI,
		step: (0.5 * Math.PI) / 180,
		bigStep: (5 * Math.PI) / 180
	},
	coefficient: { label: 'Friction coefficient', unit: '', perUnit: 1, step: 0.01, bigStep: 0.1 },
	ropeAngle: {
		label: 'Rope angle',
		unit: '°',
		perUnit: 180 / Math.PI,
		step: (0.5 * Math.PI) / 180,
		bigStep: (5 * Math.PI) / 180
	},
	holdTime: { label: 'Hold time', unit: 's', perUnit: 1, step: 1, bigStep: 5 }
};
