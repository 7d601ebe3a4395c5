import { compile } from '../algebra/evaluate.ts';
import { parse } from '../algebra/expression.ts';

/** One way to read a written number: its value, half a unit of its last digit, its digits. */
export type Reading = { value: number; half: number; digits: number };

const superscripts = '⁰¹²³⁴⁵⁶⁷⁸⁹';
const fractions: Record<string, string> = {
	...{ '½': '1/2', '⅓': '1/3', '⅔': '2/3', '¼': '1/4', '¾': '3/4', '⅕': '1/5', '⅛': '1/8' }
};

/** Turns typographic signs into plain ones. */
export function plainSigns(text: string): string {
	let plain = text
		.trim()
		.replace(/[−–—]/g, '-')
		.replace(/\u00a0|\u202f|\u2009/g, ' ');
	plain = plain.replace(/[½⅓⅔¼¾⅕⅛]/g, (sign) => ` ${fractions[sign]!}`);
	plain = plain.replace(/10\s*([⁻⁺]?)([⁰¹²³⁴⁵⁶⁷⁸⁹]+)/g, (_, sign: string, power: string) => {
		const digits = [...power].map((each) => superscripts.indexOf(each)).join('');
		return `10^${sign === '⁻' ? '-' : ''}${digits}`;
	});
	plain = plain.replace(/√\s*\(?(\d+(?:[.,]\d+)?)\)?/g, 'sqrt($1)');
	return plain.replace(/π/g, 'pi').trim();
}

function fromDigits(whole: string, part: string, exponent: number, sign: number): Reading {
	const scale = 10 ** (exponent - part.length);
	const value = sign * Number(`${whole}.${part || '0'}e${exponent}`);
	const all = `${whole}${part}`.replace(/^0+/, '');
	if (part !== '' || exponent !== 0)
		return { value, half: scale / 2, digits: Math.max(1, all.length) };
	// Zeros at the end of a whole number may only hold the place: at least three digits are taken as meant.
	const kept = Math.min(all.length, Math.max(3, all.replace(/0+$/, '').length));
	return { value, half: 10 ** (all.length - kept) / 2, digits: Math.max(1, kept) };
}

function decimalReadings(text: string): Reading[] {
	const match = /^([+-]?)([\d.,' ]*\d)(?:\s*(?:e|[x×*·]\s*10\s*\^)\s*\(?([+-]?\d+)\)?)?$/i.exec(
		text
	);
	if (!match) return [];
	const [, minus, digits = '', power] = match;
	const sign = minus === '-' ? -1 : 1;
	const exponent = Number(power ?? 0);
	const compact = digits.replace(/[' ]/g, '');
	const marks = compact.match(/[.,]/g) ?? [];
	const make = (whole: string, part: string) => fromDigits(whole || '0', part, exponent, sign);
	if (marks.length === 0) return [make(compact, '')];
	const last = Math.max(compact.lastIndexOf('.'), compact.lastIndexOf(','));
	const mark = compact[last]!;
	const clean = (piece: string) => piece.replace(/[.,]/g, '');
	const asDecimal = make(clean(compact.slice(0, last)), compact.slice(last + 1));
	const asThousands = make(clean(compact), '');
	if (marks.filter((each) => each === mark).length > 1) return [asThousands];
	if (marks.length > 1) return [asDecimal];
	const grouped = mark === ',' && /^[1-9]\d{0,2},\d{3}$/.test(compact);
	return grouped ? [asDecimal, asThousands] : [asDecimal];
}

/**
 * Reads a number in any common form: 1.5, 1,5, 1 200, 1,200.5, 3.1e-2, 2.4 × 10^3, 3/4, 1 1/2,
 * √3/2, 2π/3.
 * @param text the number, without unit
 * @returns all readings (1,200 has two); none when it cannot be read
 * Source: derived
 * Example: readNumber('0,25') is one reading, 0.25 with half a unit 0.005 and two digits.
 */
export function readNumber(text: string): Reading[] {
	const plain = plainSigns(text);
	const decimals = decimalReadings(plain);
	if (decimals.length > 0) return decimals;
	const mixed = /^([+-]?)(\d+)\s+(\d+)\s*\/\s*(\d+)$/.exec(plain);
	const formula = mixed
		? `${mixed[1] === '-' ? '-' : ''}(${mixed[2]}+${mixed[3]}/${mixed[4]})`
		: plain
				.replace(/^\+/, '')
				.replace(/(\d),(\d)/g, '$1.$2')
				.replace(/(\d)\s*(pi|sqrt)/g, '$1*$2');
	if (!/^[-+*/^().\d\s]*(?:(?:pi|sqrt|sin|cos|tan)[-+*/^().\d\s]*)*$/.test(formula)) return [];
	try {
		const value = compile(parse(formula))({});
		return Number.isFinite(value) ? [{ value, half: Math.abs(value) * 1e-9, digits: 15 }] : [];
	} catch {
		return [];
	}
}
