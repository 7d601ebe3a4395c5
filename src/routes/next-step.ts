/** Where a person goes from each page, and why. */
const steps = {
	'/': { path: '/mechanisms/', words: 'every reason why load may help, hurt or cancel, here' },
	'/mechanisms': { path: '/compare/', words: 'two people or two grips side by side' },
	'/mechanisms/stories': { path: '/trials/', words: 'find out with your own trials' },
	'/compare': { path: '/finger/', words: 'what goes on inside the finger' },
	'/finger': { path: '/rope/', words: 'what the rope and the pulley do' },
	'/rope': { path: '/trials/', words: 'find out with your own trials' },
	'/trials': { path: '/measure/', words: 'measure your hold, your pads and your pulley' },
	'/trials/plan': { path: '/trials/', words: 'write the hangs down as they come' },
	'/trials/notebook': {
		path: '/trials/limits/',
		words: 'what the trials say, and how sure that is'
	},
	'/trials/limits': { path: '/trials/report/', words: 'a page to keep or to print' },
	'/trials/method': { path: '/sources/checks/', words: 'what the computation is checked against' },
	'/trials/report': { path: '/trials/plan/', words: 'plan the next fair session' },
	'/measure': { path: '/trials/', words: 'use what you measured in your own trials' },
	'/workbook': { path: '/clinic/', words: 'teach it, or be taught: five short lessons' },
	'/workbook/[family]': { path: '/workbook/practice/', words: 'problems to practise on' },
	'/workbook/published': {
		path: '/workbook/misconceptions/',
		words: 'what people believe, and a case that answers it'
	},
	'/workbook/misconceptions': { path: '/clinic/', words: 'lessons that meet these beliefs' },
	'/workbook/tables': { path: '/workbook/bench/', words: 'fit measurements of your own' },
	'/workbook/practice': {
		path: '/workbook/published/',
		words: 'problems with a printed answer, beside ours'
	},
	'/workbook/bench': {
		path: '/workbook/tables/',
		words: 'what others measured, and how far it spreads'
	},
	'/clinic': { path: '/workbook/', words: 'textbook friction with your own numbers' },
	'/clinic/room': { path: '/clinic/fair/', words: 'the lesson on a fair test' },
	'/clinic/hands': { path: '/compare/', words: 'two people or two grips side by side' },
	'/clinic/safety': { path: '/trials/plan/', words: 'plan a session within the caps' },
	'/clinic/session': { path: '/clinic/room/', words: 'the room’s experiment' },
	'/clinic/set-up': { path: '/', words: 'change the set-up' },
	'/sources': { path: '/sources/formulas/', words: 'every formula and its source' },
	'/sources/formulas': { path: '/sources/checks/', words: 'how the product checks itself' },
	'/sources/checks': { path: '/glossary/', words: 'the words and symbols used here' },
	'/glossary': { path: '/', words: 'set up a hang' }
} as const;

/** The next natural step from a page (its route, without a closing slash); none where none is known. */
export function nextStep(route: string): (typeof steps)[keyof typeof steps] | undefined {
	return route in steps ? steps[route as keyof typeof steps] : undefined;
}
