import type { Values } from '../algebra/evaluate.ts';
import { allOf, drawBlock } from '../statics/block-diagram.ts';
import type { Diagram } from '../statics/diagram.ts';
import type { Verdict } from '../statics/types.ts';

/** What two blocks over a pulley do, from rest. */
export function judgeTwoSlopes(values: Values): Verdict | undefined {
	const v = allOf(values, 'drive', 'frictionNeeded', 'frictionLimit');
	if (!v) return undefined;
	const spare = v.frictionLimit - v.frictionNeeded;
	const which = v.drive > 0 ? 'second' : 'first';
	if (Math.abs(spare) <= 1e-9 * Math.max(v.frictionLimit, v.frictionNeeded))
		return { regime: 'about to slip', because: `The ${which} block is about to go down.` };
	return spare > 0
		? { regime: 'rests', because: 'Static friction can cancel the drive.' }
		: { regime: `slides, ${which} block down`, because: 'The drive is above the static limit.' };
}

/** Free-body diagrams of both blocks; at rest one of the possible tensions is drawn, the middle one. */
export function drawTwoSlopes(values: Values): Diagram | undefined {
	const v = allOf(
		...([values, 'mass1', 'mass2', 'slope1', 'slope2', 'gravity', 'muStatic'] as const),
		...(['acceleration', 'drive', 'movingTension'] as const)
	);
	if (!v) return undefined;
	const { mass1, mass2, slope1, slope2, gravity, muStatic, acceleration } = v;
	const [w1, w2] = [mass1 * gravity, mass2 * gravity];
	const [n1, n2] = [w1 * Math.cos(slope1), w2 * Math.cos(slope2)];
	const [d1, d2] = [w1 * Math.sin(slope1), w2 * Math.sin(slope2)];
	const low = Math.max(d1 - muStatic * n1, d2 - muStatic * n2, 0);
	const high = Math.min(d1 + muStatic * n1, d2 + muStatic * n2);
	const tension = acceleration === 0 ? (low + high) / 2 : v.movingTension;
	const rope = { kind: 'rope' as const, name: 'string', symbol: 'T', size: tension };
	const first = drawBlock({
		...{ id: 'first', name: 'first block', slope: slope1, weight: w1, normal: n1 },
		at: [-1.5 * Math.cos(slope1), -1.5 * Math.sin(slope1)],
		...{ friction: mass1 * acceleration + d1 - tension, mass: mass1, acceleration },
		others: [{ ...rope, angle: slope1 }]
	});
	const second = drawBlock({
		...{ id: 'second', name: 'second block', slope: -slope2, weight: w2, normal: n2 },
		at: [1.5 * Math.cos(slope2), -1.5 * Math.sin(slope2)],
		...{ friction: mass2 * acceleration - d2 + tension, mass: mass2, acceleration },
		others: [{ ...rope, angle: Math.PI - slope2 }]
	});
	return {
		bodies: [first.body, second.body],
		forces: [...first.forces, ...second.forces],
		lines: [
			{ name: 'first slope', from: [-3 * Math.cos(slope1), -3 * Math.sin(slope1)], to: [0, 0] },
			{ name: 'second slope', from: [0, 0], to: [3 * Math.cos(slope2), -3 * Math.sin(slope2)] }
		]
	};
}
