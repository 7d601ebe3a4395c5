import { makeFamily } from '../statics/family.ts';
import { carried } from './carried.ts';
import { coast } from './coast.ts';
import { pushOrPull } from './push-or-pull.ts';
import { twoTrials } from './two-trials.ts';

/**
 * Blocks on a level floor: pushed, pulled, coasting, carried, or tried twice.
 * Source: openstaxUniversityPhysics, chapter 6.
 * Example: levelFloor.solve({ mass: 20, muStatic: 0.7, gravity: 9.8 }, 'startForce') gives 137.2 N,
 * regime 'about to slip'.
 */
export const levelFloor = makeFamily('level-floor', 'Block on a level floor', [
	...[pushOrPull, coast, carried, twoTrials]
]);
