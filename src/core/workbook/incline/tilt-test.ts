import { allOf, drawBlock } from '../statics/block-diagram.ts';
import * as q from '../statics/quantities.ts';
import { buildSetup } from '../statics/setup.ts';

/**
 * A board is tilted until what lies on it starts: the coefficient from lengths.
 * Formula: sin θ = rise/length, tan θ = rise/run = μ_s.
 * Valid for: a straight board. Source: openstaxUniversityPhysics, section 6.2.
 */
export const tiltTest = buildSetup({
	id: 'tilt-test',
	number: 3,
	title: 'Tilting a board until it starts',
	scene: 'One end of a board is raised until the thing on it just starts to slide.',
	notes: [
		'The length is measured along the board, the run along the table beneath.',
		'Rise over run is the coefficient; rise over length is only the sine.'
	],
	quantities: [
		q.length('rise', 'rise of the end', 'h', { open: false }),
		q.length('boardLength', 'length along the board', 'L'),
		q.slope('slope', 'slope at which it starts', '\\theta'),
		q.length('run', 'level distance beneath the board', 'b', { open: false }),
		q.muStatic({ default: undefined })
	],
	lines: [
		['slope', 'asin(rise/boardLength)', 'The board is the long side of the triangle.'],
		['run', 'boardLength*cos(slope)', 'The level side of the triangle.'],
		['muStatic', 'tan(slope)', 'At the start W sin θ equals μ W cos θ.']
	],
	limits: ['rise', 'boardLength', 'slope', 'run', 'muStatic'],
	regime: () => ({ regime: 'about to slip', because: 'The board is at the angle of the start.' }),
	diagram(values) {
		const v = allOf(values, 'slope');
		if (!v) return undefined;
		const { body, forces } = drawBlock({
			...{ id: 'block', name: 'body of 1 N', at: [0, 0], slope: v.slope, weight: 1 },
			...{ normal: Math.cos(v.slope), friction: Math.sin(v.slope) }
		});
		return { bodies: [body], forces, lines: [] };
	},
	practice: {
		given: { rise: [0.05, 0.3, 0.005], boardLength: [0.4, 1.2, 0.05] },
		ask: ['muStatic', 'slope', 'run']
	}
});
