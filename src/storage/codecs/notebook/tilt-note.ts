import { formatNumber } from '#core/units/format-number.ts';

/** Begins a line of a session's note that holds slip angles: read back by the limits page. */
const head = 'Tilt to slip: ';

/** Slip angles as a line of a session's note, degrees. */
export function tiltLine(angles: readonly number[], ratio: number, spread: number): string {
	const all = angles.map((angle) => `${formatNumber(angle, { digits: 4 })}°`).join('; ');
	return `${head}${all} (friction ratio ${formatNumber(ratio)} ± ${formatNumber(spread, { digits: 2 })} from go to go, light pad)`;
}

/** Slip angles of each such line in a note, degrees; whatever else is written there is passed over. */
export function tiltsIn(note: string): number[][] {
	return note
		.split('\n')
		.filter((line) => line.startsWith(head))
		.map((line) =>
			[...line.slice(head.length).matchAll(/(\d+(?:[.,]\d+)?)\s*°/g)]
				.map((match) => Number(match[1]!.replace(',', '.')))
				.filter((angle) => angle > 0 && angle < 89)
		)
		.filter((angles) => angles.length > 0);
}
