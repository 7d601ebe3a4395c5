import { TANGLE_LIMIT, worst } from './blocks.ts';
import type { Plan, PlannedTrial, RopeSide } from './types.ts';

export type CautionCode =
	| 'too-few'
	| 'large-effects-only'
	| 'range-narrow'
	| 'one-load'
	| 'loads-spread'
	| 'rope-one-side'
	| 'rope-not-moved'
	| 'tangled'
	| 'one-block'
	| 'up-and-down'
	| 'above-guess';

/** Something a plan cannot tell, in words for people. */
export type Caution = { code: CautionCode; text: string };

/**
 * Lists what a plan cannot tell about one grip.
 *
 * @param plan a plan from `makePlan`
 * @param grip the grip
 * @param rows its trials after the warm-up, one or more
 * @param range heaviest over lightest load, or null where loads are decided on the day
 * @returns cautions; none for a plan that is good in every respect looked at
 * Source: derived
 * Example: six trials → 'too-few' among them
 */
export function cautionsOf(
	plan: Plan,
	{ grip, bestGuess }: { grip: string; bestGuess: number },
	rows: readonly PlannedTrial[],
	range: number | null
): Caution[] {
	const { design, repeats } = plan.choice;
	const loads = [...new Set(rows.flatMap(({ load }) => load ?? []))];
	const sides = new Set<RopeSide>(rows.map(({ ropeSide }) => ropeSide));
	const tangled = worst(plan.tangle.grips.find((one) => one.grip === grip)!);
	const many = capital(counted(rows.length));
	const all: [CautionCode, boolean, string][] = [
		[
			'too-few',
			rows.length < 10,
			`${many} cannot separate these explanations. Even a perfect split of 3 and 3 happens by luck 1 time in 10.`
		],
		[
			'large-effects-only',
			rows.length >= 10 && rows.length < 20,
			`${many} can show a large effect only; 20 to 40 well-placed trials are needed for most.`
		],
		['one-load', range === 1, 'All loads are alike: nothing can be said about load.'],
		[
			'range-narrow',
			range !== null && range > 1 && range < 1.5,
			'Loads are too alike to show a trend. Spread them by half or more.'
		],
		[
			'loads-spread',
			range !== null && loads.length > 2,
			'Loads between the two ends can show a bend, and cost about twice as many trials.'
		],
		[
			'rope-not-moved',
			sides.size === 1 && sides.has('plumb'),
			'The rope is never moved, so it must hang plumb at every load.'
		],
		[
			'rope-one-side',
			sides.size === 1 && !sides.has('plumb'),
			'A rope that is always off to the same side looks just like better grip under load. Swap sides.'
		],
		[
			'tangled',
			range !== null && tangled >= TANGLE_LIMIT,
			`Load or rope side stays tangled with order (${tangled.toFixed(2)}). More blocks would help.`
		],
		[
			'one-block',
			design === 'shuffled' && repeats === 1,
			'Each hang comes once: the spread from go to go cannot be seen.'
		],
		[
			'up-and-down',
			design === 'up-and-down',
			'Up-and-down finds the load at which the fingers open. It says almost nothing about slipping.'
		],
		[
			'above-guess',
			loads.some((load) => load > bestGuess),
			'Some loads lie above the best guess of the limit: expect to stop there.'
		]
	];
	return all.flatMap(([code, applies, text]) => (applies ? { code, text } : []));
}

function counted(trials: number): string {
	const words = ['no', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine'];
	return `${words[trials] ?? trials} ${trials === 1 ? 'trial' : 'trials'}`;
}

function capital(text: string): string {
	return text.charAt(0).toUpperCase() + text.slice(1);
}
