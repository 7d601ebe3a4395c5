import { requireAllowed } from '../units/allowed-range.ts';
import { meanAndSpread, type Repeated } from './measured.ts';

/**
 * Finds a friction ratio from the angles at which something on a tilted surface began to slip.
 * ratio of one go = tan(angle); mean and spread over the goes
 * @param angles slip angles below the horizontal, rad, 0 up to below π/2; two or more goes
 * @returns mean ratio, spread from go to go, standard error of the mean, number of goes
 * Valid for: slow tilting until the first visible slip, each go laid down afresh. The idea of the
 * inclined-plane guide, not a test to any standard.
 * @throws RangeError for fewer than two goes or an angle outside its range
 * Source: astmG219, tappiT815
 * Example: 32.62° twice: 0.64.
 */
export function ratioFromTilts(angles: readonly number[]): Repeated {
	angles.forEach((angle, at) =>
		requireAllowed(`angles[${at}]`, angle, { min: 0, below: Math.PI / 2, unit: 'rad' })
	);
	return meanAndSpread('angles', angles.map(Math.tan));
}
