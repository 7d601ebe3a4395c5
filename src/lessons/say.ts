import { radiansToDegrees } from '#core/units/angle.ts';
import { squareMetresToSquareMillimetres } from '#core/units/area.ts';
import { formatNumber } from '#core/units/format-number.ts';
import { massText, type MassUnit } from '#core/units/mass-text.ts';
import { pascalsToKilopascals } from '#core/units/pressure.ts';
import type { Says, Shown } from './types.ts';

/** Puts words and numbers together: say`slips at ${angle}`. */
export function say(words: TemplateStringsArray, ...numbers: (Shown | Says | string)[]): Says {
	return words.flatMap((text, at) => {
		const next = numbers[at];
		const number = next === undefined ? [] : Array.isArray(next) ? next : [next];
		return [...(text === '' ? [] : [text]), ...(number as Says)];
	});
}

/** The plain text of what is said. */
export const plain = (says: Says) =>
	says.map((part) => (typeof part === 'string' ? part : part.text)).join('');

const unbroken = '\u00a0';
const shown = (text: string, value: number, quantity?: string): Shown => ({
	text,
	value,
	quantity
});

// Each takes SI; with the name of a core result field the number counts as computed.
export const kilograms = (value: number, unit: MassUnit, quantity?: string) =>
	shown(massText(value, unit), value, quantity);
export const degrees = (value: number, quantity?: string) =>
	shown(`${formatNumber(radiansToDegrees(value))}°`, value, quantity);
export const ratio = (value: number, quantity?: string) =>
	shown(formatNumber(value), value, quantity);
export const percent = (share: number, quantity?: string) =>
	shown(`${formatNumber(share * 100, { digits: 2 })}${unbroken}%`, share, quantity);
export const newtons = (value: number, quantity?: string) =>
	shown(`${formatNumber(value)}${unbroken}N`, value, quantity);
export const kilopascals = (value: number, quantity?: string) =>
	shown(`${formatNumber(pascalsToKilopascals(value))}${unbroken}kPa`, value, quantity);
export const squareMillimetres = (value: number, quantity?: string) =>
	shown(`${formatNumber(squareMetresToSquareMillimetres(value))}${unbroken}mm²`, value, quantity);
export const millimetres = (value: number, quantity?: string) =>
	shown(`${formatNumber(value * 1000)}${unbroken}mm`, value, quantity);
export const seconds = (value: number, quantity?: string) =>
	shown(`${formatNumber(value)}${unbroken}s`, value, quantity);
export const count = (value: number, quantity?: string) => shown(String(value), value, quantity);
