import { entropy } from '../statistics/information.ts';

/** How a trial is expected to end, and what it would teach. */
export type Prediction = {
	/** Expected information about all unknowns, nats. */
	information: number;
	chanceHeld: number;
	chanceSlipped: number;
	chanceOpened: number;
};

/** Points with less belief than this change no printed digit of a sum over points. */
export const negligible = 1e-12;

/**
 * A prediction from the averages that both ways of summing give.
 *
 * @param held E[P Q], 0 to 1
 * @param stays E[P], 0 to 1
 * @param hidden E[h(P) + P h(Q)], nats
 * @returns chances that sum to 1, and the information in nats
 * Source: lindley1956, definition 2
 * Example: prediction(1, 1, 0).information → 0
 */
export function prediction(held: number, stays: number, hidden: number): Prediction {
	const [chanceSlipped, chanceOpened] = [Math.max(0, 1 - stays), Math.max(0, stays - held)];
	return {
		information: Math.max(0, entropy([held, chanceSlipped, chanceOpened]) - hidden),
		chanceHeld: held,
		chanceSlipped,
		chanceOpened
	};
}
