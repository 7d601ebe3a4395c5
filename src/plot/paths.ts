import type { Point } from './point.ts';
import { lineLength, placesAlong } from './polyline.ts';

const tenth = (value: number) => Math.round(value * 10) / 10;

/** The path of some lines of straight pieces, each drawn on its own. */
export function linesPath(lines: Iterable<readonly Point[]>, closed = false): string {
	let path = '';
	for (const line of lines) {
		if (line.length < 2) continue;
		for (let i = 0; i < line.length; i++) {
			path += `${i === 0 ? 'M' : 'L'}${tenth(line[i]![0])} ${tenth(line[i]![1])}`;
		}
		if (closed) path += 'Z';
	}
	return path;
}

/**
 * Short ticks standing off a line on its right-hand side (as one travels along it), leaning
 * forward as a draughtsman hatches a solid; the line is in drawing coordinates, y down.
 */
export function hatchPath(line: readonly Point[], spacing: number, length: number): string {
	const total = lineLength(line);
	const count = Math.floor(total / spacing);
	if (count < 1) return '';
	const start = (total - (count - 1) * spacing) / 2;
	const distances = Array.from({ length: count }, (_, i) => start + i * spacing);
	const around = distances.flatMap((d) => [Math.max(0, d - 1), d, Math.min(total, d + 1)]);
	const places = placesAlong(
		line,
		around.sort((a, b) => a - b)
	);
	let path = '';
	for (let i = 0; i + 2 < places.length; i += 3) {
		const [before, at, after] = [places[i]!, places[i + 1]!, places[i + 2]!];
		const [dx, dy] = [after[0] - before[0], after[1] - before[1]];
		const size = Math.hypot(dx, dy) || 1;
		const [ux, uy] = [dx / size, dy / size];
		const [x, y] = [at[0] + (ux - uy) * length * 0.71, at[1] + (uy + ux) * length * 0.71];
		path += `M${tenth(at[0])} ${tenth(at[1])}L${tenth(x)} ${tenth(y)}`;
	}
	return path;
}
