import { formatNumber } from '#core/units/format-number.ts';

/** How SI values of the reference tables are shown: the unit a reader expects, and its factor. */
const shownAs: Record<string, readonly [unit: string, factor: number]> = {
	'm²': ['mm²', 1e6],
	'm²/kg': ['mm²/kg', 1e6],
	m: ['mm', 1e3],
	Pa: ['kPa', 1e-3],
	rad: ['°', 180 / Math.PI],
	'1': ['', 1]
};

/** Units of fields that are numbers without a unit of their own in the row. */
export const fieldUnits: Record<string, string> = {
	padArea: 'm²',
	padAreaRange: 'm²',
	padWidth: 'm',
	padLength: 'm',
	padDepth: 'm',
	pipFlexion: 'rad',
	dipFlexion: 'rad',
	shearStrength: 'Pa',
	referencePressure: 'Pa',
	breakthroughPressure: 'Pa',
	timeConstant: 's',
	timeRange: 's',
	metacarpal: 'm',
	proximal: 'm',
	middle: 'm',
	distal: 'm',
	softTip: 'm',
	fdpAtDip: 'm',
	fdpAtPip: 'm',
	fdpAtMcp: 'm',
	fdsAtPip: 'm',
	fdsAtMcp: 'm',
	pip: 'rad',
	pipSpread: 'rad',
	pipRange: 'rad',
	dip: 'rad',
	dipRange: 'rad',
	tiring: '1/s',
	recovering: '1/s'
};

/** What a row's fields are called on the page, where their own name would not do. */
export const fieldLabels: Record<string, string> = {
	pip: 'middle joint',
	pipSpread: 'spread at the middle joint',
	pipRange: 'range at the middle joint',
	pipFlexion: 'middle joint bent by',
	dip: 'last joint',
	dipRange: 'range at the last joint',
	dipInWords: 'last joint',
	dipFlexion: 'last joint bent by',
	fdpAtDip: 'deep flexor at the last joint',
	fdpAtPip: 'deep flexor at the middle joint',
	fdpAtMcp: 'deep flexor at the knuckle',
	fdsAtPip: 'superficial flexor at the middle joint',
	fdsAtMcp: 'superficial flexor at the knuckle',
	fdp: 'deep',
	fds: 'superficial',
	icc: 'intraclass correlation',
	cv: 'coefficient of variation',
	p5: '5th percentile',
	p50: 'median',
	p95: '95th percentile',
	tellTale: 'what gives it away',
	constantArea: 'more load on the same patch',
	constantPressure: 'more load and more patch together',
	biggerPatch: 'more patch under the same load',
	loadEffect: 'load',
	areaEffect: 'area',
	grade: 'support'
};

/** A number or a range with its unit, for example "60 to 180 mm²". */
export function quantityText(value: number | readonly [number, number], unit: string): string {
	const ends = typeof value === 'number' ? [value] : [...value];
	const large = unit === 'm' && Math.max(...ends.map(Math.abs)) >= 1;
	const huge = unit === 'Pa' && Math.max(...ends.map(Math.abs)) >= 1e6;
	const [name, factor] = large
		? ['m', 1]
		: huge
			? ['MPa', 1e-6]
			: (shownAs[unit] ?? ([unit, 1] as const));
	const numbers = [...new Set(ends.map((end) => formatNumber(end * factor)))].join(' to ');
	return name === '' ? numbers : `${numbers} ${name}`;
}

export function isRange(value: unknown): value is readonly [number, number] {
	return (
		Array.isArray(value) && value.length === 2 && value.every((end) => typeof end === 'number')
	);
}
