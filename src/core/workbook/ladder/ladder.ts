import { makeFamily } from '../statics/family.ts';
import { axialPush } from './axial-push.ts';
import { overCorner } from './over-corner.ts';
import { roughWall } from './rough-wall.ts';
import { smoothWall } from './smooth-wall.ts';

/**
 * Ladders, planks and rods that lean.
 * Source: openstaxUniversityPhysics, chapter 12.
 * Example: ladder.solve({ muStatic: 0.8 }, 'lockAngle') gives 0.8960554 rad (51.3°),
 * regime 'about to slip'.
 */
export const ladder = makeFamily('ladder', 'Ladder or leaning bar', [
	...[smoothWall, roughWall, overCorner, axialPush]
]);
