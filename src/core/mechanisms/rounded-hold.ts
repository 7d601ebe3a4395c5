import { requireAllowed } from '../units/allowed-range.ts';

/**
 * Finds the slope in the middle of a patch on a rounded hold.
 * σ_mean = σ + ℓ/(2R)
 * @param tipSlope σ of the hold at the fingertip, rad, between −π/2 and π/2
 * @param patchLength ℓ of the patch along the finger, m, 0 or more
 * @param radius R of the hold, m, above 0
 * @returns mean slope, rad
 * Sign: a longer patch lies steeper, so a pad that grows with load makes a heavier hang harder.
 * Valid for: patches short against the radius; mean pressure is then low by at most some percent.
 * @throws RangeError for a field outside its range
 * Source: derived.
 * Example: 24° at the tip, 15 mm of patch, radius 60 mm: 31.16°.
 */
export function meanSlope(tipSlope: number, patchLength: number, radius: number): number {
	requireAllowed('tipSlope', tipSlope, { min: -Math.PI / 2, max: Math.PI / 2, unit: 'rad' });
	requireAllowed('patchLength', patchLength, { min: 0, unit: 'm' });
	requireAllowed('radius', radius, { above: 0, unit: 'm' });
	return tipSlope + patchLength / (2 * radius);
}
