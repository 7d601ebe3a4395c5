import { describe, expect, test } from 'vitest';
import { within } from '#test/within.ts';
import { newTrial } from '#storage/codecs/notebook/new-records.ts';
import { HangClock } from '../../../../src/state/session/hang-clock.svelte.ts';
import { likelyReach, loadFrom, partsFor } from '../../../../src/state/session/reach.ts';
import { plainMemory } from '../../../../src/state/session/remembered.ts';
import { clockText, restLeft } from '../../../../src/state/session/rest.ts';
import { ropeTermOf } from '../../../../src/state/session/rope-term.ts';
import {
	linesToCome,
	looseOrder,
	orderText,
	plannedLines
} from '../../../../src/state/session/sheet-lines.ts';
import { makePlan } from '#core/trials/plan/make-plan.ts';

describe('rest', () => {
	test('counts from the logged moment, so a reload or a locked phone changes nothing', () => {
		expect(restLeft(1000, 120, 61_000)).toBe(60);
		expect(restLeft(1000, 120, 200_000)).toBe(-79);
	});
	test('a clock set back never makes it longer than a rest', () => {
		expect(restLeft(1_000_000, 120, 0)).toBe(120);
	});
	test('nothing logged, or no rest set: none', () => {
		expect(restLeft(null, 120, 0)).toBeNull();
		expect(restLeft(0, null, 0)).toBeNull();
	});
	test('reads as a clock', () => {
		expect([83, 60, 0.2, -61].map(clockText)).toEqual(['1:23', '1:00', '0:01', '+1:01']);
	});
});

describe('hang clock', () => {
	function clock() {
		let now = 0;
		const memory = plainMemory();
		const hang = new HangClock(() => now, memory);
		return { hang, memory, at: (ms: number) => (now = ms) };
	}
	test('counts in, then up; stopped, it stands', () => {
		const { hang, at } = clock();
		hang.start(5);
		expect(hang.secondsAt(2000)).toBe(-3);
		expect(hang.secondsAt(9000)).toBe(4);
		at(8200);
		hang.stop();
		expect(hang.secondsAt(99_000)).toBe(3.2);
		expect(hang.secondsFor(false, 5)).toBe(3.2);
	});
	test('another page takes it up from what the device remembers', () => {
		const { hang, memory } = clock();
		hang.start(0);
		const later = new HangClock(() => 4500, memory);
		later.load();
		expect(later.running).toBe(true);
		expect(later.secondsFor(false, 5)).toBe(4.5);
	});
	test('held past the target says the target; held with no clock says it too', () => {
		const { hang, at } = clock();
		expect(hang.secondsFor(true, 5)).toBe(5);
		expect(hang.secondsFor(false, 5)).toBeNull();
		hang.start(0);
		at(9000);
		expect(hang.secondsFor(true, 5)).toBe(5);
		at(3000);
		expect(hang.secondsFor(true, 5)).toBe(3);
	});
	test('stopped while counting in: there was no hang', () => {
		const { hang } = clock();
		hang.start(5);
		hang.stop();
		expect(hang.idle).toBe(true);
	});
});

describe('how a load is reached', () => {
	test('plates and counterweight follow the net load, and it follows them', () => {
		expect(partsFor(75.3, 'plates', 70.1)).toMatchObject({ addedKg: 5.2, counterweightKg: null });
		expect(partsFor(50, 'counterweight', 70)).toMatchObject({ counterweightKg: 20 });
		expect(loadFrom({ reached: 'both', addedKg: 10, counterweightKg: 25 }, 70)).toBe(55);
		// Body mass alone: neither counts.
		expect(loadFrom({ reached: 'body', addedKg: 10, counterweightKg: 25 }, 70)).toBe(70);
	});
	test('without a body mass nothing follows', () => {
		expect(partsFor(50, 'counterweight', null).counterweightKg).toBeNull();
		expect(loadFrom({ reached: 'plates', addedKg: 5, counterweightKg: null }, null)).toBeNull();
	});
	test('is likely as before, where that is possible', () => {
		expect(likelyReach(50, 70, 'counterweight')).toBe('counterweight');
		expect(likelyReach(80, 70, 'counterweight')).toBe('plates');
		expect(likelyReach(70, 70, 'counterweight')).toBe('body');
		expect(likelyReach(50, 70, undefined)).toBe('scale');
	});
});

