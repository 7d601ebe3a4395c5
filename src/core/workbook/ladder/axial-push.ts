import { allOf } from '../statics/block-diagram.ts';
import { along } from '../statics/diagram.ts';
import * as q from '../statics/quantities.ts';
import { buildSetup } from '../statics/setup.ts';

/**
 * A light rod pushed along its length against a table: the friction cone in one line.
 * Formula: N = P sin θ, f = P cos θ; it holds for any push while tan θ ≥ 1/μ_s.
 * Valid for: a weightless rod. Source: openstaxUniversityPhysics, chapter 12.
 */
export const axialPush = buildSetup({
	id: 'axial-push',
	number: 4,
	title: 'Light rod pushed along its length',
	scene: 'A light rod stands slanted on a table and is pushed along its length.',
	notes: ['The weight of the rod is left out.', 'The angle counts from the table.'],
	quantities: [
		q.slope('angle', 'angle with the table', '\\theta'),
		...[q.muStatic({ default: undefined }), q.force('force', 'push along the rod', 'P')],
		q.force('normal', 'normal force', 'N'),
		q.force('friction', 'friction needed', 'f'),
		q.coefficient('neededMu', 'least coefficient', '\\mu_{min}', { max: 1e16 }),
		q.slope('lockAngle', 'least angle at which no push makes it slip', '\\theta_l')
	],
	lines: [
		['normal', 'force*sin(angle)', 'Upright forces balance.'],
		['friction', 'force*cos(angle)', 'Level forces balance.'],
		['neededMu', '1/tan(angle)', 'Friction may be at most μN: the push cancels.'],
		['lockAngle', 'atan(1/muStatic)', 'The push must lie inside the friction cone.']
	],
	limits: ['neededMu', 'lockAngle'],
	regime(values) {
		const v = allOf(values, 'angle', 'lockAngle');
		if (!v) return undefined;
		if (Math.abs(v.angle - v.lockAngle) <= 1e-9)
			return { regime: 'about to slip', because: 'The push lies on the friction cone.' };
		return v.angle > v.lockAngle
			? { regime: 'self-locks', because: 'However hard the push, it stays.' }
			: { regime: 'slides', because: 'However small the push, it slips.' };
	},
	diagram(values) {
		const v = allOf(values, 'angle', 'normal', 'friction', 'force');
		if (!v) return undefined;
		return {
			bodies: [{ id: 'rod', name: 'rod', outline: [[0, 0], along(v.angle)] }],
			lines: [{ name: 'table', from: [-1, 0], to: [1, 0] }],
			forces: [
				{
					body: 'rod',
					kind: 'push',
					name: 'push',
					symbol: 'P',
					at: along(v.angle),
					vector: along(v.angle + Math.PI, v.force)
				},
				{
					body: 'rod',
					kind: 'normal',
					name: 'normal force',
					symbol: 'N',
					at: [0, 0],
					vector: [0, v.normal]
				},
				{
					body: 'rod',
					kind: 'friction',
					name: 'friction',
					symbol: 'f',
					at: [0, 0],
					vector: [v.friction, 0]
				}
			]
		};
	},
	practice: {
		given: {
			...{ force: [5, 60, 5], muStatic: [0.3, 1.1, 0.05] },
			angle: [0.6981317007977318, 1.2217304763960306, 0.017453292519943295]
		},
		ask: ['lockAngle', 'neededMu', 'normal', 'friction']
	}
});
