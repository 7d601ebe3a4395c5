import { makeFamily } from '../statics/family.ts';
import { bandBrake } from './band-brake.ts';
import { beltDrive } from './belt-drive.ts';
import { ropeRoundDrum } from './rope-round-drum.ts';

/**
 * Ropes and belts round drums.
 * Source: derived
 * Example: belt.solve({ load: 100, turns: 0.5, mu: 0.4 }, 'holdForce') gives 28.461 N,
 * regime 'about to slip'.
 */
export const belt = makeFamily('belt', 'Belt or rope on a drum', [
	...[ropeRoundDrum, beltDrive, bandBrake]
]);
