import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { within } from '#test/within.ts';
import { analysedOf } from '#state/limits/analysed.ts';
import { capBeyond, hangsToCome, heaviestHeld, suggested } from '#state/limits/candidates.ts';
import type { NextRow } from '#state/limits/candidates.ts';
import { pickQuery, readPick, settledPick, type Records } from '#state/limits/pick.ts';
import { readJson } from '#storage/codecs/notebook/json.ts';
import type { Notebook } from '#storage/codecs/notebook/records.ts';

const untyped = { bestGuess: null, ownMaximum: null };

function records(notebook: Notebook): Records {
	return { ...notebook, trialsOf: (id) => notebook.trials.filter((t) => t.sessionId === id) };
}
function demo(change?: (notebook: Notebook) => void): Records {
	const { notebook } = readJson(readFileSync('seeds/demo-notebook.json', 'utf8'));
	change?.(notebook);
	return records(notebook);
}
const analysed = (notebook: Records) => analysedOf(notebook, settledPick(notebook, {})!, untyped);

describe('the choice', () => {
	test('an empty notebook has none', () => {
		const empty = { people: [], holds: [], grips: [], plans: [], sessions: [], trials: [] };
		expect(settledPick(records(empty), {})).toBeUndefined();
	});
	test('what is not there is mended, and a query brings the same back', () => {
		const pick = settledPick(demo(), { gripId: 'gone', sessionId: 'gone' })!;
		expect(pick).toEqual({
			...{ personId: 'demo-person', holdId: 'demo-hold', gripId: 'demo-grip' },
			sessionId: null
		});
		expect(
			settledPick(demo(), readPick(pickQuery({ ...pick, sessionId: 'demo-session' })))
		).toEqual({ ...pick, sessionId: 'demo-session' });
	});
});

describe('trials as the analysis sees them', () => {
	test('warm-ups and left-out trials are not among them', () => {
		const found = analysed(demo());
		expect([found.trials.length, found.warmUps, found.leftOut.length]).toEqual([26, 8, 1]);
		expect(found.records.every(({ kind, leftOut }) => kind !== 'warm-up' && leftOut === null)).toBe(
			true
		);
	});

	test('rope terms are those of the plane, less the plan’s mean', () => {
		const notebook = demo();
		const found = analysed(notebook);
		const k = found.records.findIndex(
			({ loadKg, ropeSide }) => loadKg === 40 && ropeSide === 'away'
		);
		// Tension (70 − 40)/cos 6°, so the pull leans by atan(30 tan 6°/40) away from the wall.
		const tilt = Math.atan((30 * Math.tan((6 * Math.PI) / 180)) / 40);
		const raw = Math.log(Math.tan(Math.PI / 6 + tilt) / Math.tan(Math.PI / 6));
		within(found.trials[k]!.ropeTerm, raw - notebook.sessions[0]!.meanRopeTerm!, {
			absolute: 1e-12
		});
		within(found.trials[0]!.order, -1.3, { absolute: 1e-12 });
	});

	test('a hold time short of the target counts as stopped', () => {
		const found = analysed(
			demo(({ trials }) => {
				trials.find(({ kind, outcome }) => kind === 'test' && outcome === 'held')!.seconds = 3;
			})
		);
		expect(found.early).toBe(1);
		expect(found.trials.filter(({ outcome }) => outcome === 'stopped')).toHaveLength(2);
	});

	test('an unknown slope leaves the rope as plumb, and says so', () => {
		const found = analysed(demo(({ holds }) => void (holds[0]!.slopeDegrees = null)));
		expect(found.ropeUnknown).toBe(26);
		expect(found.trials.every(({ ropeTerm }) => Number.isFinite(ropeTerm))).toBe(true);
		expect(new Set(found.trials.map(({ ropeTerm }) => ropeTerm)).size).toBe(1);
	});

	test('guess, maximum and reference come from the plan; what is typed goes first', () => {
		const notebook = demo();
		const pick = settledPick(notebook, {})!;
		const found = analysedOf(notebook, pick, untyped);
		expect([found.bestGuess, found.ownMaximum, found.guessGiven]).toEqual([74, 68, true]);
		within(found.referenceLoad, Math.sqrt(40 * 64), { absolute: 1e-12 });
		expect(analysedOf(notebook, pick, { bestGuess: 70, ownMaximum: 60 })).toMatchObject({
			bestGuess: 70,
			ownMaximum: 60
		});
	});

	test('without a plan nothing is known of a maximum', () => {
		const found = analysed(demo((notebook) => void (notebook.plans = [])));
		expect([found.ownMaximum, found.guessGiven]).toEqual([null, false]);
	});
});

describe('the next hang', () => {
	test('both rope sides are asked about, and no load below the plates', () => {
		const notebook = demo();
		const hangs = hangsToCome(notebook, analysed(notebook));
		expect(new Set(hangs.map(({ side }) => side))).toEqual(new Set(['away', 'toward']));
		expect(hangs.every(({ load }) => Number.isInteger(load) && load > 0)).toBe(true);
		expect(hangs.some(({ load }) => load > 68)).toBe(true);
	});

	test('caps see warm-ups and left-out trials, other grips’ pain, and whether one is adult', () => {
		const cap = (change?: (notebook: Notebook) => void) => {
			const notebook = demo(change);
			return capBeyond(notebook, analysed(notebook));
		};
		expect(cap()(64)).toBeNull();
		expect(cap()(65)).toBe('opened');
		expect(cap(({ people }) => void (people[0]!.adult = false))(40)).toBe('adult');
		const warm = cap(({ trials }) => {
			const one = trials.find(({ kind, loadKg }) => kind === 'warm-up' && loadKg === 44)!;
			one.outcome = 'opened';
		});
		expect([warm(44), warm(45)]).toEqual([null, 'opened']);
		const hurt = cap(({ trials }) => {
			trials[0] = { ...trials[0]!, gripId: 'other', outcome: 'stopped', stopReason: 'pain' };
		});
		expect(hurt(30)).toBe('pain');
	});

	test('the heaviest held is looked for among the warm-ups too', () => {
		const notebook = demo(({ trials }) => {
			for (const trial of trials) if (trial.kind !== 'warm-up') trial.outcome = 'slipped';
		});
		expect(heaviestHeld(notebook, analysed(notebook))).toBe(64);
	});

	test('suggestions never break a cap, and blocked ones are told with a reason', () => {
		const row = (load: number, information: number, blockedBy: NextRow['blockedBy']): NextRow => ({
			...{ load, information, blockedBy, ropeTerm: 0, side: 'plumb' },
			...{ chanceHeld: 1, chanceSlipped: 0, chanceOpened: 0 }
		});
		const rows = [row(40, 0.01, null), row(50, 0.1, null), row(60, 9, 'step'), row(70, 9, 'step')];
		const { picked, blocked, cap } = suggested(rows, () => 0.5);
		expect(picked.map(({ load }) => load)).toEqual([50, 40]);
		expect(blocked.map(({ load }) => load)).toEqual([60, 70]);
		expect(cap).toBe(50);
		expect(suggested(rows.slice(2), () => 0.5)).toMatchObject({ picked: [], cap: undefined });
	});
});
