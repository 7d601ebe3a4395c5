import { formatNumber } from '#core/units/format-number.ts';
import { massText, type MassUnit } from '#core/units/mass-text.ts';
import type { Grade, MechanismRow, Parameter } from '#reference/types.ts';
import { testedTo, type Doubt } from '#state/mechanisms/board-curve.ts';
import { shownText } from './screen-units.ts';

/** How strong the evidence for a mechanism is, in words. */
export const gradeText: Record<Grade, string> = {
	exact: 'exact',
	strong: 'strong published support',
	fair: 'fair published support',
	weak: 'weak published support',
	assumed: 'assumed'
};

export const familyText: Record<MechanismRow['family'], string> = {
	none: 'textbook',
	adhesion: 'sticking skin',
	deformation: 'rough surface',
	film: 'film between',
	time: 'time on the hold',
	geometry: 'where the pull points',
	order: 'order of goes',
	strength: 'finger strength'
};

/** Words that begin a sentence. */
export function sentence(words: string): string {
	return words.charAt(0).toUpperCase() + words.slice(1);
}

/** Why part of a curve is dashed. */
export function doubtText({ from, why }: Doubt, onPad: number, mass: MassUnit): string {
	switch (why) {
		case 'untested':
			return `Dashed: beyond the published tests, some ${testedTo} N on one pad; yours presses with ${formatNumber(onPad, { digits: 2 })} N.`;
		case 'rope shortens':
			return 'Dashed: here the rope carries more than 40 %; from a fixed pulley its angle shrinks as it takes more, so this overstates the lean.';
		case 'pad full':
			return `Dashed from ${massText(from, mass)}: the patch is the whole pad and grows no more.`;
	}
}

/** Why the whole curve is dashed: a number outside the range worth trying. */
export function strayText(parameter: Parameter, mass: MassUnit): string {
	const [from, to] = parameter.range.map((end) => shownText(end, parameter.unit, mass));
	return `All dashed: ${parameter.what} is outside the range worth trying (${from} to ${to}).`;
}
