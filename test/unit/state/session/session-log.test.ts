import { readFileSync } from 'node:fs';
import { beforeEach, describe, expect, test } from 'vitest';
import { within } from '#test/within.ts';
import { newGrip, newHold, newPerson } from '#storage/codecs/notebook/new-records.ts';
import { memoryNotebook } from '#storage/stores/open-store.ts';
import { put } from '#storage/stores/store.ts';
import { NotebookState } from '../../../../src/state/notebook/notebook.svelte.ts';
import { loadDemo } from '../../../../src/state/notebook/demo.ts';
import { keepPlan } from '../../../../src/state/session/keep-plan.ts';
import { PlanDraft } from '../../../../src/state/session/plan-draft.svelte.ts';
import { plainMemory } from '../../../../src/state/session/remembered.ts';
import { SessionLog, TWIN_TAP_MS } from '../../../../src/state/session/session-log.svelte.ts';
import { startSession } from '../../../../src/state/session/start-session.ts';

const day = '2026-05-04';
let count = 0;
const newId = () => `id-${++count}`;

async function bench(said: { adult?: boolean } = {}) {
	let now = Date.UTC(2026, 4, 4, 12);
	const store = memoryNotebook(() => now);
	const notebook = new NotebookState(async () => ({ store, fault: null }));
	await notebook.open();
	const memory = plainMemory();
	const deps = { now: () => now, newId, memory };
	const log = new SessionLog(notebook, deps);
	const start = startSession(
		{
			person: { label: 'A', bodyMassKg: 70, adult: said.adult ?? true },
			hold: { label: 'H' },
			grip: { label: 'G' },
			session: { day, targetSeconds: 5, restSeconds: 120 }
		},
		newId
	);
	await notebook.apply('Began', start.changes);
	log.choose(start.sessionId);
	log.setWish({ gripId: start.gripId });
	const wait = (ms = 60_000) => (now += ms);
	const hang = async (loadKg: number, outcome: Parameters<SessionLog['log']>[0]) => {
		wait();
		log.change({ loadKg });
		return log.log(outcome);
	};
	return { notebook, log, wait, hang, deps, gripId: start.gripId };
}

beforeEach(() => (count = 0));

describe('logging', () => {
	test('a tap writes the line; the next one begins with the same load', async () => {
		const { log, hang } = await bench();
		expect(await hang(40, 'held')).toBe(true);
		expect(log.trials).toHaveLength(1);
		expect(log.trials[0]).toMatchObject({ order: 1, loadKg: 40, outcome: 'held', seconds: 5 });
		expect(log.line).toMatchObject({ order: 2, loadKg: 40 });
	});

	test('no load, no trial', async () => {
		const { log, wait } = await bench();
		wait();
		expect(log.line?.loadKg).toBeNull();
		expect(await log.log('held')).toBe(false);
		expect(log.trials).toHaveLength(0);
	});

	test('two taps of one finger are one trial', async () => {
		const { log, wait, hang } = await bench();
		await hang(40, 'held');
		wait(TWIN_TAP_MS - 1);
		expect(await log.log('held')).toBe(false);
		wait(1);
		expect(await log.log('held')).toBe(true);
		expect(log.trials).toHaveLength(2);
	});

	test('what is changed on the line outlives the page', async () => {
		const { log, notebook, deps } = await bench();
		log.change({ loadKg: 41.5, ropeSide: 'toward' });
		const later = new SessionLog(notebook, deps);
		later.load();
		expect(later.line).toMatchObject({ loadKg: 41.5, ropeSide: 'toward' });
	});

	test('plates, counterweight and net load follow one another', async () => {
		const { log } = await bench();
		log.change({ loadKg: 50 });
		log.change({ reached: 'counterweight' });
		expect(log.line).toMatchObject({ loadKg: 50, counterweightKg: 20 });
		log.change({ counterweightKg: 15 });
		expect(log.line).toMatchObject({ loadKg: 55, counterweightKg: 15 });
		log.change({ reached: 'plates' });
		log.change({ addedKg: 5 });
		expect(log.line).toMatchObject({ loadKg: 75, addedKg: 5, counterweightKg: null });
	});

	test('warm-ups come before the first trial and not after it', async () => {
		const { log, hang } = await bench();
		log.setWish({ kind: 'warm-up' });
		await hang(30, 'held');
		await hang(33, 'held');
		expect(log.trials.map(({ order }) => order)).toEqual([-99, -98]);
		expect(log.trials.map((trial) => log.nameOf(trial))).toEqual(['Warm-up 1', 'Warm-up 2']);
		log.setWish({ kind: 'test' });
		await hang(36, 'held');
		log.setWish({ kind: 'warm-up' });
		expect(log.line).toMatchObject({ kind: 'test', order: 2 });
	});

	test('two fields corrected in one breath both count', async () => {
		const { log, hang } = await bench();
		await hang(40, 'slipped');
		const [trial] = log.trials;
		// The page still shows the record as it was when the second field is left.
		await Promise.all([log.correct(trial!, { note: 'wet' }), log.correct(trial!, { seconds: 4 })]);
		expect(log.trials[0]).toMatchObject({ note: 'wet', seconds: 4, outcome: 'slipped' });
	});

	test('corrected and deleted in place; undo brings it back', async () => {
		const { log, notebook, hang } = await bench();
		await hang(40, 'slipped');
		await log.correct(log.trials[0]!, { seconds: 0.7, note: '<b>' });
		expect(log.trials[0]).toMatchObject({ seconds: 0.7, note: '<b>' });
		await log.delete(log.trials[0]!);
		expect(log.trials).toHaveLength(0);
		await notebook.undo();
		expect(log.trials[0]).toMatchObject({ seconds: 0.7, note: '<b>' });
	});
});

