import { lawFromFit, type LawComparison } from '#core/workbook/bench-data/compare-laws.ts';
import { writeLink } from '#storage/codecs/link.ts';
import { firstSight } from '#storage/codecs/setup.ts';

/**
 * The query that opens a fitted law in Explore, for one contact area.
 *
 * @param area - mm², above 0
 * @returns undefined where Explore has no such law (an intercept below nothing)
 */
export function exploreLink(
	comparison: LawComparison,
	kind: 'proportional' | 'line' | 'power',
	area: number
): string | undefined {
	const law = lawFromFit(comparison, kind, area * 1e-6);
	if (law.kind === 'constant')
		return writeLink({ ...firstSight, law: 'constant', mu: law.coefficient });
	if (law.kind === 'adhesion' && law.shearStrength >= 0)
		return writeLink({
			...{ ...firstSight, law: 'adhesion', mu: law.coefficient },
			shear: law.shearStrength / 1e3
		});
	if (law.kind === 'power')
		return writeLink({
			...{ ...firstSight, law: 'power', mu: law.coefficient, exponent: law.exponent },
			pressure: law.referencePressure / 1e3
		});
	return undefined;
}
