import { makeFamily } from '../statics/family.ts';
import { bracket } from './bracket.ts';
import { raisingWedge } from './raising-wedge.ts';
import { splittingWedge } from './splitting-wedge.ts';

/**
 * Wedges and things that wedge themselves fast.
 * Source: derived
 * Example: wedge.solve({ load: 20000, wedgeAngle: Math.atan(0.1), muFace: 0.2, muFloor: 0.25 },
 * 'driveForce') gives 11122.4 N, regime 'about to slip'.
 */
export const wedge = makeFamily('wedge', 'Wedge', [raisingWedge, bracket, splittingWedge]);
