import { expect, test } from 'vitest';
import { logChanceTable, lookUp } from '#core/statistics/log-chance-table.ts';
import { seededRandom } from '#core/statistics/random.ts';
import { nextTrial } from '#core/trials/next-trial.ts';
import type { Outcome, Trial } from '#core/trials/trial.ts';
import { within } from '#test/within.ts';

const notebooks = 10_000;
const table = logChanceTable(0);
const phi = (z: number): number => Math.exp(lookUp(table, z));

/** P(limit < load) and P(opening) by a plain fixed grid: rough, but written apart from what it checks. */
function plainRisk(trials: readonly Trial[], bestGuess: number, loads: number[]) {
	const places: { limit: number; spread: number; weight: number }[] = [];
	let total = 0;
	for (let i = -30; i <= 30; i += 1) {
		for (let j = -8; j <= 8; j += 1) {
			const limit = Math.log(bestGuess) + 0.05 * i;
			const spread = 0.08 * Math.exp(0.2 * j);
			let log = -((0.05 * i) ** 2) / 0.18 - (0.2 * j) ** 2 / 0.5;
			for (const { load, outcome } of trials)
				log += lookUp(table, (outcome === 'held' ? 1 : -1) * ((limit - Math.log(load)) / spread));
			const weight = Math.exp(log);
			total += weight;
			places.push({ limit, spread, weight });
		}
	}
	return loads.map((load) => {
		const lnLoad = Math.log(load);
		let below = 0;
		let opening = 0;
		for (const { limit, spread, weight } of places) {
			// Each column of the grid stands for a strip 0.05 wide.
			below += weight * Math.min(1, Math.max(0, (lnLoad - limit) / 0.05 + 0.5));
			opening += weight * phi((lnLoad - limit) / spread);
		}
		return { below: below / total, opening: opening / total };
	});
}

test('no suggestion ever breaks a cap', () => {
	const random = seededRandom(7);
	// Unseen causes are rarer than in a careless notebook, because each costs a sum over pairs of points.
	const outcomes: Outcome[] = ['held', 'held', 'held', 'slipped', 'slipped', 'opened', 'stopped'];
	const reached: Record<string, number> = {};
	let free = 0;
	for (let book = 0; book < notebooks; book += 1) {
		const bestGuess = 40 + 60 * random.uniform();
		const ownMaximum = bestGuess * (0.4 + random.uniform());
		const adult = random.uniform() > 0.03;
		let heaviest = 0.5 * bestGuess;
		const trials = Array.from({ length: random.below(9) }, (_, k): Trial => {
			const load = heaviest * (0.85 + 0.25 * random.uniform());
			const outcome = outcomes[random.below(outcomes.length)]!;
			if (outcome === 'held') heaviest = Math.max(heaviest, load);
			const reason =
				outcome === 'stopped' && random.uniform() < 0.2 ? { reason: 'pain' as const } : {};
			return { load, outcome, order: k / 10, ropeTerm: 0, session: k < 2 ? 1 : 2, ...reason };
		});
		const loads = [0.9, 1.1].map((part) => heaviest * part * (0.9 + 0.2 * random.uniform()));
		const rows = nextTrial(trials, {
			referenceLoad: 60,
			bestGuess,
			candidates: loads.map((load) => ({ load })),
			ownMaximum,
			adult
		});
		expect(rows.map(({ load }) => load)).toEqual(loads);
		const last = Math.max(...trials.map(({ session }) => session!));
		const held = Math.max(
			0,
			...trials.filter(({ outcome }) => outcome === 'held').map(({ load }) => load)
		);
		const seen = trials.filter(({ outcome }) => outcome !== 'slipped' && outcome !== 'unknown');
		const readings = [
			seen.filter(({ outcome }) => outcome !== 'stopped'),
			seen.map((trial): Trial =>
				trial.outcome === 'stopped' ? { ...trial, outcome: 'opened' } : trial
			)
		].map((reading) => () => plainRisk(reading, bestGuess, loads));
		const unseen = trials.some(({ outcome }) => outcome === 'unknown');
		rows.forEach(({ load, blockedBy, chanceOpened, ...row }, k) => {
			reached[blockedBy ?? 'free'] = (reached[blockedBy ?? 'free'] ?? 0) + 1;
			within(row.chanceHeld + row.chanceSlipped + chanceOpened, 1, { absolute: 1e-9 });
			expect(Number.isFinite(row.information) && row.information >= 0).toBe(true);
			if (blockedBy !== null) return;
			free += 1;
			expect(adult).toBe(true);
			expect(trials.some(({ reason }) => reason === 'pain')).toBe(false);
			expect(load).toBeLessThanOrEqual(ownMaximum);
			if (held > 0) expect(load).toBeLessThanOrEqual(1.1 * held * (1 + 1e-9));
			else expect(load).toBeLessThanOrEqual(0.5 * bestGuess * (1 + 1e-9));
			for (const trial of trials)
				if (trial.session === last && (trial.outcome === 'opened' || trial.outcome === 'stopped'))
					expect(load).toBeLessThanOrEqual(trial.load);
			expect(chanceOpened).toBeLessThanOrEqual(0.25);
			// The plain grid knows nothing of unseen causes, and is good to about 0.02.
			if (unseen) return;
			for (const risk of readings) {
				const reading = risk();
				expect(reading[k]!.below).toBeLessThanOrEqual(0.27);
				expect(reading[k]!.opening).toBeLessThanOrEqual(0.27);
			}
		});
	}
	expect(free).toBeGreaterThan(1000);
	for (const cap of [
		'own-maximum',
		'limit',
		'step',
		'first-trial',
		'opened',
		'stopped',
		'pain',
		'adult'
	])
		expect(reached[cap] ?? 0, cap).toBeGreaterThan(0);
}, 900_000);
