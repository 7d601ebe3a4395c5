import { allOf, drawBlock } from '../statics/block-diagram.ts';
import * as q from '../statics/quantities.ts';
import { buildSetup } from '../statics/setup.ts';

/**
 * A body that slides to rest on a level floor, or that a moving belt brings up to speed.
 * Formula: a = μ_k g, t = v/a, d = v²/(2a).
 * Valid for: level ground, friction as the only level force. Source: openstaxUniversityPhysics, section 6.2.
 */
export const coast = buildSetup({
	id: 'coast',
	number: 2,
	title: 'Sliding to rest, or brought up to speed',
	scene: 'A parcel slips on a level surface until the two move alike.',
	notes: [
		'Speed is the speed of slipping at the start.',
		'The mass cancels. Friction may brake a body or drive it forward.'
	],
	quantities: [
		q.speed('speed', 'speed of slipping at the start', 'v'),
		...[q.muKinetic({ default: undefined }), q.gravity],
		q.acceleration('deceleration', 'size of the acceleration', 'a', { min: 0 }),
		q.time('slideTime', 'time of slipping', 't'),
		q.length('slideDistance', 'distance slipped', 'd')
	],
	lines: [
		['deceleration', 'muKinetic*gravity', 'Friction μN on the mass m: the mass cancels.'],
		['slideTime', 'speed/deceleration', 'Speed lost evenly.'],
		['slideDistance', 'speed^2/(2*deceleration)', 'Mean speed times time.']
	],
	limits: [],
	regime: (values) =>
		values.muKinetic === 0
			? { regime: 'slides', because: 'Without friction it never stops.' }
			: { regime: 'slides', because: 'The surfaces slip until both move alike.' },
	diagram(values) {
		const v = allOf(values, 'deceleration', 'gravity');
		if (!v) return undefined;
		const { body, forces } = drawBlock({
			...{ id: 'box', name: 'parcel of 1 kg', at: [0, 0], slope: 0 },
			...{ weight: v.gravity, normal: v.gravity, friction: -v.deceleration },
			...{ mass: 1, acceleration: -v.deceleration }
		});
		return { bodies: [body], forces, lines: [{ name: 'floor', from: [-2, 0], to: [2, 0] }] };
	},
	practice: {
		given: { speed: [1, 25, 0.5], muKinetic: [0.1, 0.7, 0.01] },
		ask: ['slideTime', 'slideDistance', 'deceleration']
	}
});
