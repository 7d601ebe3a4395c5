import type { FoundSetup } from '#core/search/types.ts';
import { writeLink } from '#storage/codecs/link.ts';
import { setupOfHang, strayFields } from '../setup/of-hang.ts';

/**
 * The query that opens one go of a found set-up in Explore; undefined where Explore's fields do not
 * take its numbers. Under a drift each go has a law of its own, so each needs its own link.
 */
export function goQuery(go: FoundSetup['trials'][number]): string | undefined {
	const setup = setupOfHang(go.hang, go.netMass);
	return strayFields(setup).length > 0 ? undefined : writeLink(setup);
}
