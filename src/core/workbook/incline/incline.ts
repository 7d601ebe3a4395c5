import { makeFamily } from '../statics/family.ts';
import { blockOnIncline } from './block-on-incline.ts';
import { tiltTest } from './tilt-test.ts';
import { twoSlopes } from './two-slopes.ts';
import { vehicle } from './vehicle.ts';

/**
 * Blocks on an incline: at rest, held, pushed up, sliding, tilted to the start; vehicles.
 * Source: openstaxUniversityPhysics, chapter 6.
 * Example: incline.solve({ muStatic: 0.3 }, 'reposeAngle') gives 0.2914568 rad (16.7°),
 * regime 'about to slip'.
 */
export const incline = makeFamily('incline', 'Block on an incline', [
	...[blockOnIncline, vehicle, tiltTest, twoSlopes]
]);
