import type { Quantity } from '#core/workbook/statics/types.ts';

type Named = Pick<Quantity, 'id' | 'name'>;

const escaped = (text: string) => text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');

/**
 * The ways in which the core names a quantity in a sentence. Ids of one plain word also stand in
 * ordinary sentences: only those in one of these places are ids.
 */
function patternOf({ id, name }: Named): string {
	const [i, n] = [escaped(id), escaped(name)];
	const placed = `(?<=to find |makes? |gives (?:a )?)${i}\\b|\\b${i}(?= = | is asked| is the (?:value|bound)| cancels| or does|, and )`;
	const bare = /[A-Z0-9]/.test(id) ? `\\b${i}\\b` : placed;
	return `\\b${i} \\(${n}\\)|(?<!\\w)${n} \\(${i}\\)|${bare}`;
}

/** In one go, so that a name that holds another's id is never touched again. */
function named(sentence: string, quantities: readonly Named[]): string {
	const longestFirst = [...quantities].sort((a, b) => b.name.length - a.name.length);
	const any = new RegExp(longestFirst.map((each) => `(${patternOf(each)})`).join('|'), 'g');
	return sentence.replace(any, (found, ...groups: unknown[]) => {
		const which = longestFirst.findIndex((_, index) => groups[index] !== undefined);
		return which < 0 ? found : `the ${longestFirst[which]!.name}`;
	});
}

/**
 * Turns a sentence of the core into one for the page: names instead of ids, and angles in degrees
 * only, since the fields read degrees.
 */
export function plainWords(sentence: string, quantities: readonly Named[]): string {
	const plain = named(sentence, quantities)
		.replace(/\b(the|[Nn]o|a|an|given) the /g, '$1 ')
		.replace(/ = -?[\d.e+-]+ rad is (-?[\d.e+-]+°); it /, ' is $1; it ')
		.replace(/ If -?[\d.e+-]+ is in degrees, give -?[\d.e+-]+ rad\./, '');
	return plain.replace(/^[a-z]/, (letter) => letter.toUpperCase());
}
