import { makeFamily } from '../statics/family.ts';
import { againstWall } from './against-wall.ts';
import { betweenTwo } from './between-two.ts';
import { chimney } from './chimney.ts';
import { layback } from './layback.ts';
import { ropeAndFeet } from './rope-and-feet.ts';
import { stemming } from './stemming.ts';

/**
 * Pressing, gripping, stemming, chimney and layback.
 * Source: openstaxUniversityPhysics, chapter 6.
 * Example: pressing.solve({ weight: 31, mu1: 0.4 }, 'leastPress') gives 38.75 N,
 * regime 'about to slip'.
 */
export const pressing = makeFamily('pressing', 'Pressing, gripping and climbing moves', [
	...[betweenTwo, againstWall, stemming, ropeAndFeet, layback, chimney]
]);
