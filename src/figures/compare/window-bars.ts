import type { Interval } from '#core/types.ts';
import { massText, massIn, type MassUnit } from '#core/units/mass-text.ts';
import type { Box, Frame } from '#plot/box.ts';
import { formatNumber } from '#core/units/format-number.ts';
import { placeLabels, type LabelRequest } from '#plot/place-labels.ts';
import { linearScale, type Scale } from '#plot/scales.ts';
import { textWidth } from '#plot/text-width.ts';
import { linearTicks } from '#plot/ticks.ts';

/** One set-up's bar: its windows, its body mass and its present load, kg. */
export type Bar = {
	key: 'first' | 'second';
	name: string;
	window: readonly Interval[];
	bodyMass: number;
	netMass: number;
};

export type BarsView = {
	bars: readonly Bar[];
	/** The load axis, kg. */
	range: { from: number; to: number };
	massUnit: MassUnit;
	width: number;
	height: number;
};

export const barLabelSize = 13;
const thick = 16;

type Block = { interval: Interval; from: number; to: number; lower: string; upper: string };

type Panel = {
	id: string;
	label: string;
	scale: Scale;
	axis: number;
	top: number;
	ticks: number[];
	/** Places in px. */
	rows: { bar: Bar; y: number; blocks: Block[]; body: number; now: number }[];
};

/** Two load axes, one beneath the other: as a mass, and as a multiple of each one's own body mass. */
export function windowBars(view: BarsView) {
	const { bars, range, massUnit, width, height } = view;
	const [left, right] = [12, width - 12];
	const most = Math.max(...bars.map(({ bodyMass }) => range.to / bodyMass));
	const least = Math.min(...bars.map(({ bodyMass }) => range.from / bodyMass));
	const half = height / 2;
	const panels: Panel[] = [
		{
			id: 'mass',
			label: `net load, ${massUnit}`,
			domain: [massIn(range.from, massUnit), massIn(range.to, massUnit)] as const,
			of: (kilograms: number) => massIn(kilograms, massUnit),
			text: (kilograms: number) => massText(kilograms, massUnit)
		},
		{
			id: 'multiple',
			label: 'net load, times own body mass',
			domain: [least, Math.min(most, 2.2)] as const,
			of: (kilograms: number, { bodyMass }: Bar) => kilograms / bodyMass,
			text: (kilograms: number, { bodyMass }: Bar) => `${formatNumber(kilograms / bodyMass)} ×`
		}
	].map((panel, i) => {
		const top = i * half + 6;
		const axis = (i + 1) * half - 44;
		const scale = linearScale(panel.domain, [left, right]);
		const row = (axis - top) / bars.length;
		const at = (value: number) => Math.min(right, Math.max(left, scale(value)));
		return {
			...{ id: panel.id, label: panel.label, scale, axis, top },
			ticks: linearTicks(panel.domain[0], panel.domain[1], (right - left) / 65),
			rows: bars.map((bar, place) => {
				const y = top + row * place + row * 0.62;
				return {
					...{ bar, y },
					blocks: bar.window.map((interval) => ({
						interval,
						from: at(panel.of(interval.from, bar)),
						to: at(panel.of(interval.to, bar)),
						lower: panel.text(interval.from, bar),
						upper: panel.text(interval.to, bar)
					})),
					body: at(panel.of(bar.bodyMass, bar)),
					now: at(panel.of(bar.netMass, bar))
				};
			})
		};
	});
	const frame: Frame = { left: 4, top: 0, right: width - 4, bottom: height };
	return { panels, thick, left, right, labels: labelsOf(panels, frame) };
}

function labelsOf(panels: readonly Panel[], frame: Frame) {
	const requests: LabelRequest[] = [];
	const boxes: Box[] = [];
	const size = (text: string) => ({
		width: textWidth(text, barLabelSize),
		height: barLabelSize + 1,
		angle: 0
	});
	const ask = (id: string, text: string, places: [number, number][], always = false) =>
		requests.push({
			id,
			text,
			always,
			candidates: places.map(([cx, cy]) => ({ ...size(text), cx, cy }))
		});
	for (const panel of panels) {
		for (const { bar, y, blocks, now } of panel.rows) {
			const id = `${panel.id} ${bar.key}`;
			const above = y - thick / 2 - 10;
			boxes.push({ cx: now, cy: y, width: 12, height: 12, angle: 0 });
			for (const { from, to } of blocks)
				boxes.push({ cx: (from + to) / 2, cy: y, width: to - from, height: thick, angle: 0 });
			const name = blocks.length === 0 ? `${bar.name}: no load holds` : bar.name;
			const nameHalf = size(name).width / 2;
			ask(`name ${id}`, name, [[frame.left + 8 + nameHalf, above]], true);
			for (const [i, block] of blocks.entries()) {
				const ends = [
					{ at: block.from, limit: block.interval.lowerLimit, text: block.lower, side: -1 },
					{ at: block.to, limit: block.interval.upperLimit, text: block.upper, side: 1 }
				];
				for (const { at, limit, text, side } of ends) {
					if (limit === 'range') continue;
					const words = `${limit === 'slip' ? 'slips' : 'opens'} ${text}`;
					const middle = size(words).width / 2;
					ask(`${limit} ${id} ${i} ${side}`, words, [
						[at + side * (middle + 8), y],
						[at + side * (middle + 22), y],
						[at + side * middle * 0.9, above],
						[at - side * middle, above],
						[at + side * middle, y + thick / 2 + 9]
					]);
				}
			}
		}
	}
	return placeLabels(requests, { frame, boxes });
}

/** Everything the bars show, for those who do not see them. */
export function barsWords({ bars, massUnit }: Pick<BarsView, 'bars' | 'massUnit'>): string {
	return bars
		.map((bar) => {
			const holds = bar.window
				.map(
					({ from, to }) =>
						`${massText(from, massUnit)} to ${massText(to, massUnit)} (${formatNumber(from / bar.bodyMass)} to ${formatNumber(to / bar.bodyMass)} times body mass)`
				)
				.join(' and ');
			const what = holds ? `holds from ${holds}` : 'holds no load in this range';
			return `The ${bar.name} set-up ${what}; it hangs at ${massText(bar.netMass, massUnit)}.`;
		})
		.join(' ');
}
