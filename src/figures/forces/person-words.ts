import type { Draft } from './labels.ts';
import { degrees, force as forceText, reading, type Lines } from './text.ts';
import type { Arrow, ForcesShown } from './types.ts';

const names: Record<string, string> = {
	weight: 'weight',
	rope: 'rope',
	push: 'push',
	hold: 'hold gives'
};
const fields: Record<string, string> = {
	weight: 'weight',
	rope: 'assistForce',
	push: 'push',
	hold: 'magnitude'
};

/** The label of one force on the person: its name, and its size. */
export function forceLabel({ id, kind, force, segment }: Arrow, shown: ForcesShown): Draft {
	const size = Math.hypot(force.x, force.y);
	// The givens themselves, not what is left of them after sines and cosines.
	const { person, load } = shown;
	const givens = { rope: person.assistForce, push: person.push, hold: load.magnitude } as const;
	const value = kind in givens ? givens[kind as keyof typeof givens] : size;
	const unit = shown.forceUnit;
	const first = [{ text: names[kind]! }];
	const angle = shown.person.ropeAngle;
	return {
		id,
		kind,
		own: segment,
		lines: [
			kind === 'rope' && Math.abs(angle) >= 5e-4
				? [
						...first,
						{
							text: `, ${degrees(Math.abs(angle))} ${angle > 0 ? 'out' : 'in'}`,
							quantity: 'ropeAngle',
							value: angle
						}
					]
				: first,
			[
				{ text: forceText(size, unit), quantity: fields[kind]!, value },
				{ text: reading(size, unit), soft: true }
			]
		]
	};
}

export function tiltLines(tilt: number): Lines {
	return [[{ text: `tilt ${degrees(tilt)}`, quantity: 'tilt', value: tilt }]];
}
