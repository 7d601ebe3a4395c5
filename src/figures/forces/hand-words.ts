import type { Draft } from './labels.ts';
import { tiltLines } from './person-words.ts';
import { degrees, digits, force, reading, type Lines, type Run } from './text.ts';
import type { ForcesShown } from './types.ts';

/** Whether nothing presses the fingers on: the core then finds no patch at all. */
export function leadsOff({ normal, padArea }: ForcesShown['contact']): boolean {
	return normal <= 0 || padArea <= 0;
}

/** How the contact force stands to the friction limit, in a few words. */
export function verdict(contact: ForcesShown['contact']): string {
	const { tangential, frictionLimit } = contact;
	if (leadsOff(contact)) return 'the pull leads off the hold';
	if (tangential <= 0) return 'no friction needed';
	return tangential <= frictionLimit ? 'inside the friction limit' : 'past the friction limit';
}

export function handTitle({ hang, contact }: ForcesShown): Lines {
	return [
		[{ text: hang.hands === 1 ? 'The one hand' : 'One of two hands' }],
		[{ text: verdict(contact), soft: true }],
		...(leadsOff(contact) ? [] : [ratios(contact)])
	];
}

/** The friction ratio that the law gives, and the one that this hang asks for. */
function ratios({ ratio, demand, tangential }: ForcesShown['contact']): Run[] {
	const given = { text: `ratio ${digits(ratio)}`, quantity: 'ratio', value: ratio, soft: true };
	if (tangential <= 0) return [given];
	return [
		given,
		{ text: ', needs ', soft: true },
		{ text: digits(demand), quantity: 'demand', value: demand, soft: true }
	];
}

/** Number of fingers and the patch of each. */
export function patchLine({ hang, contact }: ForcesShown, long: boolean): Lines {
	const { fingers } = hang.grip;
	const count = long ? `${fingers} ${fingers === 1 ? 'finger' : 'fingers'}` : `${fingers}`;
	if (leadsOff(contact)) return [[{ text: fingers === 1 ? '1 finger' : `${fingers} fingers` }]];
	return [
		[
			{ text: `${count} × ` },
			{ text: `${digits(contact.padArea * 1e6)} mm²`, quantity: 'padArea', value: contact.padArea }
		]
	];
}

/** The labels' texts; where they belong is the layout's matter. */
export function handDrafts(shown: ForcesShown, long: boolean): Omit<Draft, 'own'>[] {
	const { hang, load, contact, forceUnit } = shown;
	const amount = (shownSize: number, quantity: string, value = shownSize): Run[] => [
		{ text: force(shownSize, forceUnit), quantity, value },
		{ text: long ? reading(shownSize, forceUnit) : '', soft: true }
	];
	const { tangential: Q } = contact;
	return [
		{
			id: 'force',
			kind: 'hold',
			lines: [[{ text: 'contact force' }], amount(contact.force, 'force')]
		},
		{
			id: 'normal',
			kind: 'normal',
			lines: [[{ text: 'normal force' }], amount(contact.normal, 'normal')]
		},
		{
			id: 'tangential',
			kind: 'friction',
			lines: [
				[{ text: Q < 0 ? 'against the stop' : 'friction needed' }],
				amount(Math.abs(Q), 'tangential', Q)
			]
		},
		{
			id: 'frictionLimit',
			kind: 'friction',
			lines: [[{ text: 'friction limit' }], amount(contact.frictionLimit, 'frictionLimit')]
		},
		{
			id: 'slope',
			kind: 'angle',
			lines: [
				[{ text: `slope ${degrees(hang.slope)}`, quantity: 'slope', value: hang.slope }],
				...(hang.radius === undefined
					? []
					: [
							[
								{
									text: `mean ${degrees(contact.meanSlope)}`,
									quantity: 'meanSlope',
									value: contact.meanSlope
								}
							]
						])
			]
		},
		{
			id: 'tilt',
			kind: 'angle',
			lines: tiltLines(load.tilt)
		}
	];
}
