import { binaryPoint, type BinaryData } from './binary-model.ts';
import { climb } from './climb.ts';

const rounds = 200;

/**
 * Says whether some combination of the columns splits successes from failures, so that plain maximum likelihood
 * runs off to infinity.
 *
 * A direction d separates when every success has x·d ≥ 0 and every failure x·d ≤ 0, not all of them 0. Along such a
 * direction the likelihood climbs for ever, so the climb's own direction is tried; without one it converges.
 *
 * @param data successes, trials, design of full rank, link
 * @returns true when separated, completely or in part
 * Source: albertAnderson1984, sections 3 and 4
 * Example: isSeparated({ successes: [0, 1], trials: [1, 1], design: [[1, 0], [1, 1]], link: 'logit' }) → true
 */
export function isSeparated(data: BinaryData): boolean {
	const size = data.design[0]?.length ?? 0;
	const scale = Array.from({ length: size }, (_, j) =>
		data.design.reduce((most, row) => Math.max(most, Math.abs(row[j]!)), 0)
	);
	// The answer does not depend on the link, and logit's steps along a separating direction do not shrink.
	const logit = {
		...data,
		link: 'logit' as const,
		design: data.design.map((row) => row.map((x, j) => x / (scale[j] || 1)))
	};
	const hillAt = (point: number[]) => {
		const at = binaryPoint(logit, point);
		return { value: at.logLikelihood, slope: at.score, bend: at.information };
	};
	let start = new Array<number>(size).fill(0);
	for (let round = 0; round < rounds; round += 1) {
		const { point, converged, lastMove } = climb(hillAt, start, 1);
		if (separates(logit, lastMove) || separates(logit, point)) return true;
		if (converged) return false;
		start = point;
	}
	return true;
}

function separates(data: BinaryData, direction: readonly number[]): boolean {
	const size = Math.hypot(...direction);
	if (!(size > 0)) return false;
	let strict = false;
	for (let i = 0; i < data.design.length; i += 1) {
		const n = data.trials[i]!;
		if (n === 0) continue;
		const k = data.successes[i]!;
		const along = data.design[i]!.reduce((sum, x, j) => sum + x * direction[j]!, 0) / size;
		if (k > 0 && along < -1e-7) return false;
		if (k < n && along > 1e-7) return false;
		if (Math.abs(along) > 1e-4) strict = true;
	}
	return strict;
}
