import type { BinaryData } from './binary-model.ts';
import { climb } from './climb.ts';
import { fitBinary, hillOf } from './fit-binary.ts';

/**
 * Limits of one coefficient of a binary regression between which it plausibly lies.
 *
 * The two values where the penalised log likelihood, climbed over the other coefficients, lies χ²/2 below its top;
 * the penalty keeps the determinant of the full information.
 *
 * @param data successes, trials, design, link
 * @param penalty 'jeffreys' (always finite) or 'none'
 * @param index which coefficient
 * @param drop χ² quantile with one degree of freedom, 3.841458820694124 for 95 %
 * @returns [lower, upper]; −Infinity or Infinity where the profile never falls that far
 * Source: heinzeSchemper2002, section 2
 * Example: profileLimits(data, 'jeffreys', 1) brackets fitBinary(data).coefficients[1]
 */
export function profileLimits(
	data: BinaryData,
	penalty: 'none' | 'jeffreys',
	index: number,
	drop = 3.841458820694124
): [number, number] {
	const fit = fitBinary({ ...data, penalty });
	const hillAt = hillOf(data, penalty);
	const floor = hillAt(fit.coefficients).value - drop / 2;
	const others = fit.coefficients.map((_, k) => k).filter((k) => k !== index);
	const profile = (value: number, from: number[]): { height: number; point: number[] } => {
		const whole = (part: number[]): number[] => {
			const point = [...fit.coefficients];
			point[index] = value;
			others.forEach((k, j) => (point[k] = part[j]!));
			return point;
		};
		if (others.length === 0) return { height: hillAt(whole([])).value, point: [] };
		const summit = climb(
			(part) => {
				const hill = hillAt(whole(part));
				return {
					value: hill.value,
					slope: others.map((k) => hill.slope[k]!),
					bend: others.map((a) => others.map((b) => hill.bend[a]![b]!))
				};
			},
			from,
			200
		);
		return { height: summit.hill.value, point: summit.point };
	};
	const limit = (way: 1 | -1): number => {
		const centre = fit.coefficients[index]!;
		let step = way * Math.sqrt(fit.covariance[index]![index]!);
		let from = others.map((k) => fit.coefficients[k]!);
		let inside = centre;
		let outside: number;
		for (let tries = 0; ; tries += 1) {
			outside = inside + step;
			const { height, point } = profile(outside, from);
			if (height < floor) break;
			if (tries === 60) return way * Infinity;
			inside = outside;
			from = point;
			step *= 1.3;
		}
		for (let round = 0; round < 60; round += 1) {
			const middle = (inside + outside) / 2;
			const { height, point } = profile(middle, from);
			if (height < floor) outside = middle;
			else [inside, from] = [middle, point];
		}
		return (inside + outside) / 2;
	};
	return [limit(-1), limit(1)];
}
