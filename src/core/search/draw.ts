import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';
import type { Plan } from './plan.ts';
import { additions, lawStories, type Range } from './types.ts';

/** Gives the next number from 0 to below 1. */
export type Random = () => number;

/**
 * Opens the stream of random numbers that belongs to one law with one addition.
 * The streams are 2^64 numbers apart, so an answer depends neither on what else is searched nor on
 * the size of the slices.
 * @param seed whole number
 * @param plan the law with its addition
 * @returns the stream
 * Source: derived.
 * Example: two streams of one plan and one seed are the same.
 */
export function randomFor(seed: number, plan: Plan): Random {
	const generator = xoroshiro128plus(seed);
	const place = lawStories.indexOf(plan.law) * additions.length + additions.indexOf(plan.addition);
	// At least one jump: the first numbers of neighbouring seeds resemble each other.
	for (let jump = 0; jump <= place; jump++) generator.jump();
	return () => uniformFloat64(generator);
}

/**
 * Draws a candidate's numbers evenly from their ranges; a film's ratio is the smaller of its two.
 * @param plan the law with its addition
 * @param random the stream
 * @param values the list to fill; forces are left as they are, a slope to be solved too
 * @returns the wanted slip margin of the barely held go
 * Source: derived.
 * Example: equal ends of a range give that number.
 */
export function drawCandidate(plan: Plan, random: Random, values: number[]): number {
	const { parameters, request, slopeAt } = plan;
	for (let index = 0; index < slopeAt; index++) {
		values[index] = drawn(parameters[index]!, random);
	}
	if (plan.law === 'film' && values[0]! > values[1]!) {
		[values[0], values[1]] = [values[1]!, values[0]!];
	}
	if (plan.anchor < 0) values[slopeAt] = drawn(request.ranges.slope, random);
	return drawn(request.ranges.barelyMargin, random);
}

function drawn({ from, to }: Range, random: Random): number {
	return from + (to - from) * random();
}
