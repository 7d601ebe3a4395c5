import type { TermGroup } from './terms.ts';

export const frictionTerms: readonly TermGroup[] = [
	{
		name: 'Forces and friction',
		terms: [
			{
				id: 'free-body-diagram',
				word: 'free-body diagram',
				meaning:
					'A drawing of one body alone with every force that acts on it. If the body is at rest, the arrows add up to nothing.'
			},
			{
				id: 'contact-force',
				word: 'contact force',
				unit: 'N',
				meaning:
					'All that the hold does to one hand, as one force. Split along the surface it is the normal force and the friction.',
				see: ['normal-force', 'friction-needed']
			},
			{
				id: 'normal-force',
				word: 'normal force',
				symbol: 'N',
				unit: 'N',
				meaning:
					'The part of the contact force that presses square into the surface. It is the weight only on level ground with nothing else pulling.'
			},
			{
				id: 'friction-needed',
				word: 'friction needed',
				symbol: 'Q',
				unit: 'N, or as a ratio to N',
				meaning:
					'The force along the surface that keeps the hand where it is. Over the normal force it is the ratio needed: on a flat slope with a plumb pull, the tangent of the slope, whatever the load.',
				see: ['slip-angle']
			},
			{
				id: 'friction-limit',
				word: 'friction limit',
				unit: 'N',
				meaning:
					'The most friction the contact can give at this normal force: the coefficient times the normal force. Friction at rest is whatever balance asks for, up to this limit.',
				see: ['friction-cone', 'slip']
			},
			{
				id: 'friction-cone',
				word: 'friction cone',
				meaning:
					'Every direction in which the contact force can point without slip, about the normal force. As the surface is pressed harder under a constant coefficient, the cone keeps its angle.',
				see: ['slip-angle']
			},
			{
				id: 'slip',
				word: 'slip',
				meaning:
					'The skin slides because more friction is needed than the contact can give. The fingers have not opened: that is the other way a hang ends.',
				see: ['friction-limit', 'strength-edge']
			},
			{
				id: 'friction-coefficient',
				word: 'friction coefficient',
				symbol: 'μ',
				unit: 'ratio',
				meaning:
					'The most friction a contact gives, over its normal force. It belongs to a pair of surfaces and their state – clean, damp, chalked – and not to a material.'
			},
			{
				id: 'friction-law',
				word: 'friction law',
				meaning:
					'How the friction ratio depends on pressure. The textbook law says: not at all. Skin may differ, and how is the question of these pages.',
				see: ['pressure']
			},
			{
				id: 'static-and-sliding',
				word: 'starting and sliding friction',
				meaning:
					'Starting (static) friction resists the first slip and is whatever balance needs, up to its limit; sliding (kinetic) friction acts once things move, and is often smaller.'
			},
			{
				id: 'slip-angle',
				word: 'slip angle',
				unit: '°',
				meaning:
					'The tilt at which a thing resting on a surface begins to slide. Its tangent is the friction coefficient.',
				see: ['friction-coefficient']
			},
			{
				id: 'pressure',
				word: 'pressure',
				symbol: 'p',
				unit: 'kPa',
				meaning: 'Normal force over contact area, as a mean over the patch.'
			},
			{
				id: 'adhesion',
				word: 'adhesion part',
				symbol: 'τ₀',
				unit: 'kPa',
				meaning:
					'Friction that goes with the area that sticks and not with the load: it makes the ratio fall as the pressure rises.'
			},
			{
				id: 'film',
				word: 'film',
				meaning:
					'A slippery layer – dust, loose powder, sweat – between skin and hold. If pressure broke it, the ratio would rise with load; no one has measured that for a finger.'
			}
		]
	}
];
