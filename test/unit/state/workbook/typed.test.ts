import { describe, expect, test } from 'vitest';
import { levelFloor } from '#core/workbook/level-floor/level-floor.ts';
import { incline } from '#core/workbook/incline/incline.ts';
import { plainWords } from '#state/workbook/plain-words.ts';
import { ProblemState } from '#state/workbook/problem.svelte.ts';
import { readTyped, textOf } from '#state/workbook/typed.ts';
import { within } from '#test/within.ts';

const angle = { unit: 'rad', name: 'slope' } as const;
const force = { unit: 'N', name: 'push' } as const;

describe('what is typed into a field', () => {
	test('a bare angle is in degrees; a written unit counts; a comma may be decimal', () => {
		within(readTyped('30', angle).value!, Math.PI / 6, { absolute: 1e-12 });
		within(readTyped('0.5 rad', angle).value!, 0.5, { absolute: 1e-12 });
		within(readTyped('2,5 kN', force).value!, 2500, { absolute: 1e-9 });
		// 1 lb = 0.45359237 kg exactly, standard gravity 9.80665 m/s² exactly (NIST SP 811).
		within(readTyped('10 lb', force).value!, 44.482216152605, { relative: 1e-12 });
	});
	test('faults name the unit at fault; nothing typed is nothing given', () => {
		expect(readTyped('20 kg', force).fault).toContain('measures a mass');
		expect(readTyped('five', force).fault).toContain('five');
		expect(readTyped('', force)).toEqual({});
	});
	test('a number with two readings, and an angle that looks like radians, are remarked on', () => {
		expect(readTyped('1,200', force).note).toContain('1200');
		expect(readTyped('0.52', angle).note).toContain('degrees');
	});
	test('values are shown in the field’s unit', () => {
		expect(textOf(Math.PI / 6, 'rad')).toBe('30');
		expect(textOf(9.80665, 'm/s²')).toBe('9.80665');
		expect(textOf(2.5e-4, 'm²')).toBe('250');
		within(readTyped('250', { unit: 'm²', name: 'area' }).value!, 2.5e-4, { relative: 1e-12 });
		within(readTyped('2,5 cm²', { unit: 'm²', name: 'area' }).value!, 2.5e-4, { relative: 1e-12 });
		within(readTyped('50', { unit: 'Pa', name: 'p' }).value!, 5e4, { relative: 1e-12 });
	});
});

describe('sentences for the page', () => {
	const { quantities } = levelFloor;
	test('ids become names; ordinary words stay', () => {
		expect(plainWords('muStatic = 0: without friction nothing here can hold.', quantities)).toBe(
			'The static friction coefficient = 0: without friction nothing here can hold.'
		);
		expect(plainWords('The level push is below the force of it.', quantities)).toBe(
			'The level push is below the force of it.'
		);
		expect(plainWords('Give mass (mass), or weight (weight).', quantities)).toBe(
			'Give the mass, or the weight.'
		);
	});
	test('no warning on the page shows an id in capitals and small letters', () => {
		const problem = new ProblemState(incline);
		const sentences: string[] = [];
		for (const ask of ['friction', 'muStatic', 'holdForce', 'force'])
			for (const texts of [{}, { slope: '100', mass: '-2' }, { muStatic: '0', slope: '20' }]) {
				problem.texts = texts as Record<string, string>;
				problem.ask = ask;
				sentences.push(...problem.warnings, problem.because);
			}
		expect(sentences.length).toBeGreaterThan(12);
		for (const each of sentences) expect(each).not.toMatch(/\b[a-z]+[A-Z]\w*/);
		expect(sentences.join(' ')).toContain('The slope is 100°; it must lie between 0° and 90°');
	});
});

describe('a problem on the page', () => {
	test('solves a published example from what is typed', () => {
		// OpenStax, University Physics volume 1, example 6.10: 20.0 kg crate, 0.700: 137 N.
		const problem = new ProblemState(levelFloor);
		problem.open('v=1&a=1&ask=startForce&mass=20&muStatic=0,700&gravity=9.80');
		within(problem.answer.solutions[0]!.value, 137, { absolute: 0.5 });
		expect(problem.notes).toEqual([]);
	});
	test('bad text keeps the last drawing, marked stale', () => {
		const problem = new ProblemState(levelFloor);
		expect(problem.drawing.stale).toBe(false);
		const before = problem.drawing.diagram;
		problem.type('mass', 'heavy');
		expect(problem.hasFault).toBe(true);
		expect(problem.drawing).toEqual({ diagram: before, stale: true });
	});
	test('every arrangement opens with an example that has an answer and a drawing', async () => {
		const { workbook } = await import('#core/workbook/workbook.ts');
		let count = 0;
		for (const family of workbook)
			for (const { number, title } of family.setups) {
				const problem = new ProblemState(family);
				problem.choose(number);
				expect(problem.answer.solutions.length, title).toBeGreaterThan(0);
				expect(problem.warnings, title).toEqual([]);
				count += 1;
			}
		expect(count).toBeGreaterThanOrEqual(40);
	});
	test('what a link does not fit is said', () => {
		const problem = new ProblemState(levelFloor);
		problem.open('v=1&a=77&ask=moon&mass=20&sun=1');
		expect(problem.notes).toHaveLength(3);
		expect(problem.arrangement).toBe(1);
		expect(problem.texts).toEqual({ mass: '20' });
	});
});
