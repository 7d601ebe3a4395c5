import type { Trial } from '#storage/codecs/notebook/records.ts';

export type Reached = Trial['reached'];

/** Load parts of a line: how the net load came about. kg; null: not said. */
export type Reach = Pick<Trial, 'reached' | 'addedKg' | 'counterweightKg'> & {
	loadKg: number | null;
};

/** A tenth of a gram: below what any scale shows, above what sums of decimals leave behind. */
const tidy = (kg: number) => Math.round(kg * 1e4) / 1e4;

/** How a load is likely reached: as the trial before where that is possible. */
export function likelyReach(
	loadKg: number | null,
	bodyKg: number | null,
	before: Reached | undefined
): Reached {
	if (loadKg === null || bodyKg === null) return before ?? 'scale';
	if (before === 'scale' || before === 'both') return before;
	if (Math.abs(loadKg - bodyKg) < 0.05) return 'body';
	if (loadKg > bodyKg) return before === undefined ? 'scale' : 'plates';
	return before === undefined || before === 'plates' || before === 'body' ? 'scale' : before;
}

/** Fills in what follows from the net load: plates or counterweight. */
export function partsFor(loadKg: number | null, reached: Reached, bodyKg: number | null): Reach {
	const parts: Reach = { reached, loadKg, addedKg: null, counterweightKg: null };
	if (loadKg === null || bodyKg === null) return parts;
	if (reached === 'plates') parts.addedKg = Math.max(0, tidy(loadKg - bodyKg));
	if (reached === 'counterweight') parts.counterweightKg = Math.max(0, tidy(bodyKg - loadKg));
	return parts;
}

/** The net load that plates and counterweight make, with an ideal pulley; null where not known. */
export function loadFrom(reach: Omit<Reach, 'loadKg'>, bodyKg: number | null): number | null {
	if (bodyKg === null) return null;
	const added = reach.reached === 'plates' || reach.reached === 'both' ? (reach.addedKg ?? 0) : 0;
	const taken =
		reach.reached === 'counterweight' || reach.reached === 'both'
			? (reach.counterweightKg ?? 0)
			: 0;
	return tidy(bodyKg + added - taken);
}
