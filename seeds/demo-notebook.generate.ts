/**
 * Makes demo-notebook.json: one invented session of an invented coach. No person, hold or hang in
 * it is real. Friction is the same at every load here; what makes light hangs slip is the rope,
 * which leans 6° away from the wall in half of the trials and toward it in the other half.
 *
 * Run: node scripts/run-ts.mjs seeds/demo-notebook.generate.ts > seeds/demo-notebook.json
 * and then npx prettier --write seeds/demo-notebook.json
 */
import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';
import { makePlan } from '../src/core/trials/plan/make-plan.ts';
import type { PlanChoice, PlannedTrial } from '../src/core/trials/plan/types.ts';
import { exportJson } from '../src/storage/codecs/notebook/json.ts';
import type { Notebook, Trial } from '../src/storage/codecs/notebook/records.ts';

const bodyMass = 70;
const slope = Math.PI / 6;
const ropeDegrees = 6;
const truth = { coefficient: 0.63, frictionSpread: 0.12, limit: 74, limitSpread: 0.08 };
const started = Date.UTC(2026, 2, 14, 17, 5);

const choice: PlanChoice = {
	seed: 2026,
	design: 'shuffled',
	grips: [
		{
			grip: 'demo-grip',
			loads: [40, 50, 64],
			ownMaximum: 68,
			bestGuess: 74,
			history: []
		}
	],
	ropeSides: ['away', 'toward'],
	repeats: 4,
	check: { grip: 'demo-grip', load: 50, ropeSide: 'away' },
	step: 0.06,
	increment: 1,
	targetSeconds: 5,
	restSeconds: 120,
	setupSeconds: 30,
	session: 1,
	adult: true
};

/** The rope term of a hang: how much the leaning pull changes the friction asked for. */
function ropeTerm({ load, ropeSide }: { load: number; ropeSide: PlannedTrial['ropeSide'] }) {
	const sign = { away: 1, plumb: 0, toward: -1 }[ropeSide];
	const side = sign * Math.tan((ropeDegrees * Math.PI) / 180) * Math.max(0, bodyMass - load);
	return Math.log(Math.tan(slope + Math.atan2(side, load)) / Math.tan(slope));
}

const plan = makePlan(choice, ropeTerm);

function session(seed: number): Notebook {
	const random = xoroshiro128plus(seed);
	const chance = () => uniformFloat64(random);
	// Box and Muller: two uniform numbers make a normal one.
	const normal = () => Math.sqrt(-2 * Math.log(1 - chance())) * Math.cos(2 * Math.PI * chance());
	const trials = plan.trials.map((row, i): Trial => {
		const load = row.load!;
		const ratio = truth.coefficient * Math.exp(truth.frictionSpread * normal());
		const limit = truth.limit * Math.exp(truth.limitSpread * normal());
		const slips = ratio < Math.tan(slope) * Math.exp(ropeTerm({ load, ropeSide: row.ropeSide }));
		const seen = chance() > 0.12;
		const outcome = slips
			? seen
				? 'slipped'
				: 'unknown'
			: limit < load
				? 'opened'
				: limit < load * 1.04
					? 'stopped'
					: 'held';
		const early = { held: 5, slipped: 1, unknown: 1.5, opened: 4, stopped: 4.5 }[outcome];
		const seconds = outcome === 'held' ? 5 : Math.round(10 * early * (0.4 + 0.6 * chance())) / 10;
		return {
			id: `demo-trial-${String(i + 1).padStart(2, '0')}`,
			sessionId: 'demo-session',
			gripId: 'demo-grip',
			// Warm-ups stand before trial 1.
			order: row.number ?? i + 1 - (plan.trials.length - plan.plannedNumber),
			kind: row.kind,
			loadKg: load,
			reached: 'counterweight',
			addedKg: null,
			counterweightKg: null,
			ropeDegrees: row.ropeSide === 'plumb' ? 0 : ropeDegrees,
			ropeSide: row.ropeSide,
			outcome,
			seconds,
			stopReason: outcome === 'stopped' ? 'opening' : null,
			brushed: true,
			note: '',
			leftOut: null,
			loggedAt: started + i * 155_000
		};
	});
	return {
		people: [
			{ id: 'demo-person', label: 'Demo: invented climber', bodyMassKg: bodyMass, adult: true }
		],
		holds: [
			{
				id: 'demo-hold',
				label: 'Demo: slick board',
				slopeDegrees: 30,
				slopeMethod: 'invented',
				radiusMm: null,
				surface: 'smooth resin, invented',
				condition: 'brushed, dry'
			}
		],
		grips: [{ id: 'demo-grip', label: 'Demo: open grip', fingers: 4, hands: 2, patchMm2: 250 }],
		plans: [
			{
				id: 'demo-plan',
				label: 'Demo: three loads, both rope sides',
				day: '2026-03-14',
				personId: 'demo-person',
				plan
			}
		],
		sessions: [
			{
				id: 'demo-session',
				personId: 'demo-person',
				holdId: 'demo-hold',
				day: '2026-03-14',
				bodyMassKg: null,
				targetSeconds: choice.targetSeconds,
				restSeconds: choice.restSeconds,
				brushing: 'before every hang',
				chalk: 'none',
				skin: 'dry',
				airCelsius: 19,
				humidityPercent: 45,
				checkLoadKg: 50,
				planId: 'demo-plan',
				plannedTrials: plan.plannedNumber,
				meanRopeTerm: plan.meanRopeTerm,
				note: 'Invented for the demo. No such session took place.'
			}
		],
		trials
	};
}

/** A session that shows every outcome, and in which no rule of the caps was broken. */
function isInstructive({ trials }: Notebook): boolean {
	const outcomes = new Set(trials.map(({ outcome }) => outcome));
	const warm = trials.filter(({ kind }) => kind === 'warm-up');
	const ended = trials.filter(({ outcome }) => outcome === 'opened' || outcome === 'stopped');
	return (
		outcomes.size === 5 &&
		warm.every(({ outcome }) => outcome === 'held') &&
		ended.every(({ loadKg }) => loadKg === 64)
	);
}

/** The demo notebook: the first seed whose session is instructive, with one trial left out. */
export function demoNotebook(): Notebook {
	for (let seed = 1; seed < 20_000; seed++) {
		const notebook = session(seed);
		if (!isInstructive(notebook)) continue;
		const slip = notebook.trials.findLast(
			({ kind, outcome }) => kind === 'test' && outcome === 'slipped'
		)!;
		slip.leftOut = 'hold was wet';
		slip.note = 'Seen and said before the hang.';
		return notebook;
	}
	throw new Error('No seed gave an instructive session');
}

export function demoFile(): string {
	return exportJson(demoNotebook(), new Date(started));
}

if (process.argv[1]?.endsWith('demo-notebook.generate.ts')) process.stdout.write(demoFile());
