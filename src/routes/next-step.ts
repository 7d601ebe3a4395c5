import { pages, subPages } from './pages.ts';

type Path = (typeof pages)[number]['path'] | (typeof subPages)[number]['path'];

/** Where a person goes from each page, and why: the first of these pages that there is. */
const steps: Record<string, readonly (readonly [path: string, words: string])[]> = {
	'/': [
		['/mechanisms/', 'every reason why load may help, hurt or cancel, at this set-up'],
		['/sources/', 'where each number and claim comes from']
	],
	'/mechanisms': [
		['/compare/', 'two people or two grips side by side'],
		['/trials/', 'find out with your own trials']
	],
	'/mechanisms/stories': [['/trials/', 'find out with your own trials']],
	'/compare': [
		['/trials/', 'find out with your own trials'],
		['/finger/', 'what goes on inside the finger']
	],
	'/finger': [
		['/rope/', 'what the rope and the pulley do'],
		['/mechanisms/', 'every reason why load may help, hurt or cancel']
	],
	'/rope': [['/trials/', 'find out with your own trials']],
	'/trials': [['/measure/', 'measure your hold, your pads and your pulley']],
	'/measure': [['/trials/', 'use what you measured in your own trials']],
	'/workbook': [['/clinic/', 'teach it, or be taught: five short lessons']],
	'/clinic': [['/workbook/', 'textbook friction with your own numbers']],
	'/sources': [['/sources/formulas/', 'every formula and its source']],
	'/sources/formulas': [['/sources/checks/', 'how the product checks itself']],
	'/sources/checks': [['/glossary/', 'the words and symbols used here']],
	'/glossary': [['/', 'set up a hang']]
};

/** The next natural step from a page (its route, without a closing slash); none where none is known. */
export function nextStep(route: string): { path: Path; words: string } | undefined {
	const known = [...pages, ...subPages].map(({ path }) => path);
	for (const [wanted, words] of steps[route] ?? []) {
		const path = known.find((path) => path === wanted);
		if (path) return { path, words };
	}
	return undefined;
}
