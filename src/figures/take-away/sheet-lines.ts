import { textWidth } from '#plot/text-width.ts';
import type { SheetText } from './types.ts';

export type SheetLine = { text: string; kind: 'title' | 'text' | 'link'; y: number; size: number };

const sizes = { title: 15, text: 12, link: 11 } as const;
/** Height of a line over its size of type. */
const leading = 1.4;
/** Space before a new part, px. */
const gap = 5;

/** The text under a picture, broken into lines of a width in px; `height` is where it ends. */
export function sheetLines(
	{ title, caption, units, source, link }: SheetText,
	width: number
): { lines: SheetLine[]; height: number } {
	const lines: SheetLine[] = [];
	let y = 0;
	for (const [kind, text] of [
		['title', title],
		['text', caption],
		['text', units],
		['text', source],
		['link', link]
	] as const) {
		const size = sizes[kind];
		y += gap;
		for (const line of kind === 'link'
			? brokenLink(text, size, width)
			: wrapped(text, size, width)) {
			y += size * leading;
			lines.push({ text: line, kind, y, size });
		}
	}
	return { lines, height: y + gap };
}

/** Words into lines; a word wider than the line stands alone. */
export function wrapped(text: string, size: number, width: number): string[] {
	const lines: string[] = [];
	let line = '';
	for (const word of text.split(/\s+/).filter((word) => word !== '')) {
		const longer = line === '' ? word : `${line} ${word}`;
		if (line !== '' && textWidth(longer, size) > width) {
			lines.push(line);
			line = word;
		} else line = longer;
	}
	return line === '' ? lines : [...lines, line];
}

/** A link has no spaces: it is broken before an ampersand where one is near, else anywhere. */
export function brokenLink(link: string, size: number, width: number): string[] {
	const lines: string[] = [];
	let line = '';
	for (const piece of link.split(/(?=[&?])/).flatMap((part) => narrow(part, size, width))) {
		if (line !== '' && textWidth(line + piece, size) > width) {
			lines.push(line);
			line = piece;
		} else line += piece;
	}
	return line === '' ? lines : [...lines, line];
}

function narrow(part: string, size: number, width: number): string[] {
	if (textWidth(part, size) <= width) return [part];
	const pieces: string[] = [];
	let piece = '';
	for (const letter of part) {
		if (textWidth(piece + letter, size) > width) {
			pieces.push(piece);
			piece = letter;
		} else piece += letter;
	}
	return [...pieces, piece];
}
