import { isSeparated } from '../statistics/separation.ts';
import { checkTrials } from './check-trials.ts';
import type { Trial } from './trial.ts';

/** Something the screen must say by itself, with the number it needs. */
export type Caution =
	| { kind: 'no-trials' }
	| { kind: 'few-trials'; trials: number; stuck: number; slipped: number }
	| { kind: 'all-alike'; stage: 'slip' | 'opening'; outcome: 'yes' | 'no'; load: number }
	| { kind: 'clean-split'; stage: 'slip' | 'opening' }
	| { kind: 'loads-too-alike'; ratio: number }
	| { kind: 'rope-never-moved' }
	| { kind: 'tangled'; measure: 'load' | 'rope'; correlation: number }
	| { kind: 'several-sessions'; sessions: number }
	| { kind: 'causes-unseen'; share: number }
	| { kind: 'stopped-counted-both-ways'; stopped: number }
	| { kind: 'pain' };

/** Fewer trials, or fewer of either outcome, cannot tell stories apart. Judgement. */
export const fewest = { trials: 10, each: 3 };
/** Narrower loads cannot show a trend. Judgement. */
export const narrowestLoads = 1.5;
/** Beyond this load or rope and order are tangled. Judgement. */
export const mostCorrelation = 0.3;

/**
 * How closely two measures run together.
 *
 * Pearson's r; 0 where either does not vary.
 *
 * @param xs one measure
 * @param ys the other, same length
 * @returns r, −1 to 1
 * Source: pearson1895
 * Example: correlation([1, 2, 3], [2, 4, 6]) → 1
 */
export function correlation(xs: readonly number[], ys: readonly number[]): number {
	const mean = (values: readonly number[]): number =>
		values.reduce((a, b) => a + b, 0) / values.length;
	const [mx, my] = [mean(xs), mean(ys)];
	let [xy, xx, yy] = [0, 0, 0];
	xs.forEach((x, k) => {
		xy += (x - mx) * (ys[k]! - my);
		xx += (x - mx) ** 2;
		yy += (ys[k]! - my) ** 2;
	});
	const size = Math.sqrt(xx * yy);
	return size > 1e-12 * (1 + mx * mx + my * my) ? xy / size : 0;
}

function stageCautions(
	trials: readonly Trial[],
	stage: 'slip' | 'opening',
	good: (trial: Trial) => boolean
): Caution[] {
	if (trials.length === 0) return [];
	const yes = trials.filter(good);
	const no = trials.filter((trial) => !good(trial));
	const loads = (some: readonly Trial[]): number[] => some.map(({ load }) => load);
	if (no.length === 0)
		return [{ kind: 'all-alike', stage, outcome: 'yes', load: Math.max(...loads(yes)) }];
	if (yes.length === 0)
		return [{ kind: 'all-alike', stage, outcome: 'no', load: Math.min(...loads(no)) }];
	// One row a load: thousands of trials come at a few loads.
	const each = [...new Set(loads(trials))];
	const logs = each.map(Math.log);
	if (Math.max(...logs) - Math.min(...logs) < 1e-9) return [];
	const rows = each.map((load) => trials.filter((trial) => trial.load === load));
	const separated = isSeparated({
		successes: rows.map((row) => row.filter(good).length),
		trials: rows.map((row) => row.length),
		design: logs.map((log) => [1, log]),
		link: 'logit'
	});
	return separated ? [{ kind: 'clean-split', stage }] : [];
}

/**
 * What the screen must warn of by itself, given the trials.
 *
 * @param trials of one grip, kg
 * @returns cautions, the most basic first; which words they get is the screen's business
 * @throws RangeError naming field, value and range
 * Source: derived (bounds are judgement)
 * Example: cautions([]) → [{ kind: 'no-trials' }]
 */
export function cautions(trials: readonly Trial[]): Caution[] {
	checkTrials(trials);
	if (trials.length === 0) return [{ kind: 'no-trials' }];
	const count = (outcome: Trial['outcome']): number =>
		trials.filter((trial) => trial.outcome === outcome).length;
	const slips = trials.filter(({ outcome }) => outcome !== 'stopped' && outcome !== 'unknown');
	const opens = trials.filter(({ outcome }) => outcome === 'held' || outcome === 'opened');
	const slipped = count('slipped');
	const stuck = slips.length - slipped;
	const found: Caution[] = [];
	if (trials.some(({ reason }) => reason === 'pain')) found.push({ kind: 'pain' });
	if (slips.length < fewest.trials || Math.min(stuck, slipped) < fewest.each)
		found.push({ kind: 'few-trials', trials: slips.length, stuck, slipped });
	found.push(...stageCautions(slips, 'slip', ({ outcome }) => outcome !== 'slipped'));
	found.push(...stageCautions(opens, 'opening', ({ outcome }) => outcome === 'held'));
	const loads = trials.map(({ load }) => load);
	const ratio = Math.max(...loads) / Math.min(...loads);
	if (ratio < narrowestLoads) found.push({ kind: 'loads-too-alike', ratio });
	const ropes = slips.map(({ ropeTerm }) => ropeTerm);
	if (slips.length > 0 && Math.max(...ropes) - Math.min(...ropes) < 1e-9)
		found.push({ kind: 'rope-never-moved' });
	const order = trials.map((trial) => trial.order);
	const measures = { load: loads.map(Math.log), rope: trials.map(({ ropeTerm }) => ropeTerm) };
	for (const measure of ['load', 'rope'] as const) {
		const r = correlation(measures[measure], order);
		if (trials.length > 2 && Math.abs(r) > mostCorrelation)
			found.push({ kind: 'tangled', measure, correlation: r });
	}
	const sessions = new Set(trials.map(({ session = 1 }) => session)).size;
	if (sessions > 1) found.push({ kind: 'several-sessions', sessions });
	const unseen = count('unknown') / trials.length;
	if (unseen > 0.2) found.push({ kind: 'causes-unseen', share: unseen });
	const stopped = count('stopped');
	if (stopped > 0) found.push({ kind: 'stopped-counted-both-ways', stopped });
	return found;
}
