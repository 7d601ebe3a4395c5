const words: Record<string, string> = {
	rests: 'It rests.',
	slides: 'It slides.',
	tips: 'It tips.',
	'slides together': 'Both slide together.',
	'slides apart': 'They slide apart.',
	'slides, lower block rests': 'The upper block slides; the lower one rests.',
	'slides, first block down': 'They slide, the first block down.',
	'slides, second block down': 'They slide, the second block down.',
	'about to slip': 'It is about to move.',
	'self-locks': 'It locks itself.',
	'lifts off': 'It lifts off.',
	impossible: 'Impossible with these givens.',
	undetermined: 'Not enough is given.',
	determined: 'The value is settled.',
	any: 'More than one value will do.',
	'any load': 'Any load holds.',
	'no load': 'No load holds.',
	'strength gives out': 'Strength gives out first.'
};

/** A regime of the core as a short sentence. */
export function regimeSentence(regime: string): string {
	return words[regime] ?? `It ${regime}.`;
}

/** The same after "then": "it slides". */
export function regimeClause(regime: string): string {
	const sentence = regimeSentence(regime);
	return sentence.charAt(0).toLowerCase() + sentence.slice(1, -1);
}
