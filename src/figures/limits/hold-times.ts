import type { TimePoint } from '#core/trials/hold-time-curve.ts';
import type { Outcome, Trial } from '#core/trials/trial.ts';
import { formatNumber } from '#core/units/format-number.ts';
import { massIn, massText, type MassUnit } from '#core/units/mass-text.ts';
import type { Frame } from '#plot/box.ts';
import { linesPath } from '#plot/paths.ts';
import type { Point } from '#plot/point.ts';
import { linearScale, logScale, type Scale } from '#plot/scales.ts';
import { linearTicks } from '#plot/ticks.ts';

/** Times that a stopwatch tells apart begin here, s. */
const shortest = 0.5;

export type TimesView = {
	curve: readonly TimePoint[];
	trials: readonly Pick<Trial, 'load' | 'outcome' | 'seconds'>[];
	/** Nothing was watched beyond it, s. */
	targetSeconds: number;
	massUnit: MassUnit;
	width: number;
	height: number;
};

/** A trial's time: the fingers opened there, or had not opened up to there. */
export type TimeMark = { outcome: Outcome; x: number; y: number; lasted: boolean; count: number };

export type DrawnTimes = {
	frame: Frame;
	x: Scale;
	y: Scale;
	xTicks: number[];
	yTicks: number[];
	band: string;
	middle: string;
	marks: TimeMark[];
	target: number;
};

/** How long holds last, against load, in px: drawn between the shortest time and the target only. */
export function holdTimes(view: TimesView): DrawnTimes {
	const { curve, trials, targetSeconds, massUnit, width, height } = view;
	const shown = (load: number) => massIn(load, massUnit);
	const frame: Frame = { left: 52, top: 34, right: Math.max(width - 12, 150), bottom: height - 46 };
	const loads = curve.map(({ load }) => shown(load));
	const [from, to] = [Math.min(...loads), Math.max(...loads)];
	const room = 0.04 * (to - from);
	const x = linearScale([from - room, to + room], [frame.left, frame.right]);
	// Room above the target for the arrows of what lasted to it.
	const y = logScale([shortest, 1.35 * targetSeconds], [frame.bottom, frame.top]);
	const inside = (time: number) => Math.min(targetSeconds, Math.max(shortest, time));
	const at = (load: number, time: number): Point => [x(shown(load)), y(inside(time))];
	const upper = curve.map(({ load, q95 }) => at(load, q95));
	const lower = curve.map(({ load, q05 }) => at(load, q05));
	return {
		...{ frame, x, y },
		xTicks: linearTicks(from, to, (frame.right - frame.left) / 60),
		yTicks: [0.5, 1, 2, 5, 10, 20, 50, 100, 200, 500].filter((t) => t <= targetSeconds),
		band: linesPath([[...upper, ...lower.reverse()]], true),
		// Where the middle leaves what was watched, nothing is drawn: no answer lies there.
		middle: linesPath([
			curve
				.filter(({ q50 }) => q50 >= shortest && q50 <= targetSeconds)
				.map(({ load, q50 }) => at(load, q50))
		]),
		marks: marksOf(trials, targetSeconds, (load, time) => at(load, time)),
		target: y(targetSeconds)
	};
}

function marksOf(
	trials: TimesView['trials'],
	target: number,
	at: (load: number, time: number) => Point
): TimeMark[] {
	const marks = new Map<string, TimeMark>();
	for (const { load, outcome, seconds } of trials) {
		if (outcome === 'unknown') continue;
		const time = outcome === 'held' ? target : seconds;
		if (time === undefined || time <= 0) continue;
		const [x, y] = at(load, time);
		const key = `${outcome} ${Math.round(x / 6)} ${Math.round(y / 6)}`;
		const same = marks.get(key);
		if (same) same.count++;
		else marks.set(key, { outcome, x, y, lasted: outcome !== 'opened', count: 1 });
	}
	return [...marks.values()];
}

/** A time in words; nothing is said of times beyond what was watched. */
export function timeWords(seconds: number, target: number): string {
	if (seconds > target) return `longer than ${formatNumber(target)} s`;
	if (seconds < shortest) return 'under half a second';
	return `${formatNumber(seconds, { digits: 2 })} s`;
}

/** How long holds last at a few loads, one line each. */
export function timesDescription(view: Pick<TimesView, 'curve' | 'targetSeconds' | 'massUnit'>) {
	const { curve, targetSeconds, massUnit } = view;
	const some = [0, 0.5, 1].map((share) => curve[Math.round(share * (curve.length - 1))]!);
	const say = (time: number) => timeWords(time, targetSeconds);
	return some.map(({ load, q05, q50, q95 }) => {
		const [low, middle, high] = [say(q05), say(q50), say(q95)];
		const range = low === high ? 'hardly in doubt' : `likely ${low} to ${high}`;
		return `${massText(load, massUnit)}: ${middle} (${range})`;
	});
}
