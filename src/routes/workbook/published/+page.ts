import { loadFamily } from '../families.ts';

/** The first family's problems stand on the page; the others are fetched when they are chosen. */
export async function load() {
	return { first: await loadFamily('level-floor') };
}
