import type { Random } from './draw.ts';
import type { Plan } from './plan.ts';
import { roundingClearance } from './thresholds.ts';
import { emptyWeighing, weighCandidate, type Weighing } from './weigh.ts';

/** A set-up met along the way: its numbers, the barely held go's margin, and how well it does. */
export type Find = { values: number[]; margin: number; least: number; met: number };

/** Moves that are tried, and how wide they are: shares of the ranges, in turn. */
const tries = 6000;
const widths = [0.3, 0.1, 0.03, 0.01, 0.003, 0.001];

/**
 * Says how much is wanting until every go is met, or how clearly all are.
 * Sum of the negative clearances; where there is none, the smallest clearance
 * @param weighing a weighed candidate
 * @returns above 0 when every go is met by more than rounding
 * Source: derived.
 * Example: clearances 0.01 and −0.02 give −0.02.
 */
export function standing({ clearance, least }: Weighing): number {
	if (least > roundingClearance) return least;
	let wanting = 0;
	for (const value of clearance) wanting += Math.min(0, value - roundingClearance);
	return wanting;
}

/**
 * Moves a candidate at random, keeping what makes it better, to see whether it can be made to fit.
 * Each try moves a few numbers by up to one width of their range; slope and forces are solved anew.
 * It finds set-ups that even drawing rarely meets; it says nothing about how rare they are.
 * @param plan the law with its addition
 * @param start the candidate that wanted least
 * @param random a seeded stream
 * @returns the best that was reached; it fits where `least` is above rounding
 * Valid for: one start; another may reach what this one does not, so not fitting is no proof.
 * Source: derived.
 * Example: constant alone never reaches the practice report, whatever the start.
 */
export function refine(plan: Plan, start: Find, random: Random): Find {
	const weighing = emptyWeighing();
	const movable = plan.anchor < 0 ? plan.slopeAt + 1 : plan.slopeAt;
	let values = [...start.values];
	let margin = start.margin;
	if (!weighCandidate(plan, values, margin, weighing)) return start;
	let best = standing(weighing);
	let { least, met } = weighing;
	let next = [...values];
	for (let attempt = 0; attempt < tries; attempt++) {
		const width = widths[attempt % widths.length]!;
		for (let index = 0; index < movable; index++) {
			const range = plan.parameters[index]!;
			next[index] = random() < 0.5 ? values[index]! : moved(values[index]!, range, width, random);
		}
		const asked = moved(margin, plan.request.ranges.barelyMargin, width, random);
		if (plan.law === 'film' && next[0]! > next[1]!) continue;
		if (!weighCandidate(plan, next, asked, weighing)) continue;
		const reached = standing(weighing);
		if (reached <= best) continue;
		best = reached;
		({ least, met } = weighing);
		margin = asked;
		[values, next] = [next, values];
	}
	return { values, margin, least, met };
}

function moved(
	value: number,
	{ from, to }: { from: number; to: number },
	width: number,
	random: Random
): number {
	const next = value + (2 * random() - 1) * width * (to - from);
	return Math.min(to, Math.max(from, next));
}
