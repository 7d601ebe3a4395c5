import type { Quantity } from '#core/workbook/statics/types.ts';

type Named = Pick<Quantity, 'id' | 'name'>;

const escaped = (text: string) => text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');

/** The core names quantities by id, with the name beside it; a page needs the name alone. */
function named(sentence: string, { id, name }: Named): string {
	const [i, n] = [escaped(id), escaped(name)];
	let plain = sentence
		.replace(new RegExp(`\\b${i} \\(${n}\\)`, 'g'), `the ${name}`)
		.replace(new RegExp(`(?:the )?\\b${n} \\(${i}\\)`, 'g'), `the ${name}`);
	// Ids of one plain word also stand in ordinary sentences: only those followed by a sign are ids.
	const follows = /[A-Z0-9]/.test(id)
		? '\\b'
		: '(?= = | is asked| is the (?:value|bound)| cancels| or does)';
	plain = plain.replace(new RegExp(`(?<!the )\\b${i}${follows}`, 'g'), `the ${name}`);
	return plain.replace(/\bthe the /g, 'the ');
}

/**
 * Turns a sentence of the core into one for the page: names instead of ids, and angles in degrees
 * only, since the fields read degrees.
 */
export function plainWords(sentence: string, quantities: readonly Named[]): string {
	const longestFirst = [...quantities].sort((a, b) => b.id.length - a.id.length);
	const plain = longestFirst
		.reduce(named, sentence)
		.replace(/ = -?[\d.e+-]+ rad is (-?[\d.e+-]+°); it /, ' is $1; it ')
		.replace(/ If -?[\d.e+-]+ is in degrees, give -?[\d.e+-]+ rad\./, '');
	return plain.replace(/^[a-z]/, (letter) => letter.toUpperCase());
}
