import { enduranceFraction } from '#core/strength/endurance.ts';
import { evaluateHang } from '#core/strength/evaluate-hang.ts';
import { loadAtNetMass } from '#core/mechanics/load-at-net-mass.ts';
import { laws } from '#reference/laws.ts';
import { rowOf } from '#reference/row-of.ts';
import { lessonGivens } from '#seeds/lessons.ts';
import { onlyWindow, windowSays } from '../edges.ts';
import { kilograms, newtons, percent, ratio, say, seconds, squareMillimetres } from '../say.ts';
import type { LessonText, Writing } from '../types.ts';
import { formulas } from './formulas.ts';

const given = lessonGivens.window;

/** Everything said in the lesson on the holding window. */
export function write(o: Writing): LessonText {
	const { hang, netMass, mass, range } = o;
	const open = o.hangWith({ area: given.openArea });
	const long = o.hangWith({ hold: given.longHold });
	const [small, wide, longer] = [hang, open, long].map((one) => onlyWindow(one, range)) as [
		ReturnType<typeof onlyWindow>,
		ReturnType<typeof onlyWindow>,
		ReturnType<typeof onlyWindow>
	];
	const at = (m: number, h = hang) => evaluateHang(h, loadAtNetMass(m, h));
	const here = at(netMass);
	const openHere = at(netMass, open);
	const heavy = at(given.wrongAim);
	const film = rowOf(laws, 'film');
	const share = enduranceFraction(given.longHold) / enduranceFraction(hang.strength.holdTime);
	return {
		aim: say`Two limits bound what a hand can hold: the skin slips or the fingers open. Where both slope, only loads between them hold, and an opened grip can need a heavier hang.`,
		situation: [
			say`A slick hold, and the one law under which lighter can slip with a plumb rope: a film that pressure breaks. ${film.standing}`,
			say`With a small patch of ${squareMillimetres(here.padArea, 'padArea')} for each finger, ${windowSays(small, o)}.`
		],
		question: say`The same person opens the grip, so that each patch grows to ${squareMillimetres(openHere.padArea, 'padArea')}. Where do the loads that hold move?`,
		options: [
			{ key: 'lighter', says: say`To lighter loads: a bigger patch holds better` },
			{ key: 'stay', says: say`Nowhere: the hold is the same` },
			{ key: 'heavier', says: say`To heavier loads: the same pressure needs more load` }
		],
		right: 'heavier',
		popular: 'lighter',
		mark: {
			kind: 'load',
			says: say`Where do you expect the lightest load that the opened grip holds?`,
			from: range.from,
			to: range.to,
			truth: wide.lowerLimit === 'slip' ? wide.from : undefined
		},
		reveal: [
			say`Opened, ${windowSays(wide, o)}. At ${kilograms(netMass, mass)} the small patch ${here.holds ? 'held' : 'did not hold'}; the wide one ${openHere.holds ? 'holds' : 'slips'}, with a slip margin of ${ratio(openHere.slipMargin, 'slipMargin')}.`,
			say`The slip edge rises because the same load is spread thinner. The strength edge rises too: the longer patch brings the force nearer to the joint, so the arm is shorter.`,
			say`A longer hold pulls the strength edge down: for ${seconds(given.longHold)} instead of ${seconds(hang.strength.holdTime)} only ${percent(share, 'enduranceFraction')} of the force is left, and with the small patch ${windowSays(longer, o)}.`
		],
		tempting: say`Everyday wisdom says spread the load. For skin that sticks it is right. Under this law it is wrong, because what breaks the film is pressure, and the wider patch has less of it. Which of the two your hold is, is a question for trials.`,
		tryIt: {
			hang: true,
			kit: [
				'a flat edge of known depth for a best hang on record',
				'a sloping hold',
				'a scale in the line of the rope, or under the feet'
			],
			steps: [
				say`At an easy load hang small and open in turn, and have a second person call what failed first: skin sliding or fingers opening.`,
				say`Note patch (an ink print), load, and which of the two it was.`
			],
			expect: say`Most easy hangs simply hold: a window’s ends show only near them. No one goes near the upper end to see it in class.`
		},
		notes: [
			say`Draw two lines that cross on the board before you show the figure; ask what the space between them is.`,
			say`Friction at rest is whatever balance needs: inside the window it is not at its limit. Only at the edge is it.`,
			say`Move the area slider and let the room watch the window walk up. Then move hold time: only one edge moves.`,
			say`The two margins are not distances to the same thing. Say kilograms to the edge, not percent.`
		],
		unknown: [
			say`Whether any real hold has a lower limit under a plumb rope: no published hang shows it.`,
			say`At which pressure a film under a finger gives way: it has not been measured.`,
			say`How the patch changes when a hand is opened: print your own. The model stops where the hand lies on more than its fingertips.`
		],
		formulas,
		exercises: [
			{
				ask: say`With the small patch at ${kilograms(netMass, mass)}: how large is the force on one hand, and how large a force could its fingers hold?`,
				answer: say`${newtons(here.force, 'force')}, and ${newtons(here.strengthLimit, 'strengthLimit')}: a strength margin of ${ratio(here.strengthMargin, 'strengthMargin')}.`
			},
			{
				ask: say`With the small patch at ${kilograms(given.wrongAim, mass)}: does it hold, and which limit decides?`,
				answer: say`It ${heavy.holds ? 'holds' : 'does not hold'}: slip margin ${ratio(heavy.slipMargin, 'slipMargin')}, strength margin ${ratio(heavy.strengthMargin, 'strengthMargin')}, so ${heavy.limiting === 'slip' ? 'the skin' : 'the fingers'} decide${heavy.limiting === 'slip' ? 's' : ''}.`
			},
			{
				ask: say`Which share of a ${seconds(hang.strength.holdTime)} force can be held for ${seconds(given.longHold)}?`,
				answer: say`${percent(share, 'enduranceFraction')}.`
			}
		]
	};
}
