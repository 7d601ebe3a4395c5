import { numberText } from '../algebra/number-text.ts';
import type { Unit } from './types.ts';

/** A value with its unit for a sentence; angles are shown in degrees. Example: shown(0.5, 'rad') is '28.65°'. */
export function shown(value: number, unit: Unit, digits = 4): string {
	if (unit === 'rad') return `${numberText((value * 180) / Math.PI, digits)}°`;
	return unit === '1' ? numberText(value, digits) : `${numberText(value, digits)} ${unit}`;
}

const unitTex: Record<Unit, string> = {
	...{ kg: '\\mathrm{kg}', N: '\\mathrm{N}', rad: '', m: '\\mathrm{m}', s: '\\mathrm{s}' },
	...{ 'm/s': '\\mathrm{m/s}', 'm/s²': '\\mathrm{m/s^2}', 'N·m': '\\mathrm{N\\,m}' },
	...{ W: '\\mathrm{W}', 'rad/s': '\\mathrm{rad/s}', 'kg/m': '\\mathrm{kg/m}', '1': '' },
	...{ Pa: '\\mathrm{Pa}', 'm²': '\\mathrm{m^2}' }
};

/** TeX of a unit; empty for angles (their degree sign stands at the number) and plain numbers. */
export function unitInTex(unit: Unit): string {
	return unitTex[unit];
}
