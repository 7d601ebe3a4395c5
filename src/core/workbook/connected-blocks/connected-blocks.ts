import { makeFamily } from '../statics/family.ts';
import { inclineToLevel } from './incline-to-level.ts';
import { overWallPulley } from './over-wall-pulley.ts';
import { pullLower } from './pull-lower.ts';
import { pushUpper } from './push-upper.ts';
import { tiedUpper } from './tied-upper.ts';
import { train } from './train.ts';
import { twoOnIncline } from './two-on-incline.ts';
import { twoSlopesPulley } from './two-slopes-pulley.ts';

/**
 * Stacked and connected blocks, on the level, on inclines, over pulleys.
 * Source: openstaxUniversityPhysics, chapter 6.
 * Example: connectedBlocks.solve({ massTop: 2, massBottom: 4, muTop: 0.4, gravity: 9.8,
 * arrangement: 1 }, 'pull') gives 39.2 N, regime 'about to slip'.
 */
export const connectedBlocks = makeFamily('connected-blocks', 'Stacked and connected blocks', [
	...[overWallPulley, pushUpper, pullLower, train, twoOnIncline, tiedUpper],
	...[inclineToLevel, twoSlopesPulley]
]);
