import { mechanismMargin } from '#core/mechanisms/mechanism-margin.ts';
import { fewestOneSided, splitChance } from '#core/statistics/paired/split-chance.ts';
import { orderAndStrengthMechanisms } from '#reference/mechanisms/order-and-strength.ts';
import { rowOf } from '#reference/row-of.ts';
import { lessonGivens } from '#seeds/lessons.ts';
import { count, kilograms, percent, ratio, say } from '../say.ts';
import type { LessonText, Writing } from '../types.ts';
import { formulas } from './formulas.ts';

const given = lessonGivens.fair;
const [first, second] = given.goes;
const last = given.goes[given.goes.length - 1]!;

/** The drift of the lesson, as the core's mechanism takes it. */
export const drifting = { drift: given.drift, firstMass: first, step: second - first };

/** Everything said in the lesson on a fair test. */
export function write({ hang, mass }: Writing): LessonText {
	const { more, fewer } = given.split;
	const chance = splitChance(more, fewer).exact;
	const people = count(more + fewer);
	const margin = (m: number) => mechanismMargin('orderDrift', hang, m, drifting);
	const [clean, perfect, wide] = given.splits.map((split) => ({
		...split,
		chance: splitChance(split.more, split.fewer).exact
	})) as [Split, Split, Split];
	const order = rowOf(orderAndStrengthMechanisms, 'order-drift');
	return {
		aim: say`Order, rope side and luck can each make a load effect out of nothing. A fair test shuffles, repeats a check load, and knows beforehand how many goes it needs.`,
		situation: [
			say`Invented: ${people} people hang light, then plain, then heavy, always in that order.`,
			say`${count(more)} hold only the heavy hang, ${count(fewer)} only the light one.`
		],
		question: say`Does load help?`,
		options: [
			{ key: 'helps', says: say`Yes: ${count(more)} of ${people} is plenty` },
			{ key: 'not', says: say`No: the textbook says load cancels` },
			{ key: 'open', says: say`One cannot tell from this` }
		],
		right: 'open',
		popular: 'helps',
		mark: {
			kind: 'share',
			says: say`How often would luck alone split ${people} people at least this lopsidedly, one way or the other?`,
			from: 0,
			to: 1,
			truth: chance
		},
		reveal: [
			say`Luck alone does it in ${percent(chance, 'exact')} of such rooms: not often, and not seldom.`,
			say`Order alone can do the rest. Let the ratio grow by ${percent(given.drift)} from go to go, for whatever reason, and load do nothing: the slip margin still goes from ${ratio(margin(first), 'slipMargin')} at ${kilograms(first, mass)} to ${ratio(margin(last), 'slipMargin')} at ${kilograms(last, mass)}.`,
			say`Shuffled, the drift hits light and heavy alike. Order stays in the data as scatter, and no longer as a tale.`
		],
		tempting: say`The count is lopsided and the story is good. But load rose with the number of the go, so whatever changed along the way wears the load’s clothes; and among so few people lopsided counts are common.`,
		tryIt: {
			hang: false,
			kit: ['one coin for each pair of people', 'a sheet of paper'],
			steps: [
				say`Each pair tosses a coin ${people} times and counts heads.`,
				say`Collect how many pairs had a split at least as lopsided as ${count(more)} to ${count(fewer)}.`
			],
			expect: say`About ${percent(chance, 'exact')} of the pairs, give or take: with a fair coin and nothing behind it. Then do the room’s experiment, shuffled.`
		},
		notes: [
			say`Let those who voted yes defend it; then ask them what else changed between the first and the third go.`,
			say`Name the parts of a fair test on the board: order shuffled for each person, rope led to both sides, the first load repeated at the start, in the middle and at the end, outcomes called by someone who does not know the load, the number of goes fixed beforehand.`,
			say`${order.support} ${order.test}`,
			say`Even a clean result speaks for these people on this hold on this day.`
		],
		unknown: [
			say`How much skin drifts within one session of yours: a check load shows it, nothing else does.`,
			say`A split that luck rarely gives does not say which of the reasons is behind it: the rope’s lean follows load as faithfully as any law of skin.`
		],
		formulas,
		exercises: [
			{
				ask: say`All of ${count(clean.more)} people who differ hold only the heavy hang. How often does luck alone do that, one way or the other? And for ${count(perfect.more)}?`,
				answer: say`${percent(clean.chance, 'exact')} and ${percent(perfect.chance, 'exact')}.`
			},
			{
				ask: say`How many people must differ, all the same way, before luck alone does so in fewer than ${percent(given.rare)} of rooms?`,
				answer: say`${count(fewestOneSided(given.rare), 'pairs')}.`
			},
			{
				ask: say`${count(wide.more)} against ${count(wide.fewer)}: how often does luck alone split them at least so?`,
				answer: say`In ${percent(wide.chance, 'exact')} of rooms: this tells nothing.`
			}
		]
	};
}

type Split = { more: number; fewer: number; chance: number };
