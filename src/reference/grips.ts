import type { Row } from './types.ts';

/** A way to lay the fingers on a hold: starting numbers, to be replaced by the person's own. */
export type GripRow = Row & {
	name: string;
	fingers: number;
	/** Contact patch of one finger, m², and the range worth trying. */
	padArea: number;
	padAreaRange: readonly [number, number];
	/** m: width of the patch, last joint to fingertip, bone axis above the skin contact. */
	padWidth: number;
	padLength: number;
	padDepth: number;
	/** Joint angles, rad, bent positive: middle joint and last joint. */
	pipFlexion: number;
	dipFlexion: number;
};

const degree = Math.PI / 180;
const pad = { padWidth: 0.016, padLength: 0.021, padDepth: 0.005 } as const;
const patchNote =
	'Patch, width and depth are assumptions: no table of pad areas was found. Print your own on squared paper.';

/** Grips on a sloping hold. Joint angles are published; everything about the patch is assumed. */
export const grips: readonly GripRow[] = [
	{
		key: 'half-crimp',
		name: 'Half crimp',
		fingers: 4,
		padArea: 160e-6,
		padAreaRange: [90e-6, 300e-6],
		...pad,
		pipFlexion: 70 * degree,
		dipFlexion: 0,
		source: ['fischer2024'],
		status: 'assumed',
		note: `Middle joint 70 ± 14° seen; last joint assumed straight. ${patchNote}`
	},
	{
		key: 'open-four',
		name: 'Open grip, four fingers',
		fingers: 4,
		padArea: 250e-6,
		padAreaRange: [180e-6, 400e-6],
		...pad,
		pipFlexion: 25 * degree,
		dipFlexion: 50 * degree,
		source: ['schweizerHudek2011', 'fischer2024'],
		status: 'assumed',
		note: `Angles of the slope grip (under 25° and 50°) seen. ${patchNote}`
	},
	{
		key: 'open-three',
		name: 'Open grip, three fingers',
		fingers: 3,
		padArea: 270e-6,
		padAreaRange: [180e-6, 420e-6],
		...pad,
		pipFlexion: 25 * degree,
		dipFlexion: 50 * degree,
		source: ['schweizerHudek2011', 'fischer2024'],
		status: 'assumed',
		note: `Index, middle and ring; the patch of a finger is larger because each carries more. ${patchNote}`
	}
];
