import type { Family } from '#core/workbook/statics/family.ts';
import { familyList, loadFamily } from '../families.ts';

export async function load() {
	// The hang is ours: no textbook prints it.
	const published = familyList.filter(({ id }) => id !== 'hang');
	const families: Family[] = await Promise.all(published.map(({ id }) => loadFamily(id)));
	return { families };
}
