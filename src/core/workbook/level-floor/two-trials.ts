import { allOf, drawBlock } from '../statics/block-diagram.ts';
import * as q from '../statics/quantities.ts';
import { buildSetup } from '../statics/setup.ts';

const angle = (id: string, name: string, symbol: string) =>
	q.direction(id, name, symbol, { min: -Math.PI / 2, max: Math.PI / 2, default: 0 });

/**
 * Two forces along two directions, each of which just starts the same block: weight and
 * coefficient follow. Formula: P (cos α + μ sin α) = μ W for either.
 * Sign: angles positive upwards, negative into the floor.
 * Valid for: the same surfaces in both trials. Source: derived
 */
export const twoTrials = buildSetup({
	id: 'two-trials',
	number: 4,
	title: 'One block, two forces that just start it',
	scene: 'The same block is started twice on a level floor, along two directions.',
	notes: ['Both angles count from the level: positive lifts, negative presses down.'],
	quantities: [
		...[q.weight(), q.muStatic({ default: undefined })],
		angle('forceAngle', 'angle of the first force above the level', '\\alpha_1'),
		angle('forceAngle2', 'angle of the second force above the level', '\\alpha_2'),
		q.force('startForce', 'first force that just starts it', 'P_1'),
		q.force('startForce2', 'second force that just starts it', 'P_2'),
		q.force('normal', 'normal force in the first trial', 'N_1')
	],
	lines: [
		[
			'startForce',
			'muStatic*weight/(cos(forceAngle) + muStatic*sin(forceAngle))',
			'First trial: level part equals the static limit.'
		],
		[
			'startForce2',
			'muStatic*weight/(cos(forceAngle2) + muStatic*sin(forceAngle2))',
			'Second trial: the same.'
		],
		['normal', 'weight - startForce*sin(forceAngle)', 'Nothing moves up or down.']
	],
	limits: [
		'startForce',
		'startForce2',
		'weight',
		'muStatic',
		'forceAngle',
		'forceAngle2',
		'normal'
	],
	regime: () => ({ regime: 'about to slip', because: 'Each force just starts it.' }),
	noLimit: (_, ask) =>
		ask.startsWith('startForce')
			? { regime: 'self-locks', because: 'However hard the push along this line, it never slides.' }
			: undefined,
	diagram(values) {
		const v = allOf(values, 'weight', 'normal', 'startForce', 'forceAngle', 'muStatic');
		if (!v) return undefined;
		const { body, forces } = drawBlock({
			...{ id: 'block', name: 'block, first trial', at: [0, 0], slope: 0, weight: v.weight },
			...{ normal: v.normal, friction: -v.startForce * Math.cos(v.forceAngle) },
			others: [
				{
					kind: 'push',
					name: 'first force',
					symbol: 'P_1',
					angle: v.forceAngle,
					size: v.startForce
				}
			]
		});
		return { bodies: [body], forces, lines: [{ name: 'floor', from: [-2, 0], to: [2, 0] }] };
	},
	practice: {
		given: {
			...{ weight: [100, 900, 10], muStatic: [0.2, 0.6, 0.02] },
			forceAngle: [0.17453292519943295, 0.6108652381980153, 0.08726646259971647],
			forceAngle2: [-0.6108652381980153, -0.17453292519943295, 0.08726646259971647]
		},
		ask: ['startForce', 'startForce2']
	}
});
