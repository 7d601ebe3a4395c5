/** Where a person goes from each page, and why. */
const steps = {
	'/': { path: '/mechanisms/', words: 'every reason why load may help, hurt or cancel, here' },
	'/mechanisms': { path: '/compare/', words: 'two people or two grips side by side' },
	'/mechanisms/stories': { path: '/trials/', words: 'find out with your own trials' },
	'/compare': { path: '/finger/', words: 'what goes on inside the finger' },
	'/finger': { path: '/rope/', words: 'what the rope and the pulley do' },
	'/rope': { path: '/trials/', words: 'find out with your own trials' },
	'/trials': { path: '/measure/', words: 'measure your hold, your pads and your pulley' },
	'/measure': { path: '/trials/', words: 'use what you measured in your own trials' },
	'/workbook': { path: '/clinic/', words: 'teach it, or be taught: five short lessons' },
	'/clinic': { path: '/workbook/', words: 'textbook friction with your own numbers' },
	'/sources': { path: '/sources/formulas/', words: 'every formula and its source' },
	'/sources/formulas': { path: '/sources/checks/', words: 'how the product checks itself' },
	'/sources/checks': { path: '/glossary/', words: 'the words and symbols used here' },
	'/glossary': { path: '/', words: 'set up a hang' }
} as const;

/** The next natural step from a page (its route, without a closing slash); none where none is known. */
export function nextStep(route: string): (typeof steps)[keyof typeof steps] | undefined {
	return route in steps ? steps[route as keyof typeof steps] : undefined;
}
