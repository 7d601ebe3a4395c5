import { pages, subPages } from './pages.ts';

/** One of the pages that there are; their addresses are checked below, when a step is taken. */
type Path = (typeof pages)[number]['path'];

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
	'/trials': [
		['/trials/plan/', 'plan a fair session'],
		['/measure/', 'measure your hold, your pads and your pulley']
	],
	'/trials/plan': [['/trials/notebook/', 'log each go']],
	'/trials/notebook': [['/mechanisms/stories/', 'which stories could tell what you saw']],
	'/measure': [['/trials/', 'use what you measured in your own trials']],
	'/workbook': [['/clinic/', 'teach it, or be taught: five short lessons']],
	'/clinic': [['/workbook/', 'textbook friction with your own numbers']],
	'/clinic/safety': [['/clinic/', 'the lessons']],
	'/clinic/hands': [['/clinic/', 'the lessons']],
	'/clinic/room': [['/clinic/', 'the lessons']],
	'/sources': [['/sources/formulas/', 'every formula and its source']],
	'/sources/formulas': [['/sources/checks/', 'how the product checks itself']],
	'/sources/checks': [['/glossary/', 'the words and symbols used here']],
	'/glossary': [['/', 'set up a hang']]
};

/** The next natural step from a page (its route, without a closing slash); none where none is known. */
export function nextStep(route: string): { path: Path; words: string } | undefined {
	const known: readonly { path: string }[] = [...pages, ...subPages];
	const there = (wanted: string): wanted is Path => known.some(({ path }) => path === wanted);
	for (const [path, words] of steps[route] ?? []) if (there(path)) return { path, words };
	return undefined;
}
