import type { TestKind } from '#reference/made/types.ts';

/** What each kind of check compares, in plain words. */
export const kinds: readonly { kind: TestKind; name: string; compares: string }[] = [
	{
		kind: 'oracles',
		name: 'outside checks',
		compares:
			'results with numbers that others printed or measured: textbooks, papers, open data, each named beside its number'
	},
	{
		kind: 'own',
		name: 'second implementation',
		compares: 'results with our own second way of computing them: useful, but not an outside check'
	},
	{
		kind: 'properties',
		name: 'properties',
		compares:
			'thousands of drawn set-ups with rules that must always hold, such as: textbook friction cancels load'
	},
	{
		kind: 'unit',
		name: 'parts',
		compares: 'each part with what it says it does, bad input included'
	},
	{
		kind: 'gates',
		name: 'house rules',
		compares:
			'the code with its own rules: every pointer to a source leads to a work, every formula renders, every stated result of a demo holds'
	},
	{
		kind: 'browser',
		name: 'in a browser',
		compares:
			'the finished pages with what a person sees and does: by keyboard, on a phone, without a network, in both themes'
	}
];
