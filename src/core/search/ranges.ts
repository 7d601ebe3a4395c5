import { degreesToRadians } from '../units/angle.ts';
import type { SearchRanges } from './types.ts';

/**
 * Where the search looks unless told otherwise. All are assumptions of this search, to be printed
 * beside its answers: they are wide on purpose, and a share of them is not a probability. They stay
 * within what the Explore page can open. Numbers are drawn evenly; equal ends stay fixed.
 */
export const searchRanges: SearchRanges = {
	slope: { from: degreesToRadians(5), to: degreesToRadians(60) },
	barelyMargin: { from: 1, to: 1.1 },
	ropeAngle: { from: degreesToRadians(-15), to: degreesToRadians(15) },
	push: { from: -150, to: 150 },
	drift: { from: -0.05, to: 0.05 },
	laws: {
		constant: { coefficient: { from: 0.2, to: 0.8 } },
		adhesion: { coefficient: { from: 0.1, to: 0.8 }, shearStrength: { from: 0, to: 60e3 } },
		powerFalling: {
			coefficient: { from: 0.2, to: 0.8 },
			referencePressure: { from: 250e3, to: 250e3 },
			exponent: { from: 0.5, to: 1 }
		},
		powerRising: {
			coefficient: { from: 0.2, to: 0.8 },
			referencePressure: { from: 250e3, to: 250e3 },
			exponent: { from: 1, to: 1.6 }
		},
		deformation: {
			coefficient: { from: 0.1, to: 0.8 },
			shearStrength: { from: 0, to: 60e3 },
			deformation: { from: 0, to: 0.3 },
			referencePressure: { from: 114e3, to: 114e3 }
		},
		film: {
			filmCoefficient: { from: 0.1, to: 0.8 },
			coefficient: { from: 0.2, to: 0.8 },
			breakthroughPressure: { from: 20e3, to: 500e3 },
			sharpness: { from: 0.5, to: 5 }
		}
	}
};

/**
 * The largest deformation part that skin usually shows, at 114 kPa, and that on rough surfaces; slick
 * holds are not known to have it.
 * Source: greenwoodTabor1958 for the form; 0.02 to 0.1 from memory.
 */
export const usualDeformation = 0.1;
