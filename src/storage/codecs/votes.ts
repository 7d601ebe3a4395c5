import * as v from 'valibot';

/** What a room answered in one lesson: counts only. */
export type Votes = {
	counts: Record<string, number>;
	/** Where the room placed its mark: kg, or a share. */
	mark?: number | undefined;
	/** Sketched margins. */
	sketch?: number[] | undefined;
};

/** More hands than any room has. */
export const mostVotes = 999;

const count = v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(mostVotes));
const votes = v.object({
	counts: v.record(v.string(), count),
	mark: v.optional(v.pipe(v.number(), v.finite())),
	sketch: v.optional(
		v.pipe(v.array(v.pipe(v.number(), v.finite(), v.minValue(0))), v.maxLength(50))
	)
});

/** Reads kept votes; damaged ones are as good as none. */
export function readVotes(text: string | undefined): Votes | undefined {
	if (text === undefined) return undefined;
	try {
		return v.parse(votes, JSON.parse(text));
	} catch {
		return undefined;
	}
}

export const writeVotes = (value: Votes): string => JSON.stringify(value);
