import type { Values } from '../algebra/evaluate.ts';
import type { Native } from '../algebra/expression.ts';
import { allOf } from '../statics/block-diagram.ts';
import type { Diagram } from '../statics/diagram.ts';
import * as q from '../statics/quantities.ts';
import { completed } from '../statics/run.ts';
import { buildSetup } from '../statics/setup.ts';
import type { Quantity, Setup, Verdict } from '../statics/types.ts';
import { horizontalLoad, slipMargin, strengthLimit, verticalLoad } from './hang-formulas.ts';

const half = Math.PI / 2;

const common: Quantity[] = [
	q.mass('netMass', 'net mass on the hands', 'm', { max: 300 }),
	q.mass('hangingMass', 'hanging mass without the rope', 'M', { max: 300 }),
	q.direction('ropeAngle', 'angle of the rope from the vertical', '\\varphi', {
		...{ min: -1.5, max: 1.5, default: 0 }
	}),
	q.signedForce('push', 'steady outward push', 'P', { min: -1e4, max: 1e4, default: 0 }),
	q.quantity('hands', 'number of hands', 'n_h', '1', { min: 1, max: 2, whole: true, default: 2 }),
	q.direction('slope', 'slope of the hold', '\\sigma', { min: -half, max: half }),
	q.quantity('fingers', 'number of fingers of one hand', 'n_f', '1', {
		min: 1,
		max: 5,
		default: 4
	}),
	q.quantity('padArea', 'contact area of one fingertip', 'a', 'm²', {
		...{ min: 0, open: true, max: 3.36e-4, default: 2.5e-4 }
	}),
	q.force('referenceForce', 'best force of one hand on a flat 20 mm edge', 'F_{ref}', {
		open: true,
		max: 1e6
	}),
	q.force('vertical', 'downward load on both hands', 'V', { open: true }),
	q.signedForce('horizontal', 'outward load on both hands', 'H'),
	q.force('force', 'force on one hand', 'F'),
	q.direction('tilt', 'tilt of the load from straight down', '\\delta'),
	q.force('normal', 'normal force on one hand', 'N', { open: true }),
	q.signedForce('tangential', 'friction needed at one hand', 'Q'),
	q.quantity('demand', 'friction ratio needed', 'Q/N', '1', { min: -1e6, max: 1e6 }),
	q.quantity('pressure', 'mean pad pressure', 'p', 'Pa', { min: 0, open: true, max: 1e12 }),
	q.quantity('ratio', 'friction ratio that the law gives', '\\mu(p)', '1', { min: 0, max: 1e6 }),
	q.force('frictionLimit', 'greatest friction at one hand', 'F_{max}'),
	q.quantity('slipMargin', 'slip margin', 'k_s', '1', { min: 0, max: 1e6, default: 1 }),
	q.force('strengthLimit', 'greatest force the fingers of one hand hold', 'F_s'),
	q.quantity('strengthMargin', 'strength margin', 'k_f', '1', { min: 0, max: 1e9 }),
	q.quantity('margin', 'smaller of the two margins', 'k', '1', { min: 0, max: 1e6 })
];

function judge(values: Values): Verdict | undefined {
	const { normal, slipMargin: slip, strengthMargin: strength } = values;
	if (normal !== undefined && normal <= 0)
		return {
			regime: 'lifts off',
			because: 'The pull leads off the hold: there is no normal force.'
		};
	if (slip === undefined) return undefined;
	if (strength !== undefined && strength < Math.min(1, slip))
		return { regime: 'strength gives out', because: 'The fingers open before the skin slips.' };
	if (Math.abs(slip - 1) <= 1e-9)
		return { regime: 'about to slip', because: 'Needed and greatest friction are equal.' };
	return slip > 1
		? { regime: 'rests', because: 'Friction can give more than is needed.' }
		: { regime: 'slides', because: 'More friction is needed than the law gives.' };
}

/** When no load is at the edge: does every load hold, or none, and does load cancel? */
function edgeless(setup: Setup, values: Values, ask: string): Verdict | undefined {
	if (values.normal !== undefined && values.normal <= 0) return judge(values);
	if (ask === 'slipMargin' && values.tangential !== undefined && values.tangential <= 0)
		return { regime: 'rests', because: 'The hold needs no friction, so it cannot slip.' };
	if (ask !== 'netMass') return undefined;
	const { slope, ropeAngle = 0, push = 0, hangingMass, fingers, hands, padArea } = values;
	if (slope === undefined || hangingMass === undefined) return undefined;
	const kept = Object.keys(values).filter(
		(id) =>
			setup.quantities.some((each) => each.id === id) &&
			!setup.relations.some((relation) => relation.gives === id)
	);
	const inputs = Object.fromEntries(kept.map((id) => [id, values[id]!]));
	const at = (netMass: number) =>
		completed(setup, {
			...inputs,
			ropeAngle,
			push,
			hangingMass,
			fingers: fingers!,
			hands: hands!,
			padArea: padArea!,
			netMass
		}).slipMargin;
	const margins = [20, 45, 70, 100, 130].map(at).filter((each) => each !== undefined);
	const [first] = margins;
	if (first === undefined) return undefined;
	const level = margins.every((each) => each === first || Math.abs(each / first - 1) < 1e-9);
	const why = level ? 'Load cancels here' : 'No load lies at the edge';
	return margins.every((each) => each >= 1)
		? {
				regime: 'any load',
				because: `${why}, and the slip margin is above 1: any load holds, as far as slipping goes.`
			}
		: { regime: 'no load', because: `${why}, and the slip margin is below 1: no load holds.` };
}

