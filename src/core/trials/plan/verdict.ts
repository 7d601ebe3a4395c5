import { TANGLE_LIMIT, worst } from './blocks.ts';
import { chanceOfClearAnswer } from './chance-table.ts';
import type { EffectSize } from './chance-table.ts';
import type { Plan, RopeSide } from './types.ts';

/** What a plan can and cannot tell about one grip. */
export type GripVerdict = {
	grip: string;
	/** Trials that will be analysed: tests and checks. */
	trials: number;
	/** Heaviest over lightest planned load; null where the loads are decided on the day. */
	range: number | null;
	/** Chance of a clear answer, at best, by size of the effect. */
	chance: Record<EffectSize, number>;
	cautions: { code: VerdictCode; text: string }[];
};

export type VerdictCode =
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

/**
 * Says, before any hang, what a plan can and cannot tell about each of its grips.
 *
 * @param plan a plan from `makePlan`
 * @returns one verdict a grip, in the plan's order
 * Valid for: the cautions of our own simulations: one person, one surface, one day
 * Source: derived
 * Example: six trials with one grip → a caution 'too-few'
 */
export function planVerdict(plan: Plan): GripVerdict[] {
	return plan.choice.grips.map(({ grip, bestGuess }) => {
		const rows = plan.trials.filter((row) => row.grip === grip && row.kind !== 'warm-up');
		const loads = [...new Set(rows.flatMap(({ load }) => load ?? []))];
		const decided = rows.every(({ load }) => load !== null);
		const range = decided ? Math.max(...loads) / Math.min(...loads) : null;
		// Loads spread evenly need about twice the trials of two ends.
		const worth = loads.length > 2 ? rows.length / 2 : rows.length;
		const chance = (effect: EffectSize) => chanceOfClearAnswer(worth, range ?? 1, effect);
		const cautions: GripVerdict['cautions'] = [];
		const say = (code: VerdictCode, text: string) => cautions.push({ code, text });

		if (rows.length < 10) {
			say(
				'too-few',
				`${capital(counted(rows.length))} cannot separate these explanations. Even a perfect split of 3 and 3 happens by luck 1 time in 10.`
			);
		} else if (rows.length < 20) {
			say(
				'large-effects-only',
				`${capital(counted(rows.length))} can show a large effect only; 20 to 40 well-placed trials are needed for most.`
			);
		}
		if (range === 1) say('one-load', 'All loads are alike: nothing can be said about load.');
		else if (range !== null && range < 1.5) {
			say('range-narrow', 'Loads are too alike to show a trend. Spread them by half or more.');
		}
		if (decided && loads.length > 2) {
			say(
				'loads-spread',
				'Loads between the two ends can show a bend, and cost about twice as many trials.'
			);
		}
		const sides = new Set<RopeSide>(rows.map(({ ropeSide }) => ropeSide));
		if (sides.size === 1) {
			if (sides.has('plumb')) {
				say('rope-not-moved', 'The rope is never moved, so it must hang plumb at every load.');
			} else {
				say(
					'rope-one-side',
					'A rope that is always off to the same side looks just like better grip under load. Swap sides.'
				);
			}
		}
		const tangle = plan.tangle.grips.find((one) => one.grip === grip)!;
		if (decided && worst(tangle) >= TANGLE_LIMIT) {
			say(
				'tangled',
				`Load or rope side stays tangled with order (${worst(tangle).toFixed(2)}). More blocks would help.`
			);
		}
		if (plan.choice.design === 'shuffled' && plan.choice.repeats === 1) {
			say('one-block', 'Each hang comes once: the spread from go to go cannot be seen.');
		}
		if (plan.choice.design === 'up-and-down') {
			say(
				'up-and-down',
				'Up-and-down finds the load at which the fingers open. It says almost nothing about slipping.'
			);
		}
		if (loads.some((load) => load > bestGuess)) {
			say('above-guess', 'Some loads lie above the best guess of the limit: expect to stop there.');
		}
		return {
			grip,
			trials: rows.length,
			range,
			chance: { small: chance('small'), medium: chance('medium'), large: chance('large') },
			cautions
		};
	});
}

function counted(trials: number): string {
	const words = ['no', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine'];
	return `${words[trials] ?? trials} ${trials === 1 ? 'trial' : 'trials'}`;
}

function capital(text: string): string {
	return text.charAt(0).toUpperCase() + text.slice(1);
}
