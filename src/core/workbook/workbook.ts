import { belt } from './belt/belt.ts';
import { connectedBlocks } from './connected-blocks/connected-blocks.ts';
import { hang } from './hang/hang.ts';
import { incline } from './incline/incline.ts';
import { ladder } from './ladder/ladder.ts';
import { levelFloor } from './level-floor/level-floor.ts';
import { pressing } from './pressing/pressing.ts';
import type { Family } from './statics/family.ts';
import { tipping } from './tipping/tipping.ts';
import { wedge } from './wedge/wedge.ts';

/**
 * Every family of the workbook. Each has an id, its quantities, and
 * `solve(given, ask)` in SI and radians, which returns the regime, all solutions and warnings.
 * Source: derived
 * Example: workbook.find((each) => each.id === 'incline')!.solve({ muStatic: 0.3 }, 'reposeAngle')
 * gives the regime 'about to slip' and one solution, 0.2914568 rad.
 */
export const workbook: Family[] = [
	...[levelFloor, incline, connectedBlocks, ladder, tipping, wedge, belt, pressing, hang]
];
