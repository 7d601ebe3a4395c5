import { buildSetup } from '../statics/setup.ts';
import { drawStack, judgeStack, stackedPractice, stackedQuantities } from './stacked.ts';

/**
 * Two stacked blocks on a floor, the lower one pulled from under the upper.
 * Formula: they stay together up to (μ₁ + μ₂)(m₁ + m₂) g.
 * Valid for: one coefficient a face (static and kinetic taken equal), no tipping. Source: derived
 */
export const pullLower = buildSetup({
	id: 'pull-lower',
	number: 3,
	title: 'Stacked blocks, the lower one pulled',
	scene: 'One block lies on another on a level floor, and the lower one is pulled.',
	notes: ['Static and kinetic coefficients of a face are taken equal.'],
	quantities: stackedQuantities,
	lines: [
		['jointLimit', 'muTop*massTop*gravity', 'The upper block presses with its weight.'],
		['floorLimit', 'muFloor*(massTop + massBottom)*gravity', 'The floor carries both.'],
		[
			'togetherForce',
			'floorLimit + (massTop + massBottom)*jointLimit/massTop',
			'Friction alone must speed the upper block up.'
		],
		[
			'jointFriction',
			'when(force <= togetherForce, max(0, massTop*(force - floorLimit)/(massTop + massBottom)), jointLimit)',
			'Together: what the upper block needs; slipping: the limit.'
		],
		['floorFriction', 'min(force, floorLimit)', 'The floor holds back what it can.'],
		['accelerationTop', 'jointFriction/massTop', 'Friction drives the upper block.'],
		[
			'accelerationBottom',
			'(force - floorFriction - jointFriction)/massBottom',
			'What is left of the pull.'
		]
	],
	limits: ['togetherForce', 'jointLimit', 'floorLimit'],
	regime: judgeStack,
	diagram: drawStack('bottom'),
	practice: stackedPractice
});