function draw(values: Values): Diagram | undefined {
	const v = allOf(values, 'slope', 'vertical', 'horizontal', 'hands', 'normal', 'tangential');
	if (!v) return undefined;
	const { slope, normal, tangential } = v;
	const [sine, cosine] = [Math.sin(slope), Math.cos(slope)];
	const on = { body: 'hand', at: [0, 0] as [number, number] };
	return {
		bodies: [
			{
				id: 'hand',
				name: 'one hand',
				outline: [
					[0, 0],
					[0.02 * cosine, -0.02 * sine]
				]
			}
		],
		lines: [
			{ name: 'hold', from: [-0.03 * cosine, 0.03 * sine], to: [0.05 * cosine, -0.05 * sine] }
		],
		forces: [
			{
				...on,
				kind: 'rope',
				name: 'load on one hand',
				symbol: 'F',
				vector: [v.horizontal / v.hands, -v.vertical / v.hands]
			},
			{
				...on,
				kind: 'normal',
				name: 'normal force',
				symbol: 'N',
				vector: [normal * sine, normal * cosine]
			},
			{
				...on,
				kind: 'friction',
				name: 'friction needed',
				symbol: 'Q',
				vector: [-tangential * cosine, tangential * sine]
			}
		]
	};
}

/**
 * A hang from a sloping hold with one friction law; the numbers come from the hang's mechanics.
 * Formula: N = F cos(σ + δ), Q = F sin(σ + δ), slip margin μ(p) N/Q.
 * Sign: slope positive towards the person, rope and push positive away from the wall.
 * Valid for: fingertip pads of a fixed patch on a flat hold; g is 9.80665 m/s². Source: derived
 */
export function hangSetup(of: {
	id: string;
	number: number;
	title: string;
	law: Quantity[];
	ratio: Native;
	notes: string[];
	practice: Setup['practice']['given'];
}): Setup {
	const setup: Setup = buildSetup({
		...{ id: of.id, number: of.number, title: of.title },
		scene: 'A person hangs by the fingertips from a sloping, slick hold.',
		notes: [
			'Slope counts downwards towards the person; rope and push count away from the wall.',
			'Where no margin is given, the load is the one at which it is about to slip.',
			'g is 9.80665 m/s² here. Teaching numbers; no advice on what to load.',
			...of.notes
		],
		quantities: [...common, ...of.law],
		lines: [
			['vertical', verticalLoad, 'The hands carry the net mass.'],
			['horizontal', horizontalLoad, 'Rope and push lead away from the wall.'],
			['force', 'hypot(vertical, horizontal)/hands', 'Both hands carry alike.'],
			['tilt', 'atan(horizontal/vertical)', 'Direction of the load.'],
			['normal', 'force*cos(slope + tilt)', 'Part into the hold.'],
			['tangential', 'force*sin(slope + tilt)', 'Part down the hold: friction has to balance it.'],
			[
				'demand',
				'tangential/normal',
				'Needed friction over normal force: the load cancels when plumb.'
			],
			['pressure', 'normal/(fingers*padArea)', 'Normal force over all pads.'],
			['ratio', of.ratio, 'The friction law.'],
			['frictionLimit', 'ratio*normal', 'The most that friction can give.'],
			['slipMargin', slipMargin, 'Above 1 it holds.'],
			[
				'strengthLimit',
				strengthLimit,
				'Strength on a flat edge, times the arm of the load there over its arm here.'
			],
			['strengthMargin', 'strengthLimit/force', 'Above 1 the fingers stay closed.'],
			['margin', 'min(slipMargin, strengthMargin)', 'The smaller one decides.']
		],
		limits: [],
		regime: judge,
		noLimit: (values, ask) => edgeless(setup, values, ask),
		diagram: draw,
		practice: {
			given: {
				...{ hangingMass: [50, 95, 1], netMass: [30, 90, 1] },
				slope: [0.3490658503988659, 0.6108652381980153, 0.017453292519943295],
				...of.practice
			},
			ask: ['slipMargin', 'demand', 'normal', 'tangential', 'frictionLimit']
		}
	});
	return setup;
}
