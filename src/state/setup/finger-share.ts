import { sharing } from '#reference/sharing.ts';

const { shares } = sharing.find(({ key }) => key === 'default-open')!;
/** Which fingers a count stands for: the middle one alone, then its neighbours. */
const order = ['middle', 'index', 'ring', 'little'] as const;

/**
 * Share of a four-finger force that the first fingers carry: an assumption, stated where it is used.
 * @param fingers how many, 1 to 4
 */
export function fingerShare(fingers: number): number {
	return order.slice(0, fingers).reduce((sum, finger) => sum + (shares?.[finger] ?? 0.25), 0);
}
