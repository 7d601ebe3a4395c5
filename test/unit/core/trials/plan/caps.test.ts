import { describe, expect, test } from 'vitest';
import { loadCap, overCap } from '#core/trials/plan/caps.ts';
import type { CapTrial } from '#core/trials/plan/caps.ts';
import { within } from '#test/within.ts';

const rules = { ownMaximum: 90, bestGuess: 80, adult: true, session: 1, targetSeconds: 5 };
const hang = (load: number, outcome: CapTrial['outcome'], more: Partial<CapTrial> = {}) => ({
	load,
	outcome,
	session: 1,
	...more
});

describe('load caps', () => {
	test('nothing held yet: half the best guess', () => {
		expect(loadCap([], rules)).toEqual({ limit: 40, reason: 'first-trial' });
		expect(overCap(40, loadCap([], rules))).toBeNull();
		expect(overCap(40.01, loadCap([], rules))).toBe('first-trial');
	});

	test('at most 10 % above the heaviest load held to the target time', () => {
		const trials = [hang(40, 'held', { seconds: 5 }), hang(50, 'held', { seconds: 4.9 })];
		within(loadCap(trials, rules).limit, 44, { relative: 1e-12 });
		expect(overCap(44, loadCap(trials, rules))).toBeNull();
		expect(overCap(44.1, loadCap(trials, rules))).toBe('step');
	});

	test('a held trial of an earlier session counts, its openings do not', () => {
		const trials = [hang(60, 'opened', { session: 0 }), hang(70, 'held', { session: 0 })];
		within(loadCap(trials, rules).limit, 77, { relative: 1e-12 });
	});

	test('eight slips raise no cap', () => {
		const trials = Array.from({ length: 8 }, (_, i) => hang(40 * 1.1 ** i, 'slipped'));
		expect(loadCap(trials, rules)).toEqual({ limit: 40, reason: 'first-trial' });
	});

	test('never above the lightest load that opened or was stopped in this session', () => {
		const trials = [hang(70, 'held'), hang(60, 'opened'), hang(62, 'stopped')];
		expect(loadCap(trials, rules)).toEqual({ limit: 60, reason: 'opened' });
		expect(loadCap([...trials, hang(55, 'stopped')], rules)).toEqual({
			limit: 55,
			reason: 'stopped'
		});
	});

	test('own maximum stands above all else', () => {
		expect(loadCap([hang(89, 'held')], rules)).toEqual({ limit: 90, reason: 'own-maximum' });
	});

	test('pain, or a person not marked adult, ends suggestions', () => {
		const pain = hang(20, 'stopped', { reason: 'pain' });
		expect(loadCap([pain], rules)).toEqual({ limit: 0, reason: 'pain' });
		expect(overCap(1, loadCap([pain], rules))).toBe('pain');
		expect(loadCap([{ ...pain, session: 0 }], rules).reason).not.toBe('pain');
		expect(loadCap([], { ...rules, adult: false })).toEqual({ limit: 0, reason: 'adult' });
	});

	test('without a named session the last trial’s counts', () => {
		const trials = [hang(30, 'opened', { session: 1 }), hang(35, 'held', { session: 2 })];
		within(loadCap(trials, { ...rules, session: undefined }).limit, 38.5, { relative: 1e-12 });
	});

	test('a maximum or guess that is not above 0 is refused by name', () => {
		expect(() => loadCap([], { ...rules, ownMaximum: 0 })).toThrow(/ownMaximum is 0/);
		expect(() => loadCap([], { ...rules, bestGuess: NaN })).toThrow(/bestGuess is NaN/);
	});
});
