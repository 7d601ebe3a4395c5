import { allOf } from '../statics/block-diagram.ts';
import * as q from '../statics/quantities.ts';
import { buildSetup } from '../statics/setup.ts';
import { drawDrum } from './rope-round-drum.ts';

/**
 * A band round a turning drum, one end fixed, the other pulled by a lever.
 * Formula: lever at the tight end, M = r T (1 − exp(−μ β)); at the slack end, M = r T (exp(μ β) − 1).
 * Valid for: a limp band that slips. Source: derived
 */
export const bandBrake = buildSetup({
	id: 'band-brake',
	number: 3,
	title: 'Band brake',
	scene: 'A lever pulls a band round a turning drum.',
	notes: ['The lever ratio is the band tension over the force on the lever.'],
	quantities: [
		q.force('leverForce', 'force on the lever', 'F'),
		q.ratio('leverRatio', 'lever ratio', 'i'),
		q.force('bandTension', 'tension of the end at the lever', 'T'),
		q.coefficient('mu', 'friction coefficient', '\\mu'),
		q.quantity('wrap', 'angle of wrap', '\\beta', 'rad', { min: 0, max: 1000 }),
		q.length('diameter', 'diameter of the drum', 'd', { round: 'diameter' }),
		q.length('radius', 'radius of the drum', 'r', { round: 'radius' }),
		q.force('slackTension', 'tension of the far end, lever at the tight end', 'T_2'),
		q.force('tightTension', 'tension of the far end, lever at the slack end', 'T_1', {
			max: 1e300
		}),
		q.torque('torqueLeverTight', 'braking moment, lever at the tight end', 'M_1'),
		q.torque('torqueLeverSlack', 'braking moment, lever at the slack end', 'M_2', { max: 1e300 })
	],
	lines: [
		['bandTension', 'leverForce*leverRatio', 'Moments about the pivot of the lever.'],
		['radius', 'diameter/2', 'Half the diameter.'],
		['slackTension', 'bandTension*exp(-mu*wrap)', 'The drum turns away from the far end.'],
		['tightTension', 'bandTension*exp(mu*wrap)', 'The drum turns towards the lever.'],
		[
			'torqueLeverTight',
			'radius*(bandTension - slackTension)',
			'Difference of the tensions times arm.'
		],
		[
			'torqueLeverSlack',
			'radius*(tightTension - bandTension)',
			'Difference of the tensions times arm.'
		]
	],
	limits: [],
	regime: () => ({ regime: 'slides', because: 'The drum turns inside the band.' }),
	diagram(values) {
		const v = allOf(values, 'bandTension', 'slackTension', 'wrap');
		if (!v) return undefined;
		const radius = values.radius ?? 0.5;
		return drawDrum({ tight: v.bandTension, slack: v.slackTension, wrap: v.wrap, radius });
	},
	practice: {
		given: {
			...{ leverForce: [50, 400, 10], leverRatio: [1.5, 5, 0.5], mu: [0.2, 0.5, 0.01] },
			...{
				wrap: [3.141592653589793, 4.71238898038469, 0.08726646259971647],
				radius: [0.1, 0.4, 0.02]
			}
		},
		ask: ['torqueLeverTight', 'torqueLeverSlack', 'slackTension', 'bandTension']
	}
});
