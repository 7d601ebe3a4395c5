import { formatNumber } from '#core/units/format-number.ts';

/** A number that only one page has, in the unit of its screen, as its part of the address carries it. */
export type OwnSpec = { min: number; max: number; step: number; start: number };

/**
 * Reads a page's own numbers from an address; what cannot be read is replaced by the nearest
 * sensible value, and said.
 */
export function readOwn<Key extends string>(
	specs: Record<Key, OwnSpec>,
	given: URLSearchParams
): { values: Record<Key, number>; notes: string[] } {
	const notes: string[] = [];
	const values = {} as Record<Key, number>;
	for (const key of Object.keys(specs) as Key[]) {
		const { min, max, start } = specs[key];
		const text = given.get(key);
		const value = text === null ? start : text.trim() === '' ? NaN : Number(text);
		values[key] = Number.isFinite(value) ? Math.min(max, Math.max(min, value)) : start;
		if (!Number.isFinite(value)) {
			notes.push(`“${key}” in the link is not a number; ${formatNumber(start)} is used.`);
		} else if (values[key] !== value) {
			notes.push(
				`“${key}” in the link is ${text}, outside ${formatNumber(min)} to ${formatNumber(max)}; ${formatNumber(values[key])} is used.`
			);
		}
	}
	return { values, notes };
}

/** The parts of an address that say a page's own numbers: those that differ from their start. */
export function writeOwn<Key extends string>(
	specs: Record<Key, OwnSpec>,
	values: Record<Key, number>
): [string, string][] {
	return (Object.keys(specs) as Key[])
		.filter((key) => values[key] !== specs[key].start)
		.map((key) => [key, String(Number(values[key].toPrecision(12)))]);
}

/** The starting values. */
export function startOf<Key extends string>(specs: Record<Key, OwnSpec>): Record<Key, number> {
	return readOwn(specs, new URLSearchParams()).values;
}

/** A set-up's query with a page's own parts after it. */
export function joined(query: string, own: readonly (readonly [string, string])[]): string {
	const whole = new URLSearchParams(query);
	for (const [key, value] of own) whole.set(key, value);
	return whole.toString();
}

/** An address without a page's own parts: what is left belongs to the set-up. */
export function without(given: URLSearchParams, keys: readonly string[]): string {
	const left = new URLSearchParams(given);
	for (const key of keys) left.delete(key);
	return left.toString();
}

/** The query of an address, read. */
export function queryOf(search: string): URLSearchParams {
	return new URLSearchParams(search);
}
