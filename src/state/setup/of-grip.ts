import { squareMetresToSquareMillimetres } from '#core/units/area.ts';
import { metresToMillimetres } from '#core/units/length.ts';
import type { GripRow } from '#reference/grips.ts';
import type { Setup } from '#storage/codecs/setup.ts';

/** The set-up fields that a grip starts from; strength stays as it was measured. */
export function setupOfGrip(grip: GripRow): Partial<Setup> {
	const millimetres = (metres: number) => Number(metresToMillimetres(metres).toPrecision(6));
	return {
		fingers: grip.fingers,
		patch: 'fixed',
		area: Number(squareMetresToSquareMillimetres(grip.padArea).toPrecision(6)),
		padWidth: millimetres(grip.padWidth),
		padLength: millimetres(grip.padLength),
		padDepth: millimetres(grip.padDepth)
	};
}
