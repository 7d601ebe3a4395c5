import { cautionsOf } from './cautions.ts';
import type { Caution } from './cautions.ts';
import { chanceOfClearAnswer } from './chance-table.ts';
import type { EffectSize } from './chance-table.ts';
import type { Plan } from './types.ts';

/** What a plan can and cannot tell about one grip. */
export type GripVerdict = {
	grip: string;
	/** Trials that will be analysed: tests and checks. */
	trials: number;
	/** Heaviest over lightest planned load; null where the loads are decided on the day. */
	range: number | null;
	/** Chance of a clear answer, at best, by size of the effect. */
	chance: Record<EffectSize, number>;
	cautions: Caution[];
};

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
	return plan.choice.grips.map((choice) => {
		const rows = plan.trials.filter((row) => row.grip === choice.grip && row.kind !== 'warm-up');
		const loads = rows.flatMap(({ load }) => load ?? []);
		const range = loads.length < rows.length ? null : Math.max(...loads) / Math.min(...loads);
		// Loads spread evenly need about twice the trials of two ends.
		const worth = new Set(loads).size > 2 ? rows.length / 2 : rows.length;
		const chance = (effect: EffectSize) => chanceOfClearAnswer(worth, range ?? 1, effect);
		return {
			grip: choice.grip,
			trials: rows.length,
			range,
			chance: { small: chance('small'), medium: chance('medium'), large: chance('large') },
			cautions: cautionsOf(plan, choice, rows, range)
		};
	});
}
