import type { FrictionLaw } from '#core/types.ts';
import { pascalsToKilopascals } from '#core/units/pressure.ts';
import type { Setup } from '#storage/codecs/setup.ts';

/** The set-up fields that say a friction law given in SI: the way back over the border. */
export function setupOfLaw(law: FrictionLaw): Partial<Setup> {
	const fields: Partial<Setup> = { law: law.kind, mu: law.coefficient };
	if ('shearStrength' in law) fields.shear = readable(pascalsToKilopascals(law.shearStrength));
	if ('referencePressure' in law) {
		fields.pressure = readable(pascalsToKilopascals(law.referencePressure));
	}
	if ('exponent' in law) fields.exponent = law.exponent;
	if ('deformation' in law) fields.deformation = law.deformation;
	if (law.kind === 'film') {
		fields.film = law.filmCoefficient;
		fields.through = readable(pascalsToKilopascals(law.breakthroughPressure));
		fields.sharpness = law.sharpness;
	}
	return fields;
}

/** Four digits: what a person would type. */
function readable(value: number): number {
	return Number(value.toPrecision(4));
}
