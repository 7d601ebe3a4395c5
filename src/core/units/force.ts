import { standardGravity } from './gravity.ts';

/**
 * Gives the weight of a mass at standard gravity.
 * N = kg · 9.80665
 * @param kilograms mass, kg, any number
 * @returns force, N
 * Source: nistSp811, appendix B.
 * Example: kilogramsToNewtons(10) is 98.0665.
 */
export function kilogramsToNewtons(kilograms: number): number {
	return kilograms * standardGravity;
}

/**
 * Gives the mass whose weight at standard gravity is a force: what a scale in kilograms reads.
 * kg = N / 9.80665
 * @param newtons force, N, any number
 * @returns mass, kg
 * Source: nistSp811, appendix B.
 * Example: newtonsToKilograms(98.0665) is 10.
 */
export function newtonsToKilograms(newtons: number): number {
	return newtons / standardGravity;
}
