import { evaluateHang } from '#core/strength/evaluate-hang.ts';
import { frictionRatio } from '#core/friction/friction-ratio.ts';
import { loadAtNetMass } from '#core/mechanics/load-at-net-mass.ts';
import { kilopascalsToPascals } from '#core/units/pressure.ts';
import { laws } from '#reference/laws.ts';
import { rowOf } from '#reference/row-of.ts';
import { loadTrends } from '#reference/skin-friction-trends.ts';
import { lessonGivens } from '#seeds/lessons.ts';
import { degrees, kilograms, kilopascals, percent, ratio, say, squareMillimetres } from '../say.ts';
import type { LessonText, Writing } from '../types.ts';
import { formulas } from './formulas.ts';
import { filmHang } from './film-hang.ts';

const given = lessonGivens.pressure;

/** Loads at which the room's sketch has a point. */
const sketched = 7;

/** Everything said in the lesson on pressure and patch. */
export function write(o: Writing): LessonText {
	const { hang, netMass, mass } = o;
	const at = (m: number, h = hang) => evaluateHang(h, loadAtNetMass(m, h));
	const [light, heavy] = [at(given.light), at(given.heavy)];
	const film = filmHang(hang);
	const [filmLight, filmHeavy] = [at(given.light, film), at(given.heavy, film)];
	const here = at(netMass);
	const small = o.hangWith({ area: given.fields.area * given.patchShare });
	const [low, high] = given.pressures.map(kilopascalsToPascals) as [number, number];
	const from = given.light - (given.heavy - given.light) / 2;
	const to = given.heavy + (given.heavy - given.light) / 2;
	const loads = Array.from(
		{ length: sketched },
		(_, i) => from + ((to - from) * i) / (sketched - 1)
	);
	const standing = (key: string) => {
		const { name, loadEffect, standing: words } = rowOf(laws, key);
		return say`${name}: ${loadEffect}. ${words}`;
	};
	return {
		aim: say`Friction can depend on how hard and how widely the skin is pressed. Three families of law bend the line three ways, and they are not equally well supported.`,
		situation: [
			say`A hold slopes ${degrees(hang.slope)}; the rope is plumb and the patch stays the same size, ${squareMillimetres(here.padArea, 'padArea')} for each finger.`,
			say`This skin sticks: a part of its friction goes with the patch and not with the load.`
		],
		question: say`As the net load grows, what does the slip margin do?`,
		options: [
			{ key: 'rises', says: say`It rises: more pressure, more grip` },
			{ key: 'stays', says: say`It stays: load cancels` },
			{ key: 'falls', says: say`It falls: the sticking part does not grow with load` }
		],
		right: 'falls',
		popular: 'rises',
		mark: {
			kind: 'curve',
			says: say`Sketch the slip margin from light to heavy. The middle line is the edge of slipping.`,
			loads,
			truth: loads.map((m) => at(m).slipMargin)
		},
		reveal: [
			say`It falls: from ${ratio(light.slipMargin, 'slipMargin')} at ${kilograms(given.light, mass)} to ${ratio(heavy.slipMargin, 'slipMargin')} at ${kilograms(given.heavy, mass)}, a change of ${percent(heavy.slipMargin / light.slipMargin - 1, 'slipMargin')}.`,
			say`Under the assumed film law the same step would be ${percent(filmHeavy.slipMargin / filmLight.slipMargin - 1, 'slipMargin')}; under a constant ratio, nothing at all.`,
			say`Halve the patch at ${kilograms(netMass, mass)} and the margin goes from ${ratio(here.slipMargin, 'slipMargin')} to ${ratio(at(netMass, small).slipMargin, 'slipMargin')}: for skin that sticks a bigger patch helps.`
		],
		tempting: say`Pressing harder does give more friction: the force grows. The ratio is another matter: it grows only if friction grows faster than the load, and for sticking skin it grows more slowly.`,
		tryIt: {
			hang: false,
			kit: [
				'a smooth plate, such as a clean tile',
				'a kitchen scale',
				'a dry cloth',
				'an ink pad and squared paper'
			],
			steps: [
				say`Lay the plate on the scale. Press one fingertip lightly and draw it sideways until it slides; then the same with a firm press. Wipe the finger before each go, and mix the order.`,
				say`Press an inked fingertip on squared paper, light and firm, and count the squares.`
			],
			expect: say`Force grows with press in both. The print grows quickly at first and hardly at all after. Which way the ratio goes depends on skin, plate and damp: write down all three.`
		},
		notes: [
			say`Let one person sketch for the room, point by point, then ask who would draw it otherwise.`,
			say`Show all three laws through the same point. Say which have been measured on skin and at what loads.`,
			say`For skin the idea that area matters is not simply wrong; the textbook model is what leaves it out.`,
			say`The rising law carries the words “assumed, not shown by experiments” wherever it appears; keep them.`
		],
		unknown: [
			say`${rowOf(loadTrends, 'hang').finding} Every law here is drawn far beyond the loads at which fingertips were tested.`,
			standing('constant'),
			standing('adhesion'),
			standing('deformation'),
			standing('film')
		],
		formulas,
		exercises: [
			{
				ask: say`For the lesson’s skin find the friction ratio at ${kilopascals(low)} and at ${kilopascals(high)}.`,
				answer: say`${ratio(frictionRatio(hang.friction, low), 'ratio')} and ${ratio(frictionRatio(hang.friction, high), 'ratio')}.`
			},
			{
				ask: say`At ${kilograms(given.light, mass)}, what is the mean pressure under a fingertip, and what would it be on half the patch?`,
				answer: say`${kilopascals(light.pressure, 'pressure')}, and ${kilopascals(at(given.light, small).pressure, 'pressure')}: twice as much.`
			},
			{
				ask: say`Someone slips light and holds heavy on a slick hold. Name two reasons that need no rising law.`,
				answer: say`A rope that leads away from the wall, and loads tried in rising order. Also: a hand laid flatter, a push from the feet, or a failure that was no slip.`
			}
		]
	};
}
