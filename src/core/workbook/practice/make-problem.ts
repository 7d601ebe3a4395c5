import { uniformInt } from 'pure-rand/distribution/uniformInt';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';
import type { Values } from '../algebra/evaluate.ts';
import type { Family } from '../statics/family.ts';
import { namesUsed } from '../statics/plan.ts';
import { solveSetup } from '../statics/solve-setup.ts';
import type { Answer, Setup } from '../statics/types.ts';
import { shown } from '../statics/units.ts';
import { hintsFor, type Hint } from './hints.ts';

/** A practice problem: the same seed always gives the same one, so a seed can be shared as a link. */
export type Problem = {
	family: string;
	arrangement: number;
	seed: number;
	/** Givens in SI and radians, as they stand in the statement. */
	given: Values;
	ask: string;
	/** Sentences in our own words. */
	statement: string[];
	answer: Answer;
	hints: Hint[];
};

type Draw = (from: number, to: number) => number;

function drawGivens(setup: Setup, draw: Draw): Values {
	const given: Values = { gravity: [9.8, 9.81, 10][draw(0, 2)]! };
	for (const [id, [low, high, step]] of Object.entries(setup.practice.given)) {
		const value = low + step * draw(0, Math.round((high - low) / step));
		given[id] = Number(value.toPrecision(12));
	}
	return given;
}

/** Turns a problem round: the former answer, to three digits, is given and a given is asked. */
function turnedRound(setup: Setup, given: Values, ask: string, draw: Draw) {
	const result = solveSetup(setup, given, ask);
	const value = result.solutions[0]?.value;
	const used = namesUsed(result.steps);
	const inputs = Object.keys(given).filter((id) => id !== 'gravity' && used.has(id));
	const unknown = inputs[draw(0, Math.max(0, inputs.length - 1))];
	if (value === undefined || unknown === undefined) return undefined;
	const rest = Object.fromEntries(Object.entries(given).filter(([id]) => id !== unknown));
	const isAngle = setup.quantities.find((each) => each.id === ask)!.unit === 'rad';
	const unit = isAngle ? Math.PI / 180 : 1;
	const printed = Number((value / unit).toPrecision(3)) * unit;
	return { given: { ...rest, [ask]: printed }, ask: unknown };
}

/** One clear answer; a size below nothing (a hold force that turns round) is for the family's page. */
function isGood(answer: Answer, name: string): boolean {
	const [only, ...more] = answer.solutions;
	if (!only || more.length > 0 || only.upTo !== undefined || answer.warnings.length > 0)
		return false;
	if (only.value < 0 && !/positive|acceleration|angle|direction/.test(name)) return false;
	return Math.abs(only.value) > 1e-6 && Math.abs(only.value) < 1e6;
}

function statementOf(setup: Setup, given: Values, ask: string): string[] {
	const find = (id: string) => setup.quantities.find((each) => each.id === id)!;
	const facts = Object.entries(given)
		.filter(([id]) => id !== 'gravity')
		.map(([id, value]) => `The ${find(id).name} is ${shown(value, find(id).unit, 3)}.`);
	const field = given.gravity === undefined ? [] : [`Take g = ${given.gravity} m/s².`];
	return [setup.scene, ...facts, ...field, `Find the ${find(ask).name}.`];
}

/**
 * Makes a practice problem of a family.
 * @param family the family
 * @param seed any whole number; the same seed gives the same problem
 * @param arrangement number of an arrangement; drawn when left out
 * @returns statement, givens, answer and hints; only what the answer needs is given
 * Errors: RangeError when no arrangement has that number.
 * Source: derived
 * Example: makeProblem(incline, 1) always makes the same problem.
 */
export function makeProblem(family: Family, seed: number, arrangement?: number): Problem {
	const generator = xoroshiro128plus(seed);
	const draw: Draw = (from, to) => uniformInt(generator, from, to);
	const setup =
		arrangement === undefined
			? family.setups[draw(0, family.setups.length - 1)]
			: family.setups.find((each) => each.number === arrangement);
	if (!setup)
		throw new RangeError(
			`arrangement = ${arrangement} is none of ${family.setups.map((each) => each.number).join(', ')}`
		);
	for (let attempt = 0; attempt < 200; attempt += 1) {
		const all = drawGivens(setup, draw);
		const usual = { given: all, ask: setup.practice.ask[draw(0, setup.practice.ask.length - 1)]! };
		const turned = draw(0, 2) === 0 ? turnedRound(setup, all, usual.ask, draw) : undefined;
		const { given: more, ask } = turned ?? usual;
		const { steps } = solveSetup(setup, more, ask);
		const used = namesUsed(steps);
		const given = Object.fromEntries(Object.entries(more).filter(([id]) => used.has(id)));
		const answer = solveSetup(setup, given, ask);
		if (!isGood(answer, setup.quantities.find((each) => each.id === ask)!.name)) continue;
		return {
			...{ family: family.id, arrangement: setup.number, seed, given, ask, answer },
			statement: statementOf(setup, given, ask),
			hints: hintsFor(setup, answer)
		};
	}
	throw new RangeError(`seed = ${seed} makes no problem of "${setup.title}"`);
}