describe('lines of the sheet', () => {
	const plan = makePlan({
		seed: 1,
		design: 'shuffled',
		grips: [{ grip: 'g', loads: [40, 60], ownMaximum: 70, bestGuess: 70, history: [] }],
		ropeSides: ['away', 'toward'],
		repeats: 2,
		check: null,
		step: 0.06,
		increment: 1,
		targetSeconds: 5,
		restSeconds: 60,
		setupSeconds: 10,
		session: 0,
		adult: true
	});
	test('warm-ups end at 0, trials count from 1', () => {
		const lines = plannedLines(plan);
		const orders = lines.map(({ order }) => order);
		const warmUps = lines.filter(({ kind }) => kind === 'warm-up').length;
		expect(warmUps).toBeGreaterThan(1);
		expect(orders).toEqual(lines.map((_, i) => i + 1 - warmUps));
	});
	test('what was passed over is no longer next', () => {
		const lines = plannedLines(plan);
		expect(linesToCome(lines, [])).toHaveLength(lines.length);
		expect(linesToCome(lines, [{ order: 3 }])[0]!.order).toBe(4);
		expect(linesToCome(lines, [{ order: 3 }], 6)[0]!.order).toBe(6);
	});
	test('numbers beyond a plan, and without one', () => {
		expect(looseOrder([], 'warm-up', 0)).toBe(-99);
		expect(looseOrder([{ order: -99 }], 'warm-up', 0)).toBe(-98);
		expect(looseOrder([{ order: -98 }], 'test', 0)).toBe(1);
		expect(looseOrder([{ order: 4 }], 'test', 8)).toBe(9);
		expect(looseOrder([{ order: 12 }], 'test', 8)).toBe(13);
	});
	test('warm-ups are numbered by their place', () => {
		expect(orderText(-3, 'warm-up', 2)).toBe('w2');
		expect(orderText(7, 'check', 0)).toBe('7');
	});
});

describe('rope term', () => {
	const known = { slopeDegrees: 30, leanDegrees: 5, bodyMassKg: 80 };
	const hang = { grip: 'g', load: 40 };
	// Own arithmetic, not outside: tan 5° · (80 − 40)/40 tilts the pull by 5.0°; ln(tan 35°/tan 30°).
	test('5° at 40 kg of 80 kg on 30° asks for a fifth more, and the other side for less', () => {
		const term = ropeTermOf(known, [])!;
		within(term({ ...hang, ropeSide: 'away' }), 0.193, { absolute: 0.001 });
		expect(term({ ...hang, ropeSide: 'toward' })).toBeLessThan(-0.19);
		expect(term({ ...hang, ropeSide: 'plumb' })).toBe(0);
		// Nothing pulls on the rope at body mass.
		expect(term({ grip: 'g', load: 80, ropeSide: 'away' })).toBe(0);
	});
	test('is not guessed where something is not known', () => {
		expect(ropeTermOf({ ...known, slopeDegrees: null }, [])).toBeUndefined();
		expect(ropeTermOf({ ...known, slopeDegrees: 0 }, [])).toBeUndefined();
		// A rope toward the wall tilts the pull past a shallow slope: there is no ratio to speak of.
		const past = { ...hang, ropeSide: 'toward' as const };
		expect(ropeTermOf({ ...known, slopeDegrees: 3 }, [past])).toBeUndefined();
	});
});

test('a new trial takes what the line says', () => {
	const made = newTrial(() => 'id', {
		sessionId: 's',
		gripId: 'g',
		order: 1,
		loadKg: 40,
		outcome: 'held'
	});
	expect(made).toMatchObject({ kind: 'test', ropeSide: null, leftOut: null });
});
