import {
	choiceKeys,
	choices,
	firstSight,
	flags,
	isAllowed,
	mended,
	nearestAllowed,
	numberKeys,
	numberSpecs,
	type Setup
} from './setup.ts';

/** The version that links are written in. Older ones are read for ever. */
export const linkVersion = 1;

/**
 * Writes a set-up as the query of a link: `v=1` and each field that differs from first sight.
 * Numbers are written in the units of `Setup`, in full.
 */
export function writeLink(setup: Setup): string {
	const query = new URLSearchParams({ v: String(linkVersion) });
	for (const key of Object.keys(firstSight) as (keyof Setup)[]) {
		const value = setup[key];
		if (value === firstSight[key]) continue;
		query.set(key, typeof value === 'boolean' ? (value ? '1' : '0') : written(value));
	}
	return query.toString();
}

/** Twelve digits: enough for every step of every field, without the dust of binary fractions. */
function written(value: number | string): string {
	return typeof value === 'number' ? String(Number(value.toPrecision(12))) : value;
}

/**
 * Reads a link's query. What cannot be read is replaced by the nearest sensible value, and said.
 *
 * @param query - what follows the question mark
 * @returns the set-up, and a plain sentence for each thing that was not as written
 */
export function readLink(query: string): { setup: Setup; notes: string[] } {
	const given = new URLSearchParams(query);
	const notes: string[] = [];
	const setup: Setup = { ...firstSight };
	if ([...given.keys()].length === 0) return { setup, notes };

	const version = given.get('v');
	if (version === null) {
		notes.push('This link does not say which version wrote it; it is read as version 1.');
	} else if (!/^\d+$/.test(version)) {
		notes.push('This link’s version cannot be read; it is read as version 1.');
	} else if (Number(version) > linkVersion) {
		notes.push(
			'This link was written by a newer version of this page. What is known here is used; reload the page to get the newest version.'
		);
	}
	for (const key of numberKeys) {
		const text = given.get(key);
		if (text === null) continue;
		const value = text.trim() === '' ? NaN : Number(text);
		if (!Number.isFinite(value)) {
			notes.push(`“${key}” in the link is not a number; ${written(setup[key])} is used.`);
		} else if (isAllowed(key, value)) {
			setup[key] = value;
		} else {
			setup[key] = nearestAllowed(key, value);
			const { min, max } = numberSpecs[key];
			notes.push(
				`“${key}” in the link is ${text}, outside ${min} to ${max}; ${written(setup[key])} is used.`
			);
		}
	}
	for (const key of choiceKeys) {
		const text = given.get(key);
		if (text === null) continue;
		if ((choices[key] as readonly string[]).includes(text)) Object.assign(setup, { [key]: text });
		else notes.push(`“${key}” in the link is not known here; “${setup[key]}” is used.`);
	}
	for (const key of flags) {
		const text = given.get(key);
		if (text !== null) setup[key] = text === '1';
	}
	const known = new Set<string>(['v', ...Object.keys(firstSight)]);
	const strange = [...new Set(given.keys())].filter((key) => !known.has(key));
	if (strange.length > 0) {
		notes.push(
			`The link has ${strange.length === 1 ? 'a part' : `${strange.length} parts`} this page does not know; ${strange.length === 1 ? 'it is' : 'they are'} left aside.`
		);
	}
	const whole = mended(setup);
	if (whole.change !== setup.change) {
		notes.push('The link takes away more load than there is; the lightest hang is shown.');
	}
	return { setup: whole, notes };
}
