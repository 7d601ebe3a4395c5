import { makeFamily } from '../statics/family.ts';
import { flatCurve } from './flat-curve.ts';
import { pushedBlock } from './pushed-block.ts';
import { tiltingBoard } from './tilting-board.ts';

/**
 * Tipping against slipping: which comes first?
 * Source: derived
 * Example: tipping.solve({ width: 1, height: 2, muStatic: 0.63 }, 'tipAngle') gives 0.4636476 rad
 * (26.565°), regime 'tips': tipping comes first.
 */
export const tipping = makeFamily('tipping', 'Tipping or slipping', [
	...[tiltingBoard, pushedBlock, flatCurve]
]);
