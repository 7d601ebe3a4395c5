import { degreesToRadians } from '#core/units/angle.ts';

/** What a dragged handle changes, in SI. */
export type ChainPatch = Partial<{
	contactDistance: number;
	pitch: number;
	dipFlexion: number;
	pipFlexion: number;
	fdpDip: number;
	fdpPip: number;
	fdsPip: number;
}>;

export type ChainRange = { least: number; most: number };
/** Where each may go: rad and m. */
export type ChainRanges = Record<keyof Required<ChainPatch>, ChainRange>;

const degree = degreesToRadians(1);

/** A range with its keyboard steps: a degree or half a millimetre, five times that with Page keys. */
export function withSteps(key: keyof ChainPatch, range: ChainRange) {
	const angle = key === 'pitch' || key === 'dipFlexion' || key === 'pipFlexion';
	const arm = key === 'fdpDip' || key === 'fdpPip' || key === 'fdsPip';
	const step = angle ? degree : arm ? 1e-4 : 5e-4;
	return { ...range, step, leap: 5 * step };
}

/** An angle brought within a half turn of another. */
export function nearTo(angle: number, other: number): number {
	return angle - 2 * Math.PI * Math.round((angle - other) / (2 * Math.PI));
}
