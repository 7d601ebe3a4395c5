import type { Finger } from './finger-lengths.ts';
import type { Fact, Row } from './types.ts';

/** How fingers share a load, as fractions of the whole; null where only an order was published. */
export type SharingRow = Row & {
	grip: string;
	shares: Record<Finger, number> | null;
	spread?: Record<Finger, number>;
	order: string;
};

export const sharing: readonly SharingRow[] = [
	{
		key: 'default-open',
		grip: 'open grip on a sloping hold',
		shares: { index: 0.27, middle: 0.32, ring: 0.26, little: 0.15 },
		order: 'middle > index ≈ ring > little',
		source: ['fuss2012grips'],
		status: 'assumed',
		note: 'The order is published; these numbers are ours. Change them.'
	},
	{
		key: 'cylinder-grip',
		grip: 'greatest grip round a cylinder, best wrist posture, n = 9',
		shares: { index: 0.322, middle: 0.326, ring: 0.235, little: 0.117 },
		spread: { index: 0.038, middle: 0.043, ring: 0.045, little: 0.049 },
		order: 'middle ≈ index > ring > little',
		source: ['li2002'],
		status: 'seen'
	},
	{
		key: 'closed-crimp',
		grip: 'closed crimp on climbing holds',
		shares: null,
		order: 'index > middle > ring > little',
		source: ['fuss2012grips'],
		status: 'seen'
	},
	{
		key: 'half-crimp-and-open',
		grip: 'half crimp and open hand on climbing holds',
		shares: null,
		order: 'middle > index ≈ ring > little',
		source: ['fuss2012grips'],
		status: 'seen'
	},
	{
		key: 'climbing-postures',
		grip: 'simulated climbing postures',
		shares: { index: 0.25, middle: 0.33, ring: 0.26, little: 0.16 },
		order: 'middle > ring ≈ index > little',
		source: ['quaine2003postures'],
		status: 'memory',
		note: 'Roughly; weakly remembered.'
	}
];

/** Fingers do not act alone. */
export const sharingFacts: readonly Fact[] = [
	{
		key: 'enslaving',
		what: 'force of a finger that was not asked, share of its own best',
		value: null,
		range: [0.109, 0.547],
		unit: '1',
		conditions: 'several fingers pressing',
		source: ['zatsiorsky1998'],
		status: 'seen'
	},
	{
		key: 'thumb-on-nail',
		what: 'gain from pressing the thumb on the index nail',
		value: null,
		unit: '1',
		conditions: 'total force rises and sharing changes; no number was read',
		source: ['quaine2011'],
		status: 'seen'
	}
];
