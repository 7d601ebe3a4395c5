import type { PlannedTrial, RopeSide, Tangle } from './types.ts';

const side: Record<RopeSide, number> = { away: 1, plumb: 0, toward: -1 };

/**
 * Measures how far load and rope side are tangled with order in a list of trials.
 *
 * Pearson correlation of load (kg), and of rope side (away +1, plumb 0, toward −1), with the
 * place in the list; overall and within each grip. A quantity that never changes gives 0.
 *
 * @param trials planned trials in order; warm-ups and trials without a load are not looked at
 * @returns correlations from −1 to 1
 * Source: derived
 * Example: loads 40, 60, 60, 40 with one grip → load 0
 */
export function tangleOf(
	trials: readonly Pick<PlannedTrial, 'kind' | 'grip' | 'load' | 'ropeSide'>[]
): Tangle {
	const analysed = trials
		.filter((trial) => trial.kind !== 'warm-up')
		.map((trial, place) => ({ ...trial, place }));
	const grips = [...new Set(analysed.map(({ grip }) => grip))];
	const both = (rows: typeof analysed) => {
		const loaded = rows.filter((row) => row.load !== null);
		return {
			load: correlation(
				loaded.map((row) => row.load!),
				loaded.map((row) => row.place)
			),
			ropeSide: correlation(
				rows.map((row) => side[row.ropeSide]),
				rows.map((row) => row.place)
			)
		};
	};
	return {
		...both(analysed),
		grips: grips.map((grip) => ({ grip, ...both(analysed.filter((row) => row.grip === grip)) }))
	};
}

/** Pearson correlation; 0 where either list never changes. */
function correlation(x: readonly number[], y: readonly number[]): number {
	const n = x.length;
	if (n < 2) return 0;
	const meanX = x.reduce((sum, value) => sum + value, 0) / n;
	const meanY = y.reduce((sum, value) => sum + value, 0) / n;
	let xx = 0;
	let yy = 0;
	let xy = 0;
	for (let i = 0; i < n; i++) {
		const dx = x[i]! - meanX;
		const dy = y[i]! - meanY;
		xx += dx * dx;
		yy += dy * dy;
		xy += dx * dy;
	}
	// Equal decimals such as 0.1 + 0.2 leave a spread of rounding only.
	const flat = 1e-20 * n * Math.max(1, meanX * meanX);
	return xx <= flat || yy === 0 ? 0 : xy / Math.sqrt(xx * yy);
}
