import { describe, expect, test } from 'vitest';
import { completeRequest } from '#core/search/complete-request.ts';
import { practiceReport } from '#core/search/practice-report.ts';
import { findStories } from '#core/search/search-stories.ts';
import { evaluateHang } from '#core/strength/evaluate-hang.ts';
import { goQuery } from '#state/search/open-go.ts';
import { exampleStatement, isExample, problemsOf, requestOf } from '#state/search/statement.ts';
import { hangOf, loadOf } from '#state/setup/to-hang.ts';
import { readLink } from '#storage/codecs/link.ts';
import { firstSight } from '#storage/codecs/setup.ts';
import { unmetGoes } from '../../../properties/search/outcomes.ts';

const example = exampleStatement();

describe('what is stated becomes what is asked', () => {
	test('the example is the report from practice at 70 kg', () => {
		const request = requestOf(example, firstSight);
		expect(request.observations).toEqual(practiceReport.observations);
		expect(request.grips.map(({ id, fingers }) => [id, fingers])).toEqual(
			practiceReport.grips.map(({ id, fingers }) => [id, fingers])
		);
		expect(() => completeRequest(request)).not.toThrow();
		expect(completeRequest(request)).toMatchObject({ bodyMass: 70, hands: 2, seed: 1 });
		expect(isExample(example)).toBe(true);
	});

	test('a moved go keeps the go it was easier than', () => {
		const [first, second, third, ...rest] = example.goes;
		const moved = { ...example, goes: [second!, third!, first!, ...rest] };
		expect(requestOf(moved, firstSight).observations[1]!.outcome).toEqual({
			kind: 'easier',
			than: 1
		});
		expect(isExample(moved)).toBe(false);
	});

	test('a grip that no go uses is not searched', () => {
		const goes = example.goes.filter(({ grip }) => grip === 'halfCrimp');
		expect(requestOf({ ...example, goes }, firstSight).grips).toHaveLength(1);
	});
});

describe('what cannot be searched is said in words', () => {
	test('nothing stated, a patch upside down or too large, a go easier than none', () => {
		expect(problemsOf(example, firstSight)).toEqual([]);
		expect(problemsOf({ ...example, goes: [] }, firstSight)).toEqual(['Add at least one go.']);
		const [grip] = example.grips;
		const upside = { ...example, grips: [{ ...grip!, areaFrom: 200, areaTo: 150 }] };
		expect(problemsOf(upside, firstSight)[0]).toContain('Swap the two');
		const large = { ...example, grips: [{ ...grip!, areaTo: 400 }] };
		expect(problemsOf(large, firstSight)[0]).toContain('larger than the pad');
		const goes = example.goes.slice(2);
		expect(problemsOf({ ...example, goes }, firstSight)).toEqual([
			'Go 1: choose the go that it was easier than.'
		]);
	});
});

test('every go of every fitting example opens in Explore as it was seen', () => {
	const request = requestOf({ ...example, seed: 3 }, firstSight);
	const can = findStories(request).filter((result) => result.verdict === 'can');
	expect(can.length).toBeGreaterThan(10);
	for (const { example: found } of can) {
		const trials = found.trials.map((go) => {
			const query = goQuery(go);
			expect(query, `go ${go.order} has a link`).toBeDefined();
			const { setup, notes } = readLink(query!);
			expect(notes).toEqual([]);
			expect(evaluateHang(hangOf(setup), loadOf(setup)).warnings).toEqual([]);
			return { ...go, hang: hangOf(setup), load: loadOf(setup) };
		});
		expect(unmetGoes({ ...found, trials }, request.observations)).toEqual([]);
	}
});
