import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { loadCap, overCap } from '#core/trials/plan/caps.ts';
import type { CapTrial } from '#core/trials/plan/caps.ts';
import { demoFile } from '#seeds/demo-notebook.generate.ts';
import { flagsOf } from '#storage/codecs/notebook/flags.ts';
import { readJson } from '#storage/codecs/notebook/json.ts';
import { demoDeletion } from '#storage/stores/deletion.ts';
import { kinds } from '#storage/codecs/notebook/records.ts';

const file = readFileSync('seeds/demo-notebook.json', 'utf8');
const draft = readJson(file);
const { trials, sessions } = draft.notebook;

describe('the demo notebook', () => {
	test('is what its generator makes', () =>
		expect(JSON.parse(file)).toEqual(JSON.parse(demoFile())));

	test('reads without a word, and says that it is invented', () => {
		expect(draft.problems).toEqual([]);
		expect(draft.notebook.people[0]!.label).toMatch(/invented/);
		expect(sessions[0]!.note).toMatch(/Invented/);
	});

	test('has about thirty trials and every outcome, one left out, nothing odd', () => {
		expect(trials.length).toBeGreaterThanOrEqual(28);
		expect(trials.length).toBeLessThanOrEqual(36);
		expect(new Set(trials.map(({ outcome }) => outcome)).size).toBe(5);
		expect(trials.filter(({ leftOut }) => leftOut)).toHaveLength(1);
		expect(flagsOf(sessions[0]!, trials)).toEqual([]);
	});

	test('keeps every cap, hang by hang', () => {
		const { ownMaximum, bestGuess } = draft.notebook.plans[0]!.plan.choice.grips[0]!;
		const rules = { ownMaximum, bestGuess, adult: true, session: 1, targetSeconds: 5 };
		const done: CapTrial[] = [];
		for (const { loadKg, outcome, seconds } of trials) {
			expect(overCap(loadKg, loadCap(done, rules))).toBeNull();
			done.push({ load: loadKg, outcome, seconds: seconds ?? undefined, session: 1 });
		}
	});

	test('goes whole in one deletion', () => {
		const all = kinds.reduce((sum, kind) => sum + draft.notebook[kind].length, 0);
		expect(demoDeletion(draft.notebook)).toHaveLength(all);
	});
});
