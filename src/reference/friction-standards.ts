import type { Row } from './types.ts';

/** A standard for measuring friction, and whether the tilt-to-slip aid shares its idea. */
export type StandardRow = Row & { name: string; measures: string; matches: string };

/** The tilt-to-slip aid takes the idea of the first; it is not a test to any standard. */
export const frictionStandards: readonly StandardRow[] = [
	{
		key: 'astmg219',
		name: 'ASTM G219 (18, 23)',
		measures:
			'guide to the static (breakaway) coefficient with an inclined plane: small rider of a few cm, plane 50-75 mm by 400 mm, coefficient = tangent of the angle at which the rider visibly starts',
		matches: 'yes: an inclined plane',
		source: ['astmG219'],
		status: 'seen'
	},
	{
		key: 'astmg115',
		name: 'ASTM G115 (10, 2013, 2018)',
		measures:
			'guide to choosing a friction test and to the minimum data and form in which friction coefficients are reported',
		matches: 'reporting form only: use its idea of naming the whole tribosystem',
		source: ['astmG115'],
		status: 'seen'
	},
	{
		key: 'tappit815',
		name: 'TAPPI T 815',
		measures:
			'static coefficient (slide angle) of packaging and packaging materials; plane raised at a constant prescribed rate; coefficient = tan(angle); variability of friction-treated surfaces falls after the third slide',
		matches: 'same principle; note the set raising rate and repeat slides',
		source: ['tappiT815'],
		status: 'seen'
	},
	{
		key: 'astmd4918',
		name: 'ASTM D4918',
		measures:
			'static coefficient of uncoated writing and printing paper on itself, inclined plane, angle taken at the FIRST slip; kinetic cannot be measured this way',
		matches: 'same principle; first slip, no kinetic value',
		source: ['astmD4918'],
		status: 'seen'
	},
	{
		key: 'astmd4521',
		name: 'ASTM D4521, D3247',
		measures:
			'static friction of corrugated and solid fibreboard (D4521 inclined, D3247 horizontal (from memory which is which)); specimens slip three times before the angle is taken',
		matches: 'D4521 same principle with three pre-slides',
		source: ['astmD4521'],
		status: 'seen'
	},
	{
		key: 'astmd1894',
		name: 'ASTM D1894 (08, 14, 24)',
		measures:
			'static and kinetic coefficients of plastic film and sheeting with a sled pulled over a horizontal plane (or plane moved under it); says it is not equivalent to ISO 8295 and that wrapped films go to G143',
		matches: 'no (horizontal sled with force gauge; 200 g sled, 150 mm/min (from memory))',
		source: ['astmD1894'],
		status: 'seen'
	},
	{
		key: 'iso8295',
		name: 'ISO 8295:1995',
		measures:
			'starting and sliding friction of plastic film and sheeting (non-sticky, up to 0.5 mm) on itself or other materials, horizontal table and sled; quality control',
		matches: 'no (200 g sled, 100 mm/min (from memory))',
		source: ['iso8295'],
		status: 'seen'
	},
	{
		key: 'astmg143',
		name: 'ASTM G143 (96, 03, 18, 23)',
		measures: 'static and kinetic friction of a flexible web on a roller (wrap/capstan)',
		matches: 'no for the plane; yes in spirit for the belt/capstan solver T2=T1 exp(mu beta)',
		source: ['astmG143'],
		status: 'seen'
	},
	{
		key: 'astmd3108',
		name: 'ASTM D3108',
		measures: 'friction of yarn on a solid (wrap type)',
		matches: 'no; capstan family',
		source: ['astmD3108'],
		status: 'seen'
	},
	{
		key: 'iso15113',
		name: 'ISO 15113',
		measures: 'frictional properties of rubber, linear sliding, various speeds and loads',
		matches: 'no',
		source: ['iso15113'],
		status: 'memory'
	},
	{
		key: 'iso15359',
		name: 'ISO 15359',
		measures:
			'paper and board, static and kinetic friction, horizontal plane, before and after a set amount of wear',
		matches: 'no',
		source: ['iso15359'],
		status: 'seen'
	},
	{
		key: 'tappit816',
		name: 'TAPPI T 816 / T 549',
		measures:
			'T 816 corrugated and solid fibreboard, horizontal plane (a trade page wrongly calls it inclined); T 549 printing and writing papers, horizontal, static and kinetic',
		matches: 'no',
		source: ['tappiT816'],
		status: 'seen'
	},
	{
		key: 'en16165',
		name: 'EN 16165:2021 Annex A and B (formerly DIN 51097 barefoot, DIN 51130 shod)',
		measures:
			'floor slip resistance: a person walks on a ramp that is raised until they slip; barefoot with soap solution or boots with oil; Annex A is named as the way to test with human skin, because no artificial skin of comparable properties exists',
		matches: 'ramp idea yes, but a gait test, not a resting block',
		source: ['en16165'],
		status: 'seen'
	},
	{
		key: 'astmd2047',
		name: 'EN 16165 Annex C and D; ASTM D2047; ASTM C1028 (withdrawn 2014)',
		measures:
			'pendulum, tribometer; James machine for polished floors; horizontal pull-meter for tile',
		matches: 'no',
		source: ['astmD2047'],
		status: 'seen'
	}
];
