import type { FrictionLaw } from '#core/types.ts';
import { pascalsToKilopascals } from '#core/units/pressure.ts';
import { formatNumber } from '#core/units/format-number.ts';
import { laws } from '#reference/laws.ts';

/** The numbers of a law that lie outside the range worth trying, with that range in screen units. */
export function strayParameters(law: FrictionLaw): { what: string; range: string }[] {
	const row = laws.find(({ key }) => key === law.kind);
	if (!row) return [];
	return row.parameters.flatMap(({ field, what, unit, range: [from, to] }) => {
		const value = (law as unknown as Record<string, number>)[field];
		if (value === undefined || (value >= from && value <= to)) return [];
		const shown = (number: number) =>
			formatNumber(unit === 'Pa' ? pascalsToKilopascals(number) : number);
		return [{ what, range: `${shown(from)} to ${shown(to)}${unit === 'Pa' ? ' kPa' : ''}` }];
	});
}
