import { describe, expect, test } from 'vitest';
import { lessons } from '#lessons/index.ts';
import { lessonHangs } from '#state/lesson/lesson-setup.ts';
import {
	commandOf,
	revealAt,
	stepsOf
} from '../../../../src/routes/clinic/[lesson]/present/steps.ts';
import { LessonView } from '../../../../src/routes/clinic/parts/lesson-view.svelte.ts';
import { subPages } from '../../../../src/routes/pages.ts';

const key = (name: string, code = '', shiftKey = false) => ({ key: name, code, shiftKey });

describe('keys of the presenter view', () => {
	test('a clicker turns the page even from a slider', () => {
		expect(commandOf(key('PageDown'), true)).toBe('next');
		expect(commandOf(key('PageUp'), true)).toBe('back');
	});
	test('arrows, letters and digits belong to a field that has the focus', () => {
		for (const one of [key('ArrowRight'), key('r'), key('f'), key('2', 'Digit2'), key('Escape')]) {
			expect(commandOf(one, false)).toBeDefined();
			expect(commandOf(one, true)).toBeUndefined();
		}
	});
	test('digits vote, with shift they take back', () => {
		expect(commandOf(key('2', 'Digit2'), false)).toEqual({ vote: 1, by: 1 });
		expect(commandOf(key('"', 'Digit2', true), false)).toEqual({ vote: 1, by: -1 });
		expect(commandOf(key('0', 'Digit0'), false)).toBeUndefined();
	});
});

describe.each(lessons)('screens of $key', (lesson) => {
	const text = lesson.write({ ...lessonHangs(lesson.fields), mass: 'kg' });
	const steps = stepsOf(lesson, text);
	test('a figure first, then the question, then the reveal of every picture', () => {
		expect(steps.slice(0, 2).map(({ kind }) => kind)).toEqual(['figure', 'ask']);
		expect(revealAt(steps)).toBeGreaterThan(1);
		const shown = steps.flatMap((step) => (step.kind === 'reveal' ? [step.picture] : []));
		expect(new Set(shown)).toEqual(new Set(lesson.pictures.map((one) => one.key)));
		expect(shown[0]).toBe(lesson.shown);
		expect(steps.at(-1)!.kind).toBe('end');
	});
	test('the question’s picture is the force diagram, of a hang that does not slip yet', () => {
		const bench = new LessonView(lesson).asked;
		expect(lesson.picture('forces', bench).kind).toBe('forces');
		expect(bench.contact.slipMargin).toBeGreaterThan(1);
	});
	test('its three pages are on the list that the browser tests walk', () => {
		for (const ending of ['', 'present/', 'handout/']) {
			expect(subPages.map(({ path }) => path)).toContain(`/clinic/${lesson.key}/${ending}`);
		}
	});
});
