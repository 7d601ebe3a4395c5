import { error } from '@sveltejs/kit';
import { familyList, isFamilyId, loadFamily } from '../families.ts';

export const entries = () => familyList.map(({ id }) => ({ family: id }));

export async function load({ params }: { params: { family: string } }) {
	if (!isFamilyId(params.family)) error(404, 'There is no such family in the workbook.');
	return { family: await loadFamily(params.family) };
}
