import { buildSetup } from '../statics/setup.ts';
import { drawStack, judgeStack, stackedPractice, stackedQuantities } from './stacked.ts';

/**
 * Two stacked blocks on a floor, the upper one pushed.
 * Formula: at most μ₁ m₁ g reaches the lower block, and the floor can hold μ₂ (m₁ + m₂) g.
 * Valid for: one coefficient a face (static and kinetic taken equal), no tipping. Source: derived
 */
export const pushUpper = buildSetup({
	id: 'push-upper',
	number: 2,
	title: 'Stacked blocks, the upper one pushed',
	scene: 'One block lies on another on a level floor, and the upper one is pushed.',
	notes: ['Static and kinetic coefficients of a face are taken equal.'],
	quantities: stackedQuantities,
	lines: [
		['jointLimit', 'muTop*massTop*gravity', 'The upper block presses with its weight.'],
		['floorLimit', 'muFloor*(massTop + massBottom)*gravity', 'The floor carries both.'],
		[
			'togetherForce',
			'when(jointLimit <= floorLimit, jointLimit, (jointLimit*(massTop + massBottom) - massTop*floorLimit)/massBottom)',
			'Friction between the blocks just carries the lower one along.'
		],
		[
			'jointFriction',
			'when(force <= togetherForce, when(force <= floorLimit, force, force - massTop*(force - floorLimit)/(massTop + massBottom)), jointLimit)',
			'Together: what the lower block needs; slipping: the limit.'
		],
		['floorFriction', 'min(jointFriction, floorLimit)', 'The floor holds back what it can.'],
		['accelerationTop', '(force - jointFriction)/massTop', 'What is left of the push.'],
		[
			'accelerationBottom',
			'(jointFriction - floorFriction)/massBottom',
			'Friction drives the lower block.'
		]
	],
	limits: ['togetherForce', 'jointLimit', 'floorLimit'],
	regime: judgeStack,
	diagram: drawStack('top'),
	practice: stackedPractice
});
