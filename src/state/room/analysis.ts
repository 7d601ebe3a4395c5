import { pairedTable, type PairedTable } from '#core/statistics/paired/paired-table.ts';
import { splitChance } from '#core/statistics/paired/split-chance.ts';
import type { RoomPerson } from '#storage/codecs/room.ts';

/** The three loads, in the order of a person's outcomes. */
export const loadNames = ['light', 'plain', 'heavy'] as const;

export type Comparison = {
	first: 0 | 1 | 2;
	second: 0 | 1 | 2;
	table: PairedTable;
	/** People whose two goes both ended in holding or slipping. */
	people: number;
	/** People who did one of the two, or whose go ended in something else. */
	leftAside: number;
	/** How often luck alone splits those who differ at least so; 1 where nobody differs. */
	exact: number;
};

/** The question first: light against heavy; the other two are for looking. */
const compared: readonly (readonly [0 | 1 | 2, 0 | 1 | 2])[] = [
	[0, 2],
	[0, 1],
	[1, 2]
];

const tells = (outcome: string | null) => outcome === 'held' || outcome === 'slipped';

/** Compares the loads two by two, within people: did the skin hold, did it slip? */
export function compareLoads(people: readonly Pick<RoomPerson, 'outcomes'>[]): Comparison[] {
	return compared.map(([first, second]) => {
		const started = people.filter(({ outcomes }) => outcomes[first] ?? outcomes[second]);
		const whole = started.filter(
			({ outcomes }) => tells(outcomes[first]) && tells(outcomes[second])
		);
		const table = pairedTable(
			whole.map(({ outcomes }) => [outcomes[first] === 'held', outcomes[second] === 'held'])
		);
		return {
			first,
			second,
			table,
			people: whole.length,
			leftAside: started.length - whole.length,
			exact: splitChance(table.onlyFirst, table.onlySecond).exact
		};
	});
}
