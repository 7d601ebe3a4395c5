import { evaluateHang } from '#core/strength/evaluate-hang.ts';
import { loadAtNetMass } from '#core/mechanics/load-at-net-mass.ts';
import { ratioFromTilts } from '#core/measure/tilt-to-slip.ts';
import { degreesToRadians } from '#core/units/angle.ts';
import { marginSamples } from '#figures/margin/helpers.ts';
import { rowOf } from '#reference/row-of.ts';
import { loadTrends } from '#reference/skin-friction-trends.ts';
import { curvePoints, lessonGivens } from '#seeds/lessons.ts';
import { degrees, kilograms, newtons, percent, ratio, say } from '../say.ts';
import { listedLesson } from '../list.ts';
import { slipSlope } from '../slip-slope.ts';
import type { Lesson, LessonText, Writing } from '../types.ts';
import { formulas } from './formulas.ts';

const given = lessonGivens.cancels;

export const cancels: Lesson = {
	...listedLesson('cancels'),
	fields: given.fields,
	before: {},
	controls: ['change', 'slope', 'mu'],
	pictures: [
		{ key: 'forces', label: 'Forces' },
		{ key: 'margin', label: 'Margins' }
	],
	shown: 'margin',
	picture: (key, { hang, range, window }) =>
		key === 'forces'
			? { kind: 'forces' }
			: { kind: 'margin', series: marginSamples(hang, range, curvePoints), window },
	write
};

function write(o: Writing): LessonText {
	const { hang, netMass, mass } = o;
	const at = (m: number, h = hang) => evaluateHang(h, loadAtNetMass(m, h));
	const before = at(netMass);
	const heavier = netMass + given.added;
	const after = at(heavier);
	const slips = slipSlope(o);
	const ratioOfHold = ratio(before.ratio, 'ratio');
	const board = degreesToRadians(given.board.slipAngle);
	const other = o.hangWith({ slope: given.other.slope });
	const others = at(given.other.body, other);
	return {
		aim: say`Under the textbook law a heavier hang needs more friction and gets more in the same proportion: load alone decides nothing.`,
		situation: [
			say`A hold slopes ${degrees(hang.slope)} below level. Its friction ratio is ${ratioOfHold} at every load, and the pull is plumb.`,
			say`A person of ${kilograms(netMass, mass)} hangs from it and does not slip.`
		],
		question: say`Now ${kilograms(given.added, mass)} are added. Does the hand come nearer to slipping?`,
		options: [
			{ key: 'nearer', says: say`Nearer: more weight pulls down the slope` },
			{ key: 'same', says: say`No nearer and no farther` },
			{ key: 'farther', says: say`Farther: more weight presses harder` }
		],
		right: 'same',
		popular: 'nearer',
		reveal: [
			say`The slip margin is ${ratio(before.slipMargin, 'slipMargin')} before and ${ratio(after.slipMargin, 'slipMargin')} after.`,
			say`The friction needed at one hand grows by ${percent(after.tangential / before.tangential - 1, 'tangential')}, from ${newtons(before.tangential, 'tangential')} to ${newtons(after.tangential, 'tangential')}; the most the skin can give grows by ${percent(after.frictionLimit / before.frictionLimit - 1, 'frictionLimit')} too.`,
			say`What decides is the slope: past ${degrees(slips, 'breaks')} the hand slips at every load, before that at none.`
		],
		tempting: say`More weight does pull harder down the slope, and one feels that. It also presses harder into the hold, by the same factor, and one does not feel that. The factor stands above and below the line and drops out.`,
		tryIt: {
			hang: false,
			kit: [
				'a smooth board about as long as an arm',
				'a block with a flat base',
				'a second load for the top of the block',
				'a phone or a folding rule for the angle'
			],
			steps: [
				say`Lay the block on the board. Raise one end slowly until the block first moves; note the angle.`,
				say`Do it three times with the block alone and three times with the second load on top, in mixed order, laid down afresh each time.`,
				say`Turn each angle into a ratio: the tangent of the angle.`
			],
			expect: say`The two groups of angles lie on top of one another, within the scatter between goes. If they do not, write down what else changed.`
		},
		notes: [
			say`Let the room vote before any word about normal force. Ask one voter of each kind for the reason, and write the reasons down.`,
			say`Move the load slider from end to end: the slip line stays level. Then move the slope slider: the whole line sinks through the edge at once.`,
			say`Say what a level line means: no amount of taking weight off helps on a hold that is too steep.`,
			say`Keep the strength line for the fourth lesson; it is drawn because it is there.`
		],
		unknown: [
			say`A fingertip is not a textbook block. ${rowOf(loadTrends, 'hang').finding}`,
			say`Whether your skin on your hold keeps its ratio is for your own trials to say.`
		],
		formulas,
		exercises: [
			{
				ask: say`A block first slides when its board stands at ${degrees(board)}. What is the friction ratio?`,
				answer: say`The tangent of the angle: ${ratio(ratioFromTilts([board, board]).value, 'value')}.`
			},
			{
				ask: say`The block weighs ${kilograms(given.board.block, mass)}. A load of ${kilograms(given.board.second, mass)} is put on top. At what angle does it slide now?`,
				answer: say`At ${degrees(board)} again: the mass is not in the formula.`
			},
			{
				ask: say`${kilograms(given.other.body, mass)} hang from two hands on a hold that slopes ${degrees(other.slope)}, with a ratio of ${ratioOfHold}. How much friction does each hand need, and how much could it have?`,
				answer: say`It needs ${newtons(others.tangential, 'tangential')} and could have ${newtons(others.frictionLimit, 'frictionLimit')}: a margin of ${ratio(others.slipMargin, 'slipMargin')}.`
			}
		]
	};
}
