import { bodyScaling } from '#reference/body-scaling.ts';
import { grips } from '#reference/grips.ts';
import { setupOfGrip } from '#state/setup/of-grip.ts';
import type { Setup } from '#storage/codecs/setup.ts';

/** Two set-ups worth comparing: what becomes of a copy, and, where it must, of the first as well. */
export type Pair = {
	key: string;
	name: string;
	says: string;
	first?: (first: Setup) => Partial<Setup>;
	second: (first: Setup) => Partial<Setup>;
};

const grip = (key: string) => grips.find((row) => row.key === key)!;
const [open, half, three] = [grip('open-four'), grip('half-crimp'), grip('open-three')];

/** Hand area goes with body mass to this power, men and women alike: pads are taken to do so too. */
const areaPower = bodyScaling.find(({ key }) => key === 'area-on-mass')!.men;

/** Radius of the hold that long fingers are compared on where the set-up has a flat one, mm. */
const roundedRadius = 80;
const longer = 1.1;
const wider = 1.05;

const tenth = (value: number) => Math.round(value * 10) / 10;

/** An invented body with its best hang on the same edge, at the same multiple of body mass. */
function body(mass: number, best: number) {
	return (first: Setup): Partial<Setup> => ({
		body: mass,
		best,
		bestFingers: first.fingers,
		bestHands: first.hands,
		change: tenth((first.change / first.body) * mass),
		area: Math.round(first.area * (mass / first.body) ** areaPower)
	});
}

export const pairs: readonly Pair[] = [
	{
		key: 'half-crimp-open',
		name: 'Half crimp against open grip',
		says: 'The other grip’s patch, an assumption; strength is taken the same until you measure it in both.',
		second: (first) =>
			setupOfGrip(first.area * 1e-6 > (open.padArea + half.padArea) / 2 ? half : open)
	},
	{
		key: 'three-four',
		name: 'Three fingers against four',
		says: 'Each of three fingers carries more and spreads wider; strength is estimated by the assumed sharing.',
		second: (first) => {
			const to = first.fingers === 4 ? 3 : 4;
			const grown = three.padArea / open.padArea;
			return { fingers: to, area: Math.round(first.area * (to === 3 ? grown : 1 / grown)) };
		}
	},
	{
		key: 'light-and-strong',
		name: 'Light and strong',
		says: 'Invented: 56 kg, best hang 84 kg, 1.5 times body mass. Pads scaled by hand area.',
		second: body(56, 84)
	},
	{
		key: 'average',
		name: 'Average',
		says: 'Invented: 75 kg, best hang 90 kg, 1.2 times body mass. Pads scaled by hand area.',
		second: body(75, 90)
	},
	{
		key: 'heavy',
		name: 'Heavy',
		says: 'Invented: 92 kg, best hang 101 kg, 1.1 times body mass. Pads scaled by hand area.',
		second: body(92, 101)
	},
	{
		key: 'long-fingers',
		name: 'Long fingers on a rounded hold',
		says: 'End segments a tenth longer, pads 5 % wider, the last joint at the same place on the hold, so that the tip reaches farther round. A flat hold becomes one of 80 mm radius in both.',
		first: (first) => (first.radius > 0 ? {} : { radius: roundedRadius }),
		second: (first) => {
			const radius = first.radius > 0 ? first.radius : roundedRadius;
			const reach = (longer - 1) * first.padLength;
			return {
				radius,
				padLength: tenth(longer * first.padLength),
				padWidth: tenth(wider * first.padWidth),
				area: Math.round(longer * wider * first.area),
				slope: tenth(first.slope - ((reach / radius) * 180) / Math.PI)
			};
		}
	},
	{
		key: 'same-ratio',
		name: 'Very light and very strong against heavy, the same strength for their mass',
		says: 'Invented: 50 and 95 kg, both with a best hang of 1.6 times body mass; the same pads, so that only mass differs. Sets both.',
		first: (first) => ({ ...body(50, 80)(first), area: first.area }),
		second: (first) => ({ ...body(95, 152)(first), area: first.area })
	}
];

/** The pair that a page starts with. */
export const startPair = pairs[0]!;
