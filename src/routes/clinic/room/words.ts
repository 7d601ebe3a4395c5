import { fewestOneSided, splitChance } from '#core/statistics/paired/split-chance.ts';
import { formatNumber } from '#core/units/format-number.ts';
import { loadNames, type Comparison } from '#state/room/analysis.ts';

/** How rare a split has to be before luck alone is a poor explanation: one in twenty, a convention. */
const rare = 0.05;
/** Above this, a split is what luck does all the time. */
const common = 0.2;

export type HeldWords = { held: string; holds: string };
export const wordsOf = { hang: { held: 'held' }, table: { held: 'stayed' } } as const;

export const percentText = (share: number) => `${formatNumber(share * 100, { digits: 2 })} %`;

const people = (count: number) => (count === 1 ? '1 person' : `${count} people`);

/** What was counted, in one or two sentences. */
export function countWords(one: Comparison, version: 'hang' | 'table'): string {
	const { table, first, second, leftAside } = one;
	const { held } = wordsOf[version];
	const [a, b] = [loadNames[first], loadNames[second]];
	const aside =
		leftAside === 0
			? ''
			: ` ${leftAside === 1 ? '1 more is' : `${leftAside} more are`} left aside: a go is missing, or ended in something other than holding or slipping.`;
	return `${people(one.people)} did both ${a} and ${b}. ${table.both + table.neither} did the same at both loads; ${table.onlySecond} ${held} only ${b}, ${table.onlyFirst} only ${a}.${aside}`;
}

/** What luck alone would do, and what may be said then. */
export function chanceWords({ table, exact, first, second }: Comparison): string {
	const differ = table.onlyFirst + table.onlySecond;
	if (differ === 0) {
		return 'Nobody did differently at the two loads, so nothing can be said about which is easier.';
	}
	const luck = `If load made no difference, luck alone would split the ${differ === 1 ? 'one' : differ} who differ${differ === 1 ? 's' : ''} at least so in ${percentText(exact)} of rooms.`;
	if (differ < fewestOneSided(rare)) {
		const best = percentText(splitChance(differ, 0).exact);
		return `${luck} With so few who differ no split could be rarer than ${best}: can’t tell yet.`;
	}
	if (exact >= common) return `${luck} That is common: can’t tell.`;
	if (exact >= rare)
		return `${luck} That is uncommon, not rare: worth repeating, not worth believing.`;
	const easier = loadNames[table.onlySecond > table.onlyFirst ? second : first];
	return `${luck} That is rare: for these people on this hold today, ${easier} was the easier load. It does not say why.`;
}

export const canShow = [
	'Whether more people hold at one load than at another, within the same people: each is their own comparison.',
	'That the order did not do it: it was shuffled, and each order came equally often.'
];
export const cannotShow = [
	'Why. A rope that leans follows the load as closely as any law of skin does; only a rope led to the other side tells them apart.',
	'That there is no effect. Few people who differ means that a real effect can hide.',
	'Anything about other holds, other days or other hands; or how large an effect is.',
	'Three comparisons from one room are three chances for luck. Light against heavy was the question; the other two are for looking.'
];
