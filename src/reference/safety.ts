import type { Fact, Row } from './types.ts';

/** A caution in plain words, and near which control or page it belongs. */
export type CautionRow = Row & {
	text: string;
	where: readonly ('everywhere' | 'trials' | 'grips' | 'finger' | 'rope' | 'planner')[];
};

export const cautions: readonly CautionRow[] = [
	{
		key: 'educational',
		text: 'For learning. This is not medical, coaching or structural advice; local codes and licensed practice come first.',
		where: ['everywhere'],
		source: [],
		status: 'common practice'
	},
	{
		key: 'ask-first',
		text: 'With an injury, pain, numbness, a pregnancy, heart trouble or high blood pressure, ask a licensed clinician before hanging.',
		where: ['everywhere', 'trials'],
		source: [],
		status: 'common practice'
	},
	{
		key: 'adults-only',
		text: 'Hardest hangs are for adults. Under 18: no maximal loads, and no log of them.',
		where: ['everywhere', 'trials', 'planner'],
		source: ['morrison2007', 'uiaaYouth', 'hochholzer2005'],
		status: 'seen',
		note: 'The sources say no intensive finger training under 16; the product draws its line at 18.'
	},
	{
		key: 'growing-fingers',
		text: 'A young person with pain in a finger joint stops and sees a clinician: growth plates can break without any accident.',
		where: ['everywhere', 'trials', 'planner'],
		source: ['hochholzer2005', 'bartschi2019', 'jones2022', 'meyersYouth'],
		status: 'seen'
	},
	{
		key: 'stop',
		text: 'Stop at pain, a pop, swelling, loss of movement, tingling or numbness. Do not work through it.',
		where: ['everywhere', 'trials', 'planner'],
		source: [],
		status: 'common practice'
	},
	{
		key: 'crimp',
		text: 'Do not crimp as hard as you can to test a sloping hold: the crimp loads the finger’s pulleys most.',
		where: ['trials', 'grips', 'finger'],
		source: ['schoffl2009', 'schweizer2001'],
		status: 'seen'
	},
	{
		key: 'load-smoothly',
		text: 'Load smoothly. Never jump on, never let the feet cut loose; a sudden load can be twice the still one.',
		where: ['everywhere', 'trials'],
		source: ['diagnostics2020'],
		status: 'derived'
	},
	{
		key: 'warm-up',
		text: 'Warm up first, in small steps.',
		where: ['trials', 'planner'],
		source: ['schweizer2001'],
		status: 'common practice'
	},
	{
		key: 'small-steps',
		text: 'Add little at a time: about a twentieth to a tenth, and leave two days between hardest sessions.',
		where: ['trials', 'planner'],
		source: [],
		status: 'memory',
		note: 'A convention from memory; no validated number was found.'
	},
	{
		key: 'breath',
		text: 'Do not hold your breath and strain.',
		where: ['trials'],
		source: [],
		status: 'common practice'
	},
	{
		key: 'pulley-numbers',
		text: 'Finger forces shown are estimates for teaching, uncertain by about a factor of two, and never a margin to injury.',
		where: ['finger'],
		source: ['marco1998', 'lin1990'],
		status: 'derived',
		note: 'Failure figures come from old donors’ fingers, with no known transfer to the living.'
	},
	{
		key: 'tape',
		text: 'Tape does not protect a finger’s pulley from tearing.',
		where: ['finger', 'trials'],
		source: ['warmeBrooks2000', 'hTaping2022'],
		status: 'seen'
	},
	{
		key: 'no-promise',
		text: 'Nothing here prevents injury: whether strength training does is not settled.',
		where: ['everywhere'],
		source: ['saeterbakken2024'],
		status: 'seen'
	},
	{
		key: 'anchor',
		text: 'Holds, anchors and counterweights go into sound structure, put there by a competent person under the local code, with rated hardware, looked over every session.',
		where: ['rope', 'trials'],
		source: ['oshaAnchors'],
		status: 'common practice',
		note: 'Fixings rated in still kilograms have little margin: a person dropped on to a sling pulls twice their weight, and a pulley’s anchor feels both strands.'
	},
	{
		key: 'counterweight',
		text: 'Back up the counterweight, keep everyone from beneath it, clear the landing, and have a second person there.',
		where: ['rope', 'trials'],
		source: [],
		status: 'common practice'
	},
	{
		key: 'conditions',
		text: 'A friction ratio is a condition, not a constant: skin, powder, damp and wear all move it.',
		where: ['everywhere'],
		source: ['blau2001', 'derler2012'],
		status: 'seen'
	}
];

/** The numbers behind the cautions. */
export const injuryFacts: readonly Fact[] = [
	{
		key: 'pulley-injuries',
		what: 'pulley injuries among injured climbers, share',
		value: 0.202,
		unit: '1',
		conditions: '122 of 604; 48 strains, 74 ruptures; grades 1 to 4: 39, 25, 30, 6 %',
		source: ['schoffl2003'],
		status: 'seen'
	},
	{
		key: 'finger-injuries',
		what: 'finger injuries among climbing injuries, share',
		value: 0.4,
		unit: '1',
		conditions: 'about; half of those are pulleys',
		source: ['crowley2012'],
		status: 'seen'
	},
	{
		key: 'mechanism',
		what: 'how a pulley tears',
		value: null,
		unit: '1',
		conditions:
			'hard grip and a sudden pull, typically a foot slip in a crimp; mainly A2, then A4, ring finger',
		source: ['diagnostics2020'],
		status: 'seen'
	},
	{
		key: 'growth-plate-age',
		what: 'age at a growth-plate fracture of the finger',
		value: 14.5,
		spread: 0.9,
		unit: 'years',
		conditions:
			'24 cases, all fatigue fractures without an accident, back of the middle bone’s base',
		source: ['hochholzer2005'],
		status: 'seen'
	},
	{
		key: 'growth-plate-age-second',
		what: 'age at a growth-plate injury of the finger',
		value: 13.7,
		spread: 1.9,
		unit: 'years',
		conditions:
			'28 climbers; middle finger 58 %, ring 30 %; healed after 35 weeks, some never fully',
		source: ['bartschi2019'],
		status: 'seen'
	},
	{
		key: 'training-age',
		what: 'age below which no intensive finger training',
		value: 16,
		unit: 'years',
		conditions: 'advice; fingers stop growing at about 16 to 17',
		source: ['morrison2007', 'uiaaYouth'],
		status: 'seen'
	},
	{
		key: 'youth-knowledge',
		what: 'young climbers who had not heard of growth-plate injury, share',
		value: 0.5,
		range: [0.5, 1],
		unit: '1',
		conditions: 'more than half of 267',
		source: ['meyersYouth'],
		status: 'seen'
	},
	{
		key: 'fall-arrest-anchor',
		what: 'fall-arrest anchor for one person, United States',
		value: 22_200,
		unit: 'N',
		conditions:
			'or twice the expected load by a qualified person’s design; not a rule for this use',
		source: ['oshaAnchors'],
		status: 'seen'
	}
];
