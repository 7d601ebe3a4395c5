import { numberText } from '../algebra/number-text.ts';
import type { Values } from '../algebra/evaluate.ts';
import { isInRange } from './grid.ts';
import type { Quantity, Setup } from './types.ts';
import { shown } from './units.ts';

const degree = Math.PI / 180;

function rangeOf(of: Quantity): string {
	const low = shown(of.min, of.unit);
	if (of.whole) return `must be a whole number from ${of.min} to ${of.max}`;
	if (of.max >= 1e6 && of.min === 0) return of.open ? 'must be above 0' : 'must not be below 0';
	if (of.max >= 1e6) return 'is far outside anything this model can describe';
	return `must lie ${of.open ? 'above' : 'between'} ${low} ${of.open ? 'and at most' : 'and'} ${shown(of.max, of.unit)}`;
}

/** Says what is wrong with one given, and what was probably meant. */
function complaint(of: Quantity, value: number): string {
	if (!Number.isFinite(value)) return `${of.id} (${of.name}) is not a number, so it is left out.`;
	const start = `${of.id} (${of.name}) = ${numberText(value)}${of.unit === '1' ? '' : ` ${of.unit}`}`;
	if (of.unit === 'rad') {
		const meant = isInRange(of, value * degree) && Math.abs(value) > 2 * Math.PI * 0.25;
		const hint = meant
			? ` If ${numberText(value)} is in degrees, give ${numberText(value * degree)} rad.`
			: '';
		return `${start} is ${shown(value, 'rad')}; it ${rangeOf(of)}.${hint} It is left out.`;
	}
	const negative = value < 0 && of.min === 0;
	const hint = negative
		? of.unit === 'kg' || of.id.startsWith('weight')
			? ' No body has less than nothing.'
			: ' Directions are set by the drawing, so give its size.'
		: '';
	return `${start} cannot be used: it ${rangeOf(of)}.${hint} It is left out.`;
}

/** Number of single-letter changes between two words. */
function distance(a: string, b: string): number {
	let row = Array.from({ length: b.length + 1 }, (_, i) => i);
	for (let i = 1; i <= a.length; i += 1) {
		const next = [i];
		for (let j = 1; j <= b.length; j += 1)
			next.push(
				Math.min(row[j]! + 1, next[j - 1]! + 1, row[j - 1]! + (a[i - 1] === b[j - 1] ? 0 : 1))
			);
		row = next;
	}
	return row[b.length]!;
}

/** The quantity whose id is nearest to a mistyped one, if any is near. */
export function nearestId(setup: Setup, id: string): string | undefined {
	const ranked = setup.quantities
		.map((each) => ({ id: each.id, far: distance(id.toLowerCase(), each.id.toLowerCase()) }))
		.sort((a, b) => a.far - b.far);
	return ranked[0] && ranked[0].far <= Math.max(2, id.length / 3) ? ranked[0].id : undefined;
}

/** Remarks on values that are allowed but rarely meant. */
function remark(of: Quantity, value: number): string[] {
	const isFriction = of.symbol.startsWith('\\mu');
	if (isFriction && value === 0)
		return [
			`${of.id} = 0: without friction nothing here can hold by friction; check that it is meant.`
		];
	if (isFriction && value > 4)
		return [`${of.id} = ${numberText(value)} is far above any dry pair of surfaces; check it.`];
	if (of.id === 'gravity' && (value < 9 || value > 10.5))
		return [`gravity = ${numberText(value)} m/s² is not the Earth's; check that it is meant.`];
	return [];
}

/**
 * Sorts givens into those that can be used and complaints about the rest.
 * @param setup the set-up
 * @param given values by id, SI and radians
 * @returns usable values, and a sentence for each given at fault
 * Source: derived
 * Example: a slope of 25 rad is left out, with a word that 25 degrees is 0.4363 rad.
 */
export function checkGivens(setup: Setup, given: Values): { known: Values; warnings: string[] } {
	const known: Values = {};
	const warnings: string[] = [];
	for (const [id, value] of Object.entries(given)) {
		if (id === 'arrangement' || value === undefined) continue;
		const of = setup.quantities.find((each) => each.id === id);
		if (!of) {
			const near = nearestId(setup, id);
			warnings.push(
				`"${id}" is no quantity of this arrangement, so it is left out.${near ? ` Did you mean "${near}"?` : ''}`
			);
		} else if (isInRange(of, value)) {
			known[id] = value;
			warnings.push(...remark(of, value));
		} else warnings.push(complaint(of, value));
	}
	if ((known.muKinetic ?? 0) > (known.muStatic ?? Infinity))
		warnings.push(
			`muKinetic = ${numberText(known.muKinetic!)} is above muStatic = ${numberText(known.muStatic!)}: sliding friction is not stronger than the static limit; check both.`
		);
	return { known, warnings };
}
