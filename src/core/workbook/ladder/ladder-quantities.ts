import * as q from '../statics/quantities.ts';
import type { Line } from '../statics/setup.ts';
import type { Quantity } from '../statics/types.ts';

/** Geometry and loads that every ladder shares. */
export const ladderQuantities: Quantity[] = [
	q.length('length', 'length of the ladder', 'L'),
	q.slope('angle', 'angle with the floor', '\\theta'),
	q.slope('angleFromWall', 'angle with the wall', '\\gamma'),
	q.length('footDistance', 'distance of the foot from the wall', 'b', { open: false }),
	q.length('wallHeight', 'height of the top', 'h', { open: false }),
	...[q.gravity, q.mass('ladderMass', 'mass of the ladder', 'm', { open: false })],
	q.weight('weight', 'weight of the ladder', 'W', { open: false }),
	q.mass('personMass', 'mass of the person', 'm_p', { open: false }),
	q.weight('personWeight', 'weight of the person', 'W_p', { open: false, default: 0 }),
	q.fraction('centreFraction', 'centre of mass, as a part of the length from the foot', 'c', {
		default: 0.5
	}),
	q.fraction('personFraction', 'place of the person, as a part of the length from the foot', 's', {
		default: 1
	}),
	q.length('personDistance', 'distance of the person from the foot', 'x_p', { open: false })
];

export const ladderLines: Line[] = [
	['angleFromWall', 'pi/2 - angle', 'Floor and wall are at right angles.'],
	['footDistance', 'length*cos(angle)', 'Level side of the triangle.'],
	['wallHeight', 'length*sin(angle)', 'Upright side of the triangle.'],
	['weight', 'ladderMass*gravity', 'Weight is mass times g.'],
	['personWeight', 'personMass*gravity', 'Weight is mass times g.'],
	['personDistance', 'personFraction*length', 'Measured along the ladder.']
];
