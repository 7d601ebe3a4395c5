import type { Trial } from '#core/trials/trial.ts';
import { massIn, type MassUnit } from '#core/units/mass-text.ts';
import { linearScale } from '#plot/scales.ts';
import { linearTicks } from '#plot/ticks.ts';

/** Beyond so many marks each would hide the next: then only dots are drawn. */
export const mostMarks = 80;

/** Outcomes along the order in which they came, in px. */
export function orderStrip(
	trials: readonly Pick<Trial, 'load' | 'outcome' | 'order'>[],
	checks: readonly boolean[],
	{ massUnit, width, height }: { massUnit: MassUnit; width: number; height: number }
) {
	const frame = { left: 46, right: Math.max(120, width - 14), top: 27, bottom: height - 45 };
	const loads = trials.map(({ load }) => massIn(load, massUnit));
	const [low, high] = [Math.min(...loads), Math.max(...loads)];
	const room = 0.12 * (high - low) || 0.05 * high;
	const x = linearScale([0.5, trials.length + 0.5], [frame.left, frame.right]);
	const y = linearScale([low - room, high + room], [frame.bottom, frame.top]);
	const points = trials.map(({ outcome }, k) => ({
		outcome,
		x: x(k + 1),
		y: y(loads[k]!),
		check: checks[k] ?? false
	}));
	// Two paths of points rather than thousands of elements: the page must stay awake while they are drawn.
	const dots = (held: boolean) =>
		points
			.filter(({ outcome }) => (outcome === 'held') === held)
			.map((point) => `M${point.x.toFixed(1)} ${point.y.toFixed(1)}h0`)
			.join('');
	const many = trials.length > mostMarks;
	return {
		...{ frame, x, y, points: many ? [] : points },
		dots: many ? { held: dots(true), others: dots(false) } : undefined,
		xTicks: linearTicks(1, Math.max(2, trials.length), (frame.right - frame.left) / 60).filter(
			Number.isInteger
		),
		yTicks: linearTicks(low - room, high + room, (frame.bottom - frame.top) / 34),
		checkPath: points
			.filter(({ check }) => check)
			.map((point, k) => `${k === 0 ? 'M' : 'L'}${point.x} ${point.y}`)
			.join('')
	};
}
