import type { Values } from '../algebra/evaluate.ts';
import { chooseSetup, type Family } from '../statics/family.ts';
import { solveSetup } from '../statics/solve-setup.ts';
import type { Unit } from '../statics/types.ts';
import { workingLines, type WorkingLine } from '../statics/working.ts';
import { slipCatalogue } from './catalogue.ts';
import { parseAnswer, type AnswerReading } from './parse-answer.ts';
import type { Slip } from './slip.ts';

/** A slip that fits an answer, with the step where it happened as it should read. */
export type MatchedSlip = Slip & { line?: WorkingLine };

/** What the check says about an answer. */
export type CheckedAnswer = {
	verdict: 'right' | 'close' | 'slip' | 'unmatched' | 'unreadable' | 'no answer';
	/** One plain sentence; never "wrong" alone. */
	sentence: string;
	right: number[];
	unit: Unit;
	slips: MatchedSlip[];
};

const fits = (reading: AnswerReading, value: number) =>
	Math.abs(reading.value - value) <= reading.half * (1 + 1e-6) + 1e-9 * Math.abs(value);

/** How many answers' worth of digits a slip needs before it is named. */
const fewestDigits = 3;

const matched = (slips: Slip[], readings: AnswerReading[]): Slip[] =>
	slips.filter(({ value }) => readings.some((reading) => fits(reading, value)));

/**
 * Compares a student's answer with the right one, to the digits given; if it differs, with the
 * slips of this very problem.
 * @param family the family
 * @param given the problem's givens, SI and radians
 * @param ask id of the asked quantity
 * @param text the answer as typed, with or without unit
 * @returns verdict, sentence and matching slips; `close` means within 1 %, as rounding on the way makes it
 * Errors: RangeError when `ask` is no quantity of the arrangement.
 * Source: derived
 * Example: for a 20 kg crate with coefficient 0.7, "93.5 N" (kinetic coefficient, say) names its slip.
 */
export function checkAnswer(
	family: Family,
	given: Values,
	ask: string,
	text: string
): CheckedAnswer {
	const { setup } = chooseSetup(family.setups, given, ask);
	const answer = solveSetup(setup, given, ask);
	const { unit } = setup.quantities.find((each) => each.id === ask)!;
	const right = answer.solutions.map(({ value }) => value);
	const result = (
		verdict: CheckedAnswer['verdict'],
		sentence: string,
		slips: MatchedSlip[] = []
	): CheckedAnswer => ({ verdict, sentence, right, unit, slips });
	const { readings, fault } = parseAnswer(text, unit);
	if (fault) return result('unreadable', fault);
	if (right.length === 0)
		return result('no answer', `There is nothing to compare with: ${answer.because}`);
	const inStretch = answer.solutions.some(
		({ value, upTo }) =>
			upTo !== undefined && readings.some((r) => r.value >= value && r.value <= upTo)
	);
	if (inStretch || right.some((value) => readings.some((reading) => fits(reading, value))))
		return result('right', 'This agrees with the right answer to the digits given.');
	const lines = workingLines(setup, answer);
	const found = matched(slipCatalogue(setup, given, ask, answer), readings).map(
		(slip): MatchedSlip => {
			const line = lines.find((each) => each.gives === slip.step);
			return line ? { ...slip, line } : slip;
		}
	);
	const words = found.map((slip) => slip.words).join('; or ');
	const isClose = right.some((value) =>
		readings.some((reading) => Math.abs(reading.value - value) <= 0.01 * Math.abs(value))
	);
	if (isClose)
		return result(
			'close',
			`This is within 1 % of the right answer: ${words || 'something was rounded on the way'}.`,
			found
		);
	if (found.length === 0)
		return result(
			'unmatched',
			'This differs from the right answer, and no common slip leads to it.'
		);
	const few = readings.every((reading) => reading.digits < fewestDigits);
	return result(
		'slip',
		few
			? `With so few digits this is only a guess: ${words}.`
			: `This is what comes out when ${words}.`,
		found
	);
}
