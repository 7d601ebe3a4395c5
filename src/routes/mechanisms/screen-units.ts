import { formatNumber } from '#core/units/format-number.ts';
import { massIn, type MassUnit } from '#core/units/mass-text.ts';

/** How a number in SI is shown: its unit, and what one SI unit is on the screen. */
export type ScreenUnit = { unit: string; perUnit: number; step: number };

const units: Readonly<Record<string, ScreenUnit>> = {
	rad: { unit: '°', perUnit: 180 / Math.PI, step: 0.5 },
	Pa: { unit: 'kPa', perUnit: 1e-3, step: 0.5 },
	m: { unit: 'mm', perUnit: 1e3, step: 5 },
	'm²': { unit: 'mm²', perUnit: 1e6, step: 1 },
	N: { unit: 'N', perUnit: 1, step: 1 },
	s: { unit: 's', perUnit: 1, step: 0.5 },
	'1': { unit: '', perUnit: 1, step: 0.01 }
};

/** How a number of this SI unit is shown. */
export function screenUnit(si: string, mass: MassUnit): ScreenUnit {
	if (si === 'kg') return { unit: mass, perUnit: massIn(1, mass), step: 0.5 };
	const found = units[si];
	if (!found) throw new RangeError(`unit: no screen unit for "${si}"`);
	return found;
}

/** A number in SI as text with its unit. */
export function shownText(value: number, si: string, mass: MassUnit): string {
	const { unit, perUnit } = screenUnit(si, mass);
	const number = formatNumber(value * perUnit);
	return unit === '' ? number : unit === '°' ? `${number}°` : `${number}\u00a0${unit}`;
}

/** A change as a share, in percent with its sign: "+3.4 %". */
export function changeText(share: number): string {
	if (!Number.isFinite(share)) return 'no number here';
	const percent = formatNumber(100 * share, { digits: 2 });
	if (Math.abs(share) < 5e-4) return '0\u00a0%';
	return `${share > 0 ? '+' : ''}${percent}\u00a0%`;
}
