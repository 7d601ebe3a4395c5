import { inlinedCopy, lightColours } from './inline-styles.ts';
import { sheetLines } from './sheet-lines.ts';
import type { SheetText } from './types.ts';

const space = 'http://www.w3.org/2000/svg';
const margin = 16;
/** The page's font where the reader has it, else a plain face. */
const font = "'Source Sans 3', 'Source Sans Pro', 'Segoe UI', 'Helvetica Neue', Arial, sans-serif";

/**
 * A drawing on the page as an SVG file that stands alone: on the light ground, with caption, units,
 * source and link beneath it. Browser only.
 */
export function standaloneSvg(
	drawing: SVGSVGElement,
	text: SheetText
): { svg: string; width: number; height: number } {
	const { width: across, height: down } = drawing.viewBox.baseVal;
	const { lines, height: textHeight } = sheetLines(text, across);
	const width = Math.ceil(across + 2 * margin);
	const height = Math.ceil(down + textHeight + 2 * margin);
	const colours = new Map(lightColours());

	const picture = inlinedCopy(drawing);
	for (const { name } of [...picture.attributes]) {
		if (!/^(viewBox|fill|stroke|opacity|font)/.test(name)) picture.removeAttribute(name);
	}
	set(picture, { x: margin, y: margin, width: across, height: down, 'font-family': font });

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
		file.importNode(picture, true)
	);
	const words = add('g', {
		'font-family': font,
		fill: colours.get('--ink') ?? '#000',
		transform: `translate(${margin} ${margin + down})`
	});
	const link = add('a', { href: text.link, fill: colours.get('--link') ?? '#00f' });
	for (const { text: line, kind, y, size } of lines) {
		const written = add('text', { y: y.toFixed(1), 'font-size': size }, line);
		if (kind === 'title') written.setAttribute('font-weight', '600');
		(kind === 'link' ? link : words).append(written);
	}
	words.append(link);
	root.append(words);
	return { svg: new XMLSerializer().serializeToString(file), width, height };
}

function set(element: Element, attributes: Record<string, string | number>): void {
	for (const [name, value] of Object.entries(attributes)) element.setAttribute(name, String(value));
}
