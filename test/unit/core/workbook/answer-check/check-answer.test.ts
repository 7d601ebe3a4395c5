import { describe, expect, test } from 'vitest';
import { checkAnswer } from '#core/workbook/answer-check/check-answer.ts';
import { workbook } from '#core/workbook/workbook.ts';

const family = (id: string) => workbook.find((each) => each.id === id)!;
const crate = { mass: 20, muStatic: 0.7, muKinetic: 0.6, gravity: 9.8, force: 120 };
const check = (text: string, ask = 'friction', given: Record<string, number> = crate) =>
	checkAnswer(family('level-floor'), given, ask, text);
const degree = Math.PI / 180;

describe('answer check', () => {
	test.each(['120 N', '120', '0.12 kN', '120.0 N', '26.98 lb', '1.20e2 N'])(
		'%s is right',
		(text) => {
			expect(check(text).verdict).toBe('right');
		}
	);

	test('friction taken as μN at rest is named, with the step as it should read', () => {
		const { verdict, sentence, slips } = check('137 N');
		expect(verdict).toBe('slip');
		expect(sentence).toMatch(
			/friction was taken as μN although the body rests|greatest static friction/
		);
		const slip = slips.find((each) => each.slip === 'friction-at-its-limit-at-rest')!;
		expect(slip.step).toBe('friction');
		expect(slip.line?.symbols).toMatch(/\\begin\{cases\}/);
	});

	test('the sine taken for the tangent in a tilt test', () => {
		const given = { rise: 0.05, boardLength: 0.235, arrangement: 3 };
		const { slips } = checkAnswer(family('incline'), given, 'muStatic', '0.213');
		expect(slips.map((each) => each.slip)).toContain('sine-for-tangent');
	});

	test('the two answers of a rope-and-feet problem swapped', () => {
		const given = { mass: 52, ropeAngle: 31 * degree, legAngle: 15 * degree, gravity: 9.8 };
		const { verdict, sentence } = checkAnswer(family('pressing'), given, 'tension', '273 N');
		expect(verdict).toBe('slip');
		expect(sentence).toMatch(/this is the force in the legs, not the tension/);
	});

	test('an inverse not taken, a rounded e, degrees as radians', () => {
		const repose = checkAnswer(family('incline'), { muStatic: 0.3 }, 'reposeAngle', '0.300 °');
		expect(repose.slips.map((each) => each.slip)).toContain('inverse-not-taken');
		const load = { load: 1000, turns: 3, mu: 0.3 };
		const rounded = checkAnswer(family('belt'), load, 'holdForce', '3.502492 N');
		expect([rounded.verdict, rounded.slips[0]!.slip]).toEqual(['close', 'e-rounded']);
		const slope = { mass: 10, slope: 30 * degree, muStatic: 0.4, gravity: 9.8 };
		const wrong = 98 * (Math.sin(30) + 0.4 * Math.cos(30));
		const { slips } = checkAnswer(
			family('incline'),
			slope,
			'startUpForce',
			`${wrong.toFixed(2)} N`
		);
		expect(slips.map((each) => each.slip)).toContain('degrees-as-radians');
	});

	test('rounding on the way is called close, not wrong', () => {
		expect(check('3.10 m/s^2', 'acceleration', { ...crate, force: 180 }).verdict).toBe('close');
		expect(check('3.11 m/s^2', 'acceleration', { ...crate, force: 180 }).verdict).toBe('close');
	});

	test('when no slip fits it says so', () => {
		const { verdict, sentence } = check('61.7 N');
		expect(verdict).toBe('unmatched');
		expect(sentence).toMatch(/no common slip leads to it/);
	});

	test('few digits are called a guess', () => {
		expect(
			check('98 N', 'startForce', { mass: 20, muStatic: 0.7, muKinetic: 0.5, gravity: 9.8 })
				.sentence
		).toMatch(/only a guess/);
	});

	test('a unit of another kind is unreadable, a problem without answer says so', () => {
		expect(check('12 kg').verdict).toBe('unreadable');
		expect(check('12 N', 'startForce', { mass: 3 }).verdict).toBe('no answer');
	});

	test('where every value fits, any of them is right', () => {
		expect(check('55 N', 'force', { ...crate, force: 0, acceleration: 0 }).verdict).toBe('right');
	});
});