describe('caps beside the next line', () => {
	test('a tenth above the heaviest held; a slip raises nothing', async () => {
		const { log, hang } = await bench();
		await hang(40, 'held');
		within(log.next?.cap?.limit ?? NaN, 44, { absolute: 1e-9 });
		await hang(60, 'slipped');
		within(log.next?.cap?.limit ?? NaN, 44, { absolute: 1e-9 });
	});

	test('never above what opened or was stopped today, left out or not', async () => {
		const { log, hang } = await bench();
		await hang(40, 'held');
		await hang(42, 'opened');
		await log.correct(log.trials[1]!, { leftOut: 'wet' });
		expect(log.next?.cap).toEqual({ limit: 42, reason: 'opened' });
	});

	test('pain today ends suggestions, in another session of the day too', async () => {
		const { log, notebook, hang, gripId } = await bench();
		await hang(40, 'stopped');
		await log.correct(log.trials[0]!, { stopReason: 'pain' });
		expect(log.next?.ended).toBe('pain');
		expect(log.line?.loadKg).toBeNull();
		const { session } = log;
		const again = startSession(
			{
				person: { id: session!.personId },
				hold: { id: session!.holdId },
				grip: { id: gripId },
				session: { day }
			},
			newId
		);
		await notebook.apply('Again', again.changes);
		log.choose(again.sessionId);
		expect(log.next?.ended).toBe('pain');
	});

	test('not marked adult: no load is suggested, what was hung can be written', async () => {
		const { log, hang } = await bench({ adult: false });
		expect(log.next?.ended).toBe('adult');
		expect(await hang(20, 'held')).toBe(true);
		expect(log.line?.loadKg).toBeNull();
	});
});

