import { parseNumber } from '#core/units/parse-number.ts';
import type { Pair } from '#core/workbook/bench-data/pairs.ts';
import { pairsFromTilts } from '#core/workbook/bench-data/tilt-coefficient.ts';

/** What a row holds: normal and limiting force; a tilt angle; or a weight and its tilt angle. */
export type BenchKind = 'pairs' | 'tilts' | 'loaded';
export type ForceUnit = 'N' | 'kg';

/** Rows as read: pairs for the fits, or angles in rad; and a sentence for each row at fault. */
export type BenchRows = { pairs: Pair[]; angles: number[]; faults: string[] };

const standardGravity = 9.80665;
const degree = Math.PI / 180;

/** Splits a row at the plainest separator it has, so that a decimal comma stays whole. */
function cells(line: string): string[] {
	const parts = /[;\t]/.test(line)
		? line.split(/[;\t]/)
		: /\s/.test(line.trim())
			? line.trim().replace(/,\s+/g, ' ').split(/\s+/)
			: line.split(',');
	return parts.map((each) => each.trim()).filter((each) => each !== '');
}

/** An angle may carry its degree sign; a single number with a comma is one decimal number. */
const angleIn = (cell: string) => parseNumber(cell.replace(/°|deg$/i, ''));

/**
 * Reads pasted or typed rows. Empty rows are skipped, and a first row of words is a heading.
 *
 * @param text - one row a line
 * @param kind - what a row holds
 * @param unit - unit of the forces; kilograms are read as their weight under standard gravity
 */
export function readRows(text: string, kind: BenchKind, unit: ForceUnit): BenchRows {
	const rows: BenchRows = { pairs: [], angles: [], faults: [] };
	const factor = unit === 'kg' ? standardGravity : 1;
	const wanted = kind === 'tilts' ? 1 : 2;
	text.split(/\r?\n/).forEach((line, index) => {
		if (line.trim() === '') return;
		const found = kind === 'tilts' ? [line.trim()] : cells(line);
		const last = found.length - 1;
		const numbers = found.map((cell, at) =>
			kind !== 'pairs' && at === last ? angleIn(cell) : parseNumber(cell)
		);
		const isHeading =
			index === 0 && numbers.every((each) => each === undefined) && !/\d/.test(line);
		if (isHeading) return;
		const complain = (why: string) =>
			rows.faults.push(`Row ${index + 1} (“${line.trim()}”): ${why}`);
		if (numbers.length !== wanted || numbers.some((each) => each === undefined)) {
			complain(wanted === 1 ? 'one angle is needed.' : 'two numbers are needed.');
			return;
		}
		const [first, second] = numbers as [number, number];
		const angle = kind === 'tilts' ? first : second;
		if (kind !== 'pairs' && !(angle > 0 && angle < 90)) {
			complain('a tilt lies above 0° and below 90°.');
			return;
		}
		if (kind === 'tilts') rows.angles.push(angle * degree);
		else if (!(first > 0))
			complain(`the ${kind === 'pairs' ? 'normal force' : 'weight'} must be above 0.`);
		else if (kind === 'loaded')
			rows.pairs.push(...pairsFromTilts([{ weight: first * factor, angle: angle * degree }]));
		else if (!(second >= 0)) complain('the limiting force must not be below 0.');
		else rows.pairs.push({ normal: first * factor, friction: second * factor });
	});
	return rows;
}
