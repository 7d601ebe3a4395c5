import type { Row } from './types.ts';

/** Joint angles of a grip, rad, bent positive; null where none was found. */
export type JointAngleRow = Row & {
	grip: string;
	pip: number | null;
	pipSpread?: number;
	pipRange?: readonly [number, number];
	dip: number | null;
	dipRange?: readonly [number, number];
	dipInWords?: string;
};

const degree = Math.PI / 180;

/** Published angles of the middle (PIP) and last (DIP) joint. Knuckle angles were not found. */
export const jointAngles: readonly JointAngleRow[] = [
	{
		key: 'crimp-moving',
		grip: 'crimp',
		pip: 87 * degree,
		pipSpread: 12 * degree,
		dip: null,
		dipInWords: 'bent back past straight',
		source: ['fischer2024'],
		status: 'seen',
		note: 'Eleven moving climbers.'
	},
	{
		key: 'crimp',
		grip: 'crimp',
		pip: 90 * degree,
		pipRange: [90 * degree, 100 * degree],
		dip: -15 * degree,
		dipRange: [-15 * degree, -10 * degree],
		dipInWords: 'bent back as far as it goes',
		source: ['schweizer2001', 'diagnostics2020'],
		status: 'seen'
	},
	{
		key: 'half-crimp',
		grip: 'half crimp',
		pip: 70 * degree,
		pipSpread: 14 * degree,
		dip: 0,
		dipInWords: 'about straight (assumed)',
		source: ['fischer2024'],
		status: 'seen'
	},
	{
		key: 'open-hand',
		grip: 'open hand',
		pip: 39 * degree,
		pipSpread: 27 * degree,
		dip: null,
		dipInWords: 'bent',
		source: ['fischer2024'],
		status: 'seen',
		note: 'Very spread: use of the little finger splits it.'
	},
	{
		key: 'slope',
		grip: 'slope',
		pip: 25 * degree,
		pipRange: [0, 25 * degree],
		dip: 50 * degree,
		source: ['schweizerHudek2011'],
		status: 'seen',
		note: 'Middle joint “less than 25°”.'
	}
];
