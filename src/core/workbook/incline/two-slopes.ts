import { allOf, drawBlock } from '../statics/block-diagram.ts';
import * as q from '../statics/quantities.ts';
import { buildSetup } from '../statics/setup.ts';

/**
 * The same block dragged up two slopes: weight and coefficient follow.
 * Formula: P = W (sin θ + μ cos θ) for either, the force along the slope.
 * Valid for: the same surfaces on both slopes. Source: derived
 */
export const twoSlopes = buildSetup({
	id: 'two-slopes',
	number: 4,
	title: 'One block started up two slopes',
	scene: 'A force along the slope starts the same block up two different slopes.',
	notes: ['Both forces act along the slope, upwards.'],
	quantities: [
		...[q.weight(), q.muStatic({ default: undefined })],
		q.slope('slope', 'first slope', '\\theta_1'),
		q.slope('slope2', 'second slope', '\\theta_2'),
		q.force('startUpForce', 'force that just starts it up the first slope', 'P_1'),
		q.force('startUpForce2', 'force that just starts it up the second slope', 'P_2')
	],
	lines: [
		[
			'startUpForce',
			'weight*(sin(slope) + muStatic*cos(slope))',
			'First slope: friction at its limit acts down.'
		],
		['startUpForce2', 'weight*(sin(slope2) + muStatic*cos(slope2))', 'Second slope: the same.']
	],
	limits: ['weight', 'muStatic', 'slope', 'slope2', 'startUpForce', 'startUpForce2'],
	regime: () => ({ regime: 'about to slip', because: 'Each force just starts it up.' }),
	diagram(values) {
		const v = allOf(values, 'slope', 'weight', 'muStatic', 'startUpForce');
		if (!v) return undefined;
		const normal = v.weight * Math.cos(v.slope);
		const { body, forces } = drawBlock({
			...{ id: 'block', name: 'block, first slope', at: [0, 0], slope: v.slope, weight: v.weight },
			...{ normal, friction: -v.muStatic * normal },
			others: [
				{ kind: 'push', name: 'first force', symbol: 'P_1', angle: v.slope, size: v.startUpForce }
			]
		});
		return { bodies: [body], forces, lines: [] };
	},
	practice: {
		given: {
			...{ weight: [100, 900, 10], muStatic: [0.1, 0.5, 0.02] },
			slope: [0.17453292519943295, 0.3490658503988659, 0.017453292519943295],
			slope2: [0.4363323129985824, 0.6108652381980153, 0.017453292519943295]
		},
		ask: ['startUpForce', 'startUpForce2']
	}
});
