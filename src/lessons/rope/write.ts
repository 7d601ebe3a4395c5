import { evaluateHang } from '#core/strength/evaluate-hang.ts';
import { hangLoad } from '#core/mechanics/hang-load.ts';
import { loadAtNetMass } from '#core/mechanics/load-at-net-mass.ts';
import { leanFromPlumbLine } from '#core/measure/rope-lean.ts';
import { leanToSlip } from '#core/mechanisms/rope-lean.ts';
import { degreesToRadians } from '#core/units/angle.ts';
import { geometryMechanisms } from '#reference/mechanisms/geometry.ts';
import { rowOf } from '#reference/row-of.ts';
import { lessonGivens } from '#seeds/lessons.ts';
import { onlyWindow, windowSays } from '../edges.ts';
import { slipSlope } from '../slip-slope.ts';
import { degrees, kilograms, millimetres, newtons, ratio, say } from '../say.ts';
import type { LessonText, Writing } from '../types.ts';
import { formulas } from './formulas.ts';

const given = lessonGivens.rope;

/** Everything said in the lesson on the rope that leans. */
export function write(o: Writing): LessonText {
	const { hang, netMass, mass, range } = o;
	const plumb = o.hangWith({ rope: 0 });
	const inward = o.hangWith({ rope: -given.fields.rope });
	const slight = o.hangWith({ rope: given.smallLean });
	const window = onlyWindow(hang, range);
	const slightWindow = onlyWindow(slight, range);
	const load = loadAtNetMass(netMass, hang);
	const here = evaluateHang(hang, load);
	const upright = evaluateHang(plumb, loadAtNetMass(netMass, plumb));
	const slips = slipSlope({ hang: plumb, range });
	const body = hang.hangingMass;
	const lean = degrees(hang.ropeAngle);
	const other = hangLoad({
		bodyMass: given.other.body,
		assistForce: given.other.assist,
		assistAngle: degreesToRadians(given.other.lean)
	});
	const hold = o.hangWith({ slope: given.other.slope });
	const leanThatSlips = leanToSlip({
		slope: hang.slope,
		ratio: here.ratio,
		hangingMass: body,
		netMass
	});
	const read = leanFromPlumbLine({
		offset: given.plumbLine.offset / 1000,
		length: given.plumbLine.length / 1000
	});
	return {
		aim: say`A rope that leads a little away from the wall makes a light hang slip where a heavier one holds, though nothing about the skin has changed.`,
		situation: [
			say`The same kind of hold: it slopes ${degrees(hang.slope)}, and the friction ratio is ${ratio(here.ratio, 'ratio')} at every load.`,
			say`With a plumb rope, ${windowSays(onlyWindow(plumb, range), o)}.`,
			say`Now the assist rope leads ${lean} away from the wall. A person of ${kilograms(body, mass)} hangs and the rope takes load off.`
		],
		question: say`The rope takes off more and more. What happens to the hand?`,
		options: [
			{ key: 'same', says: say`Nothing: load cancels, as before` },
			{ key: 'easier', says: say`It gets safer: there is less to hold` },
			{ key: 'slips', says: say`Below some load it slips` }
		],
		right: 'slips',
		popular: 'easier',
		mark: {
			kind: 'load',
			says: say`If it slips when lighter: at which load does that begin?`,
			from: range.from,
			to: body,
			truth: window.lowerLimit === 'slip' ? window.from : undefined
		},
		reveal: [
			say`With this rope, ${windowSays(window, o)}. Lighter than ${kilograms(window.from, mass, 'window.from')} the hand slips.`,
			say`At ${kilograms(netMass, mass)} the pull leans by ${degrees(load.tilt, 'tilt')}. The hold asks for a ratio of ${ratio(here.demand, 'demand')} instead of ${ratio(upright.demand, 'demand')}, as if it were steeper than the ${degrees(slips, 'breaks')} at which this skin slips.`,
			say`A lean of only ${degrees(slight.ropeAngle)} still makes the hand slip below ${kilograms(slightWindow.from, mass, 'window.from')}. Led ${lean} toward the wall instead, ${windowSays(onlyWindow(inward, range), o)}.`
		],
		tempting: say`There is less to hold, that is true. But the rope does not only lift: it also pulls the body outward, and that part grows with every kilogram it takes, while the part that presses shrinks.`,
		tryIt: {
			hang: true,
			kit: [
				'a thin string with a nut on it, for a plumb line',
				'a folding rule',
				'the rope as it is usually rigged, on a backed-up anchor put there by a competent person'
			],
			steps: [
				say`In a still, easy hang with some assist let a second person hold the plumb line beside the rope, at the body.`,
				say`Read how far rope and string are apart one rule’s length higher up.`,
				say`Read again with more assist, and with the rope led over the other side.`
			],
			expect: say`Few ropes are plumb. ${millimetres(given.plumbLine.offset / 1000)} over ${millimetres(given.plumbLine.length / 1000)} is a lean of ${degrees(read.value, 'value')}. Those who do not hang pull a block up a board with a spring balance, once straight and once at an angle.`
		},
		notes: [
			say`Ask for votes first, then drag the mark to where most of the room points. Say aloud that nobody has mentioned skin.`,
			say`In the force picture take load off slowly and let the room watch the lean of the pull, not its length.`,
			say`Move the rope slider through plumb to the other side: the limit walks away and is gone.`,
			say`This is the first thing to rule out before anyone speaks of skin that likes pressure. ${rowOf(geometryMechanisms, 'rope-lean').tellTale}`
		],
		unknown: [
			say`How far your own rope leans at each load. Under a fixed pulley the angle shrinks as the person swings out, so one angle for all loads says too much where the rope takes a large share.`,
			say`Whether a light hang of yours slipped for this reason: only the same load with the rope led the other way can tell.`
		],
		formulas,
		exercises: [
			{
				ask: say`A person of ${kilograms(given.other.body, mass)} is lifted by ${newtons(given.other.assist)} in a rope that leads ${degrees(degreesToRadians(given.other.lean))} away from the wall. By how much does the pull on the hands lean?`,
				answer: say`By ${degrees(other.tilt, 'tilt')}, away from the wall.`
			},
			{
				ask: say`The hold slopes ${degrees(hold.slope)}. Which ratio does that pull need, and which would it need with a plumb rope?`,
				answer: say`${ratio(evaluateHang(hold, other).demand, 'demand')}, against ${ratio(evaluateHang(hold, loadAtNetMass(netMass, { ...hold, ropeAngle: 0 })).demand, 'demand')} plumb.`
			},
			{
				ask: say`On the lesson’s hold, at which lean does a net load of ${kilograms(netMass, mass)} begin to slip?`,
				answer: say`At ${degrees(leanThatSlips, 'leanToSlip')} from plumb.`
			}
		]
	};
}
