import { radiansToDegrees } from '#core/units/angle.ts';
import { squareMetresToSquareMillimetres } from '#core/units/area.ts';
import { formatNumber } from '#core/units/format-number.ts';
import { massText, type MassUnit } from '#core/units/mass-text.ts';
import type { Results } from '#state/setup/results.ts';

/** The set-up and its results in a few lines for paper. */
export function linesOf(
	{ hang, setup, netMass, contact, window }: Results,
	unit: MassUnit
): { what: string; text: string }[] {
	const number = formatNumber;
	const holds = window
		.map(({ from, to }) => `${massText(from, unit)} to ${massText(to, unit)}`)
		.join(', ');
	const margin = (value: number) => (value === Infinity ? 'no limit' : number(value));
	return [
		{ what: 'body mass', text: massText(hang.hangingMass, unit) },
		{ what: 'net load', text: massText(netMass, unit) },
		{ what: 'slope of the hold', text: `${number(radiansToDegrees(hang.slope))}°` },
		{ what: 'rope from plumb', text: `${number(radiansToDegrees(hang.ropeAngle))}°` },
		{ what: 'friction ratio here', text: number(contact.ratio) },
		{ what: 'ratio needed', text: number(contact.demand) },
		{
			what: 'patch of a finger',
			text: `${number(squareMetresToSquareMillimetres(contact.padArea))} mm²`
		},
		{ what: 'hands, fingers', text: `${hang.hands}, ${hang.grip.fingers}` },
		{ what: 'best flat hang', text: massText(setup.best, unit) },
		{ what: 'hold time', text: `${number(hang.strength.holdTime)} s` },
		{ what: 'slip margin', text: margin(contact.slipMargin) },
		{ what: 'strength margin', text: margin(contact.strengthMargin) },
		{ what: 'loads that hold', text: holds || 'none in this range' }
	];
}
