import type { FrictionLaw } from '../types.ts';
import { adhesionLaw } from './adhesion.ts';
import { constantLaw } from './constant.ts';
import { deformationLaw } from './deformation.ts';
import { filmLaw } from './film.ts';
import type { LawFormula, LawOf } from './law.ts';
import { powerLaw } from './power.ts';

/** Every friction law by its kind. A new law is one more file and one more line here. */
const laws: { [Kind in FrictionLaw['kind']]: LawFormula<LawOf<Kind>> } = {
	constant: constantLaw,
	adhesion: adhesionLaw,
	power: powerLaw,
	deformation: deformationLaw,
	film: filmLaw
};

/** The kinds of friction law, in the order they are explained. */
export const lawKinds = Object.keys(laws) as FrictionLaw['kind'][];

/**
 * Finds the formulas that belong to a law.
 * @param law any friction law
 * @returns its ratio, slope, bend and check
 * @throws RangeError when the kind is unknown
 * Source: derived.
 * Example: lawFormula({ kind: 'constant', coefficient: 0.5 }) is constantLaw.
 */
export function lawFormula(law: FrictionLaw): LawFormula<FrictionLaw> {
	const formula = Object.hasOwn(laws, law.kind) ? laws[law.kind] : undefined;
	if (formula) return formula as LawFormula<FrictionLaw>;
	throw new RangeError(
		`friction.kind must be one of ${lawKinds.join(', ')}, but is ${String(law.kind)}`
	);
}
