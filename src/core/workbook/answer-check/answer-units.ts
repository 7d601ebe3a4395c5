import type { Unit } from '../statics/types.ts';

const lb = 0.45359237;
const g = 9.80665;
const degree = Math.PI / 180;

/** What a written unit is worth: the SI unit it measures, and the factor to it. */
export type WrittenUnit = { unit: Unit; factor: number };

/** Units as students write them, lower case, without blanks; exact factors by definition. */
const table: [Unit, Record<string, number>][] = [
	['N', { n: 1, newton: 1, newtons: 1, kn: 1e3, mn: 1e-3, kgf: g, kp: g, dan: 10 }],
	['N', { lb: lb * g, lbs: lb * g, lbf: lb * g, pound: lb * g, pounds: lb * g }],
	['kg', { kg: 1, kilogram: 1, kilograms: 1, g: 1e-3, gram: 1e-3, grams: 1e-3, t: 1e3 }],
	['kg', { lb, lbs: lb, lbm: lb, pound: lb, pounds: lb }],
	['rad', { '°': degree, º: degree, deg: degree, degs: degree, degree, degrees: degree }],
	[
		'rad',
		{ rad: 1, rads: 1, radian: 1, radians: 1, mrad: 1e-3, turn: 2 * Math.PI, turns: 2 * Math.PI }
	],
	['m', { m: 1, metre: 1, metres: 1, meter: 1, meters: 1, cm: 1e-2, mm: 1e-3, km: 1e3 }],
	[
		'm',
		{
			in: 0.0254,
			inch: 0.0254,
			inches: 0.0254,
			'"': 0.0254,
			ft: 0.3048,
			foot: 0.3048,
			feet: 0.3048
		}
	],
	['s', { s: 1, sec: 1, second: 1, seconds: 1, ms: 1e-3, min: 60, minutes: 60, h: 3600 }],
	[
		'm/s',
		{
			'm/s': 1,
			'ms^-1': 1,
			'm*s^-1': 1,
			'km/h': 1 / 3.6,
			kmh: 1 / 3.6,
			'ft/s': 0.3048,
			mph: 0.44704
		}
	],
	['m/s²', { 'm/s^2': 1, 'm/s2': 1, 'm/s/s': 1, 'ms^-2': 1, 'm*s^-2': 1, 'ft/s^2': 0.3048, g }],
	[
		'N·m',
		{
			nm: 1,
			'n*m': 1,
			knm: 1e3,
			'kn*m': 1e3,
			ncm: 1e-2,
			'lb*ft': lb * g * 0.3048,
			lbft: lb * g * 0.3048
		}
	],
	['W', { w: 1, watt: 1, watts: 1, kw: 1e3, hp: 745.6998715822702 }],
	[
		'rad/s',
		{ 'rad/s': 1, 's^-1': 1, '1/s': 1, rpm: (2 * Math.PI) / 60, 'rev/min': (2 * Math.PI) / 60 }
	],
	['kg/m', { 'kg/m': 1, 'g/m': 1e-3 }],
	[
		'Pa',
		{ pa: 1, kpa: 1e3, mpa: 1e6, 'n/m^2': 1, 'n/mm^2': 1e6, bar: 1e5, psi: 6894.757293168361 }
	],
	['m²', { 'm^2': 1, 'cm^2': 1e-4, 'mm^2': 1e-6 }],
	['1', { '': 1, '%': 0.01, percent: 0.01 }]
];

function plain(text: string): string {
	return text
		.toLowerCase()
		.replace(/\s+/g, '')
		.replace(/[·⋅.×]/g, '*')
		.replace(/²/g, '^2')
		.replace(/⁻¹/g, '^-1')
		.replace(/⁻²/g, '^-2');
}

/**
 * All meanings of a written unit; `lb` may be a mass or a force, `g` grams or a field.
 * @param text the unit as written, blanks and case do not matter
 * @returns every meaning; none when the unit is not known
 * Source: derived (exact definitions of pound, inch and standard gravity)
 * Example: meaningsOf('kN') is one meaning, newtons times 1000.
 */
export function meaningsOf(text: string): WrittenUnit[] {
	const key = plain(text);
	return table.flatMap(([unit, names]) => {
		const factor = Object.hasOwn(names, key) ? names[key] : undefined;
		return factor === undefined ? [] : [{ unit, factor }];
	});
}

/** Plain words for what a unit measures. */
export const measures: Record<Unit, string> = {
	...{ kg: 'a mass', N: 'a force', rad: 'an angle', m: 'a length', s: 'a time', 'm/s': 'a speed' },
	...{ 'm/s²': 'an acceleration', 'N·m': 'a moment', W: 'a power', 'rad/s': 'a turning rate' },
	...{ 'kg/m': 'a mass per length', Pa: 'a pressure', 'm²': 'an area', '1': 'a plain number' }
};