describe('a planned session', () => {
	async function planned(change: (draft: PlanDraft) => void = () => {}) {
		const { notebook, log, hang, wait } = await bench();
		const draft = new PlanDraft(notebook, { day, seed: 7, newId });
		draft.changeGrip(0, { loads: [40, null, 60], ownMaximum: 66, bestGuess: 70 });
		change(draft);
		const made = draft.make();
		if (!made.plan) return { made, draft, log, notebook, hang, wait };
		const kept = keepPlan(
			made.plan,
			draft.picks.parts,
			{ day, label: 'P', newGrips: draft.newGrips },
			newId
		);
		expect(await notebook.apply('Kept', kept.changes)).toBe(true);
		log.choose(kept.sessionId);
		return { made, draft, log, notebook, hang, wait };
	}

	test('goes line by line, as the plan has it, seed kept', async () => {
		const { made, log, wait } = await planned();
		const plan = made.plan!;
		expect(log.plan?.plan.choice.seed).toBe(7);
		expect(log.session).toMatchObject({ plannedTrials: plan.plannedNumber, targetSeconds: 5 });
		for (const line of plan.trials) {
			expect(log.line).toMatchObject({ loadKg: line.load, ropeSide: line.ropeSide });
			wait();
			expect(await log.log('held')).toBe(true);
		}
		expect(log.next?.planned).toBe(false);
		expect(log.next?.order).toBe(plan.plannedNumber + 1);
		expect(log.trials.filter(({ kind }) => kind === 'test').map(({ order }) => order)).toEqual(
			plan.trials.filter(({ kind }) => kind === 'test').map(({ number }) => number)
		);
	});

	test('a line can be passed over', async () => {
		const { log } = await planned();
		const to = log.toCome[0]!.order;
		log.setWish({ from: to });
		expect(log.line?.order).toBe(to);
	});

	test('up and down: the load follows the outcome, and never passes the cap', async () => {
		const { log, wait } = await planned((draft) => {
			draft.design = 'up-and-down';
			draft.changeGrip(0, { loads: [40], ownMaximum: 66, bestGuess: 70 });
			draft.checked = false;
			draft.repeats = 6;
		});
		while (log.line?.kind === 'warm-up') {
			wait();
			await log.log('held');
		}
		wait();
		await log.log('held');
		within(log.line?.loadKg ?? NaN, 42.4, { absolute: 1e-9 });
		wait();
		await log.log('opened');
		within(log.line?.loadKg ?? NaN, 40, { absolute: 1e-9 });
	});

	test('up and down: a check load in between moves nothing', async () => {
		const { log, wait } = await planned((draft) => {
			draft.design = 'up-and-down';
			draft.changeGrip(0, { loads: [40], ownMaximum: 66, bestGuess: 70 });
			draft.repeats = 4;
		});
		const tests: number[] = [];
		const kinds: string[] = [];
		while (log.next?.planned) {
			if (log.line!.kind === 'test') tests.push(log.line!.loadKg!);
			if (log.line!.kind !== 'warm-up') kinds.push(log.line!.kind);
			wait();
			await log.log('held');
		}
		expect(kinds).toEqual(['check', 'test', 'test', 'check', 'test', 'test', 'check']);
		// Each step is 6 % above the one before, whatever the check load in the middle was.
		for (const [place, load] of tests.entries()) {
			within(load, 40 * 1.06 ** place, { absolute: 1e-9 });
		}
	});

	test('the mean rope term is fixed with the plan where it can be known, and the plan is kept', async () => {
		const sloped = await planned((draft) => {
			draft.picks.hold = { id: null, label: 'Slope', slopeDegrees: 30 };
			draft.lean = 5;
		});
		expect(sloped.log.session?.meanRopeTerm).toEqual(expect.any(Number));
		const shallow = await planned((draft) => {
			draft.picks.hold = { id: null, label: 'Shallow', slopeDegrees: 2 };
			draft.lean = 20;
		});
		expect(shallow.log.session?.meanRopeTerm).toBeNull();
	});

	test('refuses a load above the own maximum, and says which', async () => {
		const { made } = await planned((draft) =>
			draft.changeGrip(0, { loads: [40, 80], ownMaximum: 66, bestGuess: 70 })
		);
		expect(made.plan).toBeNull();
		expect(made.refusals).toEqual([
			expect.objectContaining({ load: 80, reason: 'own-maximum', limit: 66 })
		]);
	});

	test('says what is missing, and names a grip, not an id, where the core complains', async () => {
		const { made } = await planned((draft) => {
			draft.design = 'abba';
		});
		expect(made.problem).toMatch(/^Conditions are 4; ABBA compares exactly 2/);
		const { made: lost } = await planned((draft) => draft.changeGrip(0, { bestGuess: null }));
		expect(lost.problem).toBe('Give a best guess of where the fingers open, for G.');
	});
});

test('the demo’s sheet is finished: what follows is off its plan', async () => {
	const store = memoryNotebook(() => 0);
	const notebook = new NotebookState(async () => ({ store, fault: null }));
	await notebook.open();
	await loadDemo(notebook, readFileSync('seeds/demo-notebook.json', 'utf8'));
	const log = new SessionLog(notebook, { now: () => 0, newId, memory: plainMemory() });
	log.load();
	expect(log.session?.id).toBe('demo-session');
	expect(log.next).toMatchObject({ planned: false, order: 28 });
	expect(log.warmUps.map((trial) => log.numberOf(trial))).toEqual(
		Array.from({ length: 8 }, (_, i) => `w${i + 1}`)
	);
});

test('records of every kind begin unknown, and are kept', async () => {
	const { notebook } = await bench();
	const person = newPerson(newId, { label: 'P' });
	expect(person.adult).toBe(false);
	expect(
		await notebook.apply('Added', [
			put('people', person),
			put('holds', newHold(newId, { label: 'H2' })),
			put('grips', newGrip(newId, { label: 'G2' }))
		])
	).toBe(true);
	expect(notebook.people.map(({ label }) => label).sort()).toEqual(['A', 'P']);
});
