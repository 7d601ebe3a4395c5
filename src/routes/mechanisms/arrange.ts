import type { LoadSign } from '#core/mechanisms/load-effect.ts';
import { grades, loadSigns, type Grade, type MechanismRow } from '#reference/types.ts';

/** What a mechanism is sorted and picked by, at the present numbers. */
export type Standing = { row: MechanismRow; sign: LoadSign; size: number };

export const orders = ['explained', 'sign', 'evidence', 'size'] as const;
export type Order = (typeof orders)[number];

export type Pick = { order: Order; sign: LoadSign | 'any'; grade: Grade | 'any'; least: number };

/** Evidence from exact down to nothing but an assumption. */
export const byEvidence: readonly Grade[] = ['exact', 'strong', 'fair', 'weak', 'assumed'];

/** Sizes per doubling of load that one can ask for, as shares. */
export const leastSizes = [0, 0.02, 0.05, 0.1] as const;

/** What one standing is sorted by; smaller comes first. */
const places: Record<Order, (standing: Standing) => number> = {
	explained: () => 0,
	sign: ({ sign }) =>
		['heavier is easier', 'either', 'no change', 'lighter is easier'].indexOf(sign),
	evidence: ({ row }) => byEvidence.indexOf(row.grade),
	size: ({ size }) => -size
};

/** The keys to show, in the order to show them; equals keep the order of explanation. */
export function arrange(standings: readonly Standing[], pick: Pick): string[] {
	return standings
		.filter(({ row, sign, size }) => {
			if (pick.sign !== 'any' && sign !== pick.sign) return false;
			if (pick.grade !== 'any' && row.grade !== pick.grade) return false;
			return size >= pick.least;
		})
		.sort((a, b) => places[pick.order](a) - places[pick.order](b))
		.map(({ row }) => row.key);
}

export const signChoices = ['any', ...loadSigns] as const;
export const gradeChoices = ['any', ...byEvidence.filter((one) => grades.includes(one))] as const;
