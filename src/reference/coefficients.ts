import { holdCoefficients } from './coefficients/holds.ts';
import { materialCoefficients } from './coefficients/materials.ts';

/**
 * Friction ratios of skin on materials. A condition, not a constant: show each only with its state,
 * load and source. Nearly all were taken at 0.1 to 20 N a finger; a two-hand hang is 70 to 100 N.
 */
export const coefficients = [...holdCoefficients, ...materialCoefficients];
