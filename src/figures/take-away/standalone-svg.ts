import { inlinedCopy, lightColours } from './inline-styles.ts';
import { sheetLines } from './sheet-lines.ts';
import type { SheetText } from './types.ts';

const space = 'http://www.w3.org/2000/svg';
const margin = 16;
/** Between drawings that stand side by side, px. */
const apart = 24;
/** The words beneath a small drawing may be wider than it, px. */
const leastTextWidth = 420;
/** The page's font where the reader has it, else a plain face. */
const font = "'Source Sans 3', 'Source Sans Pro', 'Segoe UI', 'Helvetica Neue', Arial, sans-serif";

/**
 * Drawings on the page, side by side, as an SVG file that stands alone: on the light ground, with
 * caption, units, source and link beneath them. Browser only.
 */
export function standaloneSvg(
	drawings: readonly SVGSVGElement[],
	text: SheetText
): { svg: string; width: number; height: number } {
	const boxes = drawings.map(({ viewBox }) => viewBox.baseVal);
	const across = boxes.reduce((sum, { width }) => sum + width, apart * (boxes.length - 1));
	const down = Math.max(...boxes.map(({ height }) => height));
	const written = Math.max(across, leastTextWidth);
	const { lines, height: textHeight } = sheetLines(text, written);
	const width = Math.ceil(written + 2 * margin);
	const height = Math.ceil(down + textHeight + 2 * margin);
	const colours = new Map(lightColours());

	let x = margin;
	const pictures = drawings.map((drawing, at) => {
		const picture = inlinedCopy(drawing);
		for (const { name } of [...picture.attributes]) {
			if (!/^(viewBox|fill|stroke|opacity|font)/.test(name)) picture.removeAttribute(name);
		}
		const { width, height } = boxes[at]!;
		set(picture, { x, y: margin, width, height, 'font-family': font });
		x += width + apart;
		return picture;
	});

	const file = document.implementation.createDocument(space, 'svg');
	const root = file.documentElement as unknown as SVGSVGElement;
	const add = (name: string, attributes: Record<string, string | number>, content = '') => {
		const element = file.createElementNS(space, name);
		set(element, attributes);
		element.textContent = content;
		return element;
	};
	set(root, { viewBox: `0 0 ${width} ${height}`, width, height, role: 'img' });
	root.append(
		add('title', {}, text.title),
		add('desc', {}, `${text.caption} ${text.units} ${text.source}`),
		add('rect', { width, height, fill: colours.get('--sheet') ?? '#fff' }),
		...pictures.map((picture) => file.importNode(picture, true))
	);
	const words = add('g', {
		'font-family': font,
		fill: colours.get('--ink') ?? '#000',
		transform: `translate(${margin} ${margin + down})`
	});
	const link = add('a', { href: text.link, fill: colours.get('--link') ?? '#00f' });
	for (const { text: line, kind, y, size } of lines) {
		const row = add('text', { y: y.toFixed(1), 'font-size': size }, line);
		if (kind === 'title') row.setAttribute('font-weight', '600');
		(kind === 'link' ? link : words).append(row);
	}
	words.append(link);
	root.append(words);
	return { svg: new XMLSerializer().serializeToString(file), width, height };
}

function set(element: Element, attributes: Record<string, string | number>): void {
	for (const [name, value] of Object.entries(attributes)) element.setAttribute(name, String(value));
}
