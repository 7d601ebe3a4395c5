import { pngOf } from './png.ts';
import { fileName } from './save-file.ts';
import { standaloneSvg } from './standalone-svg.ts';
import type { MadeFile, TakeAwayProps } from './types.ts';

/** A picture on the page as a file. Browser only; an Error says in plain words why there is none. */
export async function makeFile(
	kind: 'svg' | 'png' | 'csv',
	{ name, figure, units, source, link, csv }: TakeAwayProps
): Promise<MadeFile> {
	if (kind === 'csv') {
		const body = (await csv?.()) ?? '';
		return { name: fileName(name, 'csv'), type: 'text/csv;charset=utf-8', body };
	}
	const holder = figure();
	const drawings =
		holder instanceof SVGSVGElement ? [holder] : [...(holder?.querySelectorAll('svg') ?? [])];
	const [drawing] = drawings;
	if (!holder || !drawing || drawings.some(({ viewBox }) => viewBox.baseVal.width === 0)) {
		throw new Error('The picture is not drawn yet. Wait for it, then try again.');
	}
	// A small drawing says in its label what a large one says in its caption.
	const caption =
		holder.querySelector('figcaption')?.textContent ?? drawing.getAttribute('aria-label') ?? '';
	const file = standaloneSvg(drawings, {
		title: name,
		caption: caption.trim(),
		units,
		source,
		link: link()
	});
	return kind === 'svg'
		? { name: fileName(name, 'svg'), type: 'image/svg+xml', body: file.svg }
		: { name: fileName(name, 'png'), type: 'image/png', body: await pngOf(file) };
}
