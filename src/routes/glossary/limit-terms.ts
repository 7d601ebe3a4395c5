import type { TermGroup } from './terms.ts';

export const limitTerms: readonly TermGroup[] = [
	{
		name: 'Limits',
		terms: [
			{
				id: 'slip-margin',
				word: 'slip margin',
				unit: 'ratio',
				meaning:
					'The friction the contact can give over the friction it needs. At 1 the hand is about to slip. It is not a margin to injury.'
			},
			{
				id: 'strength-margin',
				word: 'strength margin',
				unit: 'ratio',
				meaning:
					'The force the fingers can hold for the hold time over the force on them. At 1 they are about to open. It is not a margin to injury.'
			},
			{
				id: 'limit',
				word: 'limit',
				unit: 'kg or lb',
				meaning:
					'The net load at which a margin is 1; where only trials speak, the load that ends one way in half of them. What lies beyond it slips, or opens.'
			},
			{
				id: 'slip-edge',
				word: 'slip edge',
				meaning: 'On the picture of loads, the line where the slip margin is 1.'
			},
			{
				id: 'strength-edge',
				word: 'strength edge',
				meaning: 'On the picture of loads, the line where the strength margin is 1.'
			},
			{
				id: 'holding-window',
				word: 'holding window',
				unit: 'kg or lb',
				meaning:
					'The net loads that hold: heavy enough not to slip, where load helps, and light enough not to open the fingers. It may be empty, and it may have more than one part.'
			},
			{
				id: 'holding-region',
				word: 'holding region',
				meaning:
					'The holding windows side by side for every value of one other quantity, such as the slope.'
			},
			{
				id: 'crossing',
				word: 'crossing',
				meaning: 'Where slip edge and strength edge meet: beyond it no load holds.'
			}
		]
	},
	{
		name: 'Trials',
		terms: [
			{
				id: 'likely-range',
				word: 'likely range',
				meaning:
					'Where a limit probably lies, as far as the trials tell. A short series gives a wide one, and that is the honest answer.'
			},
			{
				id: 'cant-tell-yet',
				word: 'can’t tell yet',
				meaning:
					'The trials so far fit more than one story: one may be ahead, but not by enough. More goes, better spread, may tell.',
				see: ['story', 'check-load']
			},
			{
				id: 'leaning',
				word: 'leaning',
				meaning: 'One story is ahead of the others, but not clearly: more trials may turn it.',
				see: ['story', 'cant-tell-yet']
			},
			{
				id: 'check-load',
				word: 'check load',
				meaning:
					'One load that is hung again and again through a session. If its outcome changes, something other than load has changed.'
			},
			{
				id: 'chance-of-holding',
				word: 'chance of holding',
				unit: '%',
				meaning: 'How often a go at this load would hold, were it repeated many times.'
			},
			{
				id: 'story',
				word: 'story',
				meaning:
					'One explanation of why load helped or hurt – a leaning rope, the order of the goes, a patch that grew – that can be set against the trials.'
			}
		]
	},
	{
		name: 'How a thing is known',
		terms: [
			{
				id: 'known-seen',
				word: 'read in its source',
				meaning: 'The number or claim was read in the work named, mostly in its abstract.'
			},
			{
				id: 'known-derived',
				word: 'worked out',
				meaning: 'Computed here from values that carry their own marks.'
			},
			{
				id: 'known-memory',
				word: 'from memory',
				meaning: 'Recalled, and not looked up: check it before you lean on it.'
			},
			{
				id: 'known-assumed',
				word: 'assumed',
				meaning: 'Set by us because something had to be; yours to change.'
			},
			{
				id: 'known-common',
				word: 'common practice',
				meaning: 'Usual among climbers or coaches, without a source that was found.'
			}
		]
	}
];
