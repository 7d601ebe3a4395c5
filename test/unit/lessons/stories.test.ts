import { describe, expect, test } from 'vitest';
import { lessonOf, lessons } from '#lessons/index.ts';
import { plain } from '#lessons/say.ts';
import { session, sessionMinutes } from '#lessons/session.ts';
import { lessonHangs } from '#state/lesson/lesson-setup.ts';
import { within } from '#test/within.ts';

// What each lesson claims must follow from its set-up: were the seeds changed, the story must still be true.
const written = (key: string) => {
	const lesson = lessonOf(key)!;
	return lesson.write({ ...lessonHangs(lesson.fields), mass: 'kg' });
};
const valuesOf = (says: readonly unknown[], quantity: string) =>
	(says as { quantity?: string; value: number }[])
		.filter((part) => part.quantity === quantity)
		.map(({ value }) => value);

describe('the stories hold', () => {
	test('a: the margin is the same before and after, and the slip slope is atan of the ratio', () => {
		const { reveal } = written('cancels');
		const [before, after] = valuesOf(reveal[0]!, 'slipMargin');
		within(before!, after!, { relative: 1e-12 });
		within(valuesOf(reveal[2]!, 'breaks')[0]!, Math.atan(0.64), { absolute: 1e-9 });
	});

	test('b: the window’s lower end is a slip, where tan(σ + δ) reaches the ratio', () => {
		const { mark, reveal } = written('rope');
		const edge = mark?.kind === 'load' ? mark.truth! : NaN;
		// By hand: H = (70 − m) g tan 10°, tan δ = H/(m g), 31° + δ = atan 0.64.
		const tilt = Math.atan(((70 - edge) / edge) * Math.tan((10 * Math.PI) / 180));
		within((31 * Math.PI) / 180 + tilt, Math.atan(0.64), { absolute: 1e-8 });
		expect(plain(reveal[0]!)).toContain('60.3\u00a0kg');
		expect(plain(reveal[2]!)).toMatch(/toward the wall instead, every load up to/);
	});

	test('c: the computed curve falls, and the film’s change is up', () => {
		const { mark, reveal } = written('pressure');
		const truth = mark?.kind === 'curve' ? mark.truth : [];
		expect(truth.length).toBeGreaterThan(4);
		truth.slice(1).forEach((margin, at) => expect(margin).toBeLessThan(truth[at]!));
		expect(valuesOf(reveal[1]!, 'slipMargin')[0]).toBeGreaterThan(0);
		const [whole, half] = valuesOf(reveal[2]!, 'slipMargin');
		expect(half).toBeLessThan(whole!);
	});

	test('d: opened, the window moves up as a whole', () => {
		const { situation, reveal } = written('window');
		const [low, high] = [
			valuesOf(situation[1]!, 'window.from')[0]!,
			valuesOf(situation[1]!, 'window.to')[0]!
		];
		expect(valuesOf(reveal[0]!, 'window.from')[0]).toBeGreaterThan(low);
		expect(valuesOf(reveal[0]!, 'window.to')[0]).toBeGreaterThan(high);
		expect(plain(reveal[0]!)).toMatch(/small patch held; the wide one slips/);
		expect(valuesOf(reveal[2]!, 'window.to')[0]).toBeLessThan(high);
	});

	test('e: luck alone does it in about one room in ten, and drift raises the margin by itself', () => {
		const { reveal } = written('fair');
		within(valuesOf(reveal[0]!, 'exact')[0]!, 0.109375, { absolute: 1e-12 });
		const [first, last] = valuesOf(reveal[1]!, 'slipMargin');
		within(last! / first!, Math.exp(0.03 * 3), { relative: 1e-12 });
	});

	test('pounds say pounds', () => {
		const lesson = lessonOf('rope')!;
		const text = lesson.write({ ...lessonHangs(lesson.fields), mass: 'lb' });
		expect(plain(text.reveal[0]!)).toContain('133\u00a0lb');
	});
});

test('the session takes 45 minutes and holds every lesson once', () => {
	expect(sessionMinutes).toBe(45);
	expect(session.flatMap(({ lesson }) => lesson ?? [])).toEqual(lessons.map(({ key }) => key));
});
