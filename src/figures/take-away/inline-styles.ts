/** What a drawing inherits, with the values an SVG file starts from. */
const inherited: Readonly<Record<string, string>> = {
	fill: 'rgb(0, 0, 0)',
	'fill-opacity': '1',
	'fill-rule': 'nonzero',
	stroke: 'none',
	'stroke-width': '1px',
	'stroke-dasharray': 'none',
	'stroke-linecap': 'butt',
	'stroke-linejoin': 'miter',
	'stroke-opacity': '1',
	'font-size': '16px',
	'font-weight': '400',
	'font-style': 'normal',
	'text-anchor': 'start',
	'paint-order': 'normal'
};
const own: Readonly<Record<string, string>> = { opacity: '1' };

/** Handles, hit areas and notes to screen readers are of no use in a file. */
const idle = 'foreignObject, script, style, [tabindex], [role="slider"], .visually-hidden';

/**
 * Copies a drawing so that it stands alone: each style as an attribute, colours as on the light
 * ground whatever the theme, and texts held to the width they have here, so that a reader without
 * the page's font sees labels where they belong. Browser only.
 */
export function inlinedCopy(drawing: SVGSVGElement): SVGSVGElement {
	const copy = drawing.cloneNode(true) as SVGSVGElement;
	copy.querySelectorAll(idle).forEach((element) => element.remove());
	for (const [name, value] of lightColours()) copy.style.setProperty(name, value);
	copy.style.setProperty('position', 'absolute');
	copy.style.setProperty('visibility', 'hidden');
	// Beside its original, every rule that holds for the original holds for the copy too.
	drawing.after(copy);
	try {
		inline(copy);
	} finally {
		copy.remove();
	}
	return copy;
}

function inline(copy: SVGSVGElement): void {
	const elements = [copy, ...copy.querySelectorAll<SVGElement>('*')];
	const styles = elements.map(stylesOf);
	const shown = elements.map((element) => getComputedStyle(element).display !== 'none');
	const lengths = elements.map(textLengthOf);
	elements.forEach((element, i) => {
		if (!shown[i] && !element.closest('defs')) {
			element.remove();
			return;
		}
		const parent = element.parentElement;
		const from = i === 0 || !parent ? inherited : styles[elements.indexOf(parent as never)]!;
		for (const { name } of [...element.attributes]) {
			if (/^(class|style|role|tabindex|aria-|data-|on)/.test(name)) element.removeAttribute(name);
		}
		for (const name of Object.keys(inherited)) keep(element, name, styles[i]![name]!, from[name]!);
		for (const [name, usual] of Object.entries(own)) keep(element, name, styles[i]![name]!, usual);
		if (element.localName === 'text') element.setAttribute('xml:space', 'preserve');
		if (lengths[i]) {
			element.setAttribute('textLength', lengths[i].toFixed(1));
			element.setAttribute('lengthAdjust', 'spacingAndGlyphs');
		}
	});
	const comments = document.createTreeWalker(copy, NodeFilter.SHOW_COMMENT);
	const found: Node[] = [];
	while (comments.nextNode()) found.push(comments.currentNode);
	found.forEach((comment) => comment.parentNode?.removeChild(comment));
}

function stylesOf(element: Element): Record<string, string> {
	const computed = getComputedStyle(element);
	return Object.fromEntries(
		[...Object.keys(inherited), ...Object.keys(own)].map((name) => [
			name,
			computed.getPropertyValue(name)
		])
	);
}

function keep(element: Element, name: string, value: string, usual: string): void {
	if (value === usual) element.removeAttribute(name);
	else element.setAttribute(name, plain(value));
}

/** `url("#a")` loses its quotes, `rgb(1, 2, 3)` becomes what every drawing program reads. */
function plain(value: string): string {
	return value.replace(/url\(["']?[^"')#]*(#[^"')]+)["']?\)/g, 'url($1)').replace(
		/rgb\((\d+), (\d+), (\d+)\)/g,
		(_, ...parts: string[]) =>
			'#' +
			parts
				.slice(0, 3)
				.map((part) => Number(part).toString(16).padStart(2, '0'))
				.join('')
	);
}

/** Width of one line of text, px; 0 for anything else. */
function textLengthOf(element: Element): number {
	const line =
		(element.localName === 'text' && !element.querySelector('tspan')) ||
		(element.localName === 'tspan' && element.parentElement?.localName === 'text');
	return line ? (element as SVGTextContentElement).getComputedTextLength() : 0;
}

/** The page's colours on its light ground, as its style sheet has them. */
export function lightColours(): [string, string][] {
	for (const sheet of document.styleSheets) {
		for (const rule of sheet.cssRules) {
			if (!(rule instanceof CSSStyleRule) || rule.selectorText !== ':root') continue;
			return [...rule.style]
				.filter((name) => name.startsWith('--'))
				.map((name) => [name, rule.style.getPropertyValue(name).trim()]);
		}
	}
	throw new Error('The page has no colours of its own to draw with.');
}
