import { standardGravity } from '#core/units/gravity.ts';
import { kilogramsPerPound } from '#core/units/mass.ts';
import type { Box } from './geometry.ts';
import type { ForceUnit } from './types.ts';

/** Three significant digits at most, a real minus sign, no exponent. */
export function digits(value: number): string {
	const size = Math.abs(value);
	const shown = size < 0.1 ? Number(size.toFixed(2)) : Number(size.toPrecision(3));
	return (value < 0 && shown !== 0 ? '−' : '') + String(shown);
}

export function degrees(angle: number): string {
	return `${digits((angle * 180) / Math.PI)}°`;
}

/** Newtons per unit of the screen. */
export function newtonsPer(unit: ForceUnit): number {
	return unit === 'N' ? 1 : unit === 'kgf' ? standardGravity : kilogramsPerPound * standardGravity;
}

export function force(newtons: number, unit: ForceUnit): string {
	return `${digits(newtons / newtonsPer(unit))} ${unit}`;
}

/** What a scale would read under that force; only beside newtons, where it adds something. */
export function reading(newtons: number, unit: ForceUnit): string {
	return unit === 'N' ? ` (${digits(newtons / standardGravity)} kg)` : '';
}

/** One piece of a label; a shown quantity names the core's field and carries the full SI value. */
export type Run = { text: string; quantity?: string; value?: number; soft?: boolean };
export type Lines = Run[][];

const narrow = new Set("iIjl.,:;|'!()[]ft r·°²");
const wide = new Set('mwMW%@');

/**
 * Width of a text in Source Sans 3, px, a little on the wide side. Estimated from letters and not
 * measured, so that a label stands at the same place on every machine.
 */
export function textWidth(text: string, size: number): number {
	let ems = 0;
	for (const letter of text) {
		if (narrow.has(letter)) ems += 0.33;
		else if (wide.has(letter)) ems += 0.84;
		else if (letter >= 'A' && letter <= 'Z') ems += 0.63;
		else ems += 0.53;
	}
	return ems * size;
}

export function linesBox(lines: Lines, size: number): Pick<Box, 'width' | 'height'> {
	const widths = lines.map((runs) => textWidth(runs.map((run) => run.text).join(''), size));
	return { width: Math.ceil(Math.max(...widths)) + 2, height: lines.length * size * 1.16 + 1 };
}
