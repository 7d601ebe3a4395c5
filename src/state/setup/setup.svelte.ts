import { readLink, writeLink } from '#storage/codecs/link.ts';
import {
	firstSight,
	mended,
	nearestAllowed,
	numberKeys,
	type NumberKey,
	type Setup
} from '#storage/codecs/setup.ts';
import { computeResults, type Results } from './results.ts';

const numeric = new Set<string>(numberKeys);
const firstQuery = writeLink(firstSight);

/**
 * The set-up that a page works on: what it holds now, which fields hold text that cannot be used,
 * and what follows from it. What follows is computed once for all changes of one event.
 */
export class SetupState {
	current = $state.raw<Setup>({ ...firstSight });
	/** One message for each field whose text cannot be used. */
	problems = $state.raw<Readonly<Record<string, string>>>({});
	/** What was odd about the link that was opened. */
	notes = $state.raw<readonly string[]>([]);

	#lastGood: Results | undefined;

	/** The last results that could be computed, and why there are no newer ones. */
	readonly outcome = $derived.by((): { results: Results; error: string | undefined } => {
		try {
			this.#lastGood = computeResults(this.current);
			return { results: this.#lastGood, error: undefined };
		} catch (error) {
			if (!(error instanceof RangeError)) throw error;
			this.#lastGood ??= computeResults({ ...firstSight });
			return { results: this.#lastGood, error: error.message };
		}
	});

	readonly results = $derived(this.outcome.results);

	/** True while the picture shows the last good values, not the typed ones. */
	readonly stale = $derived(
		this.outcome.error !== undefined || Object.keys(this.problems).length > 0
	);

	/** Changes fields; numbers outside their range become the nearest allowed one. */
	change(patch: Partial<Setup>): void {
		const next = { ...this.current, ...patch };
		for (const key of Object.keys(patch)) {
			if (numeric.has(key)) {
				next[key as NumberKey] = nearestAllowed(key as NumberKey, next[key as NumberKey]);
			}
		}
		this.current = mended(next);
	}

	/** Notes or clears the message of one field. */
	problem(field: string, message: string | undefined): void {
		if (this.problems[field] === message) return;
		const rest = Object.fromEntries(Object.entries(this.problems).filter(([key]) => key !== field));
		this.problems = message === undefined ? rest : { ...rest, [field]: message };
	}

	/** Takes a link's query as the set-up. */
	open(query: string): void {
		const { setup, notes } = readLink(query);
		this.notes = notes;
		this.problems = {};
		this.current = setup;
	}

	/** Nothing is changed yet. */
	get isFirstSight(): boolean {
		return this.query === firstQuery;
	}

	/** The query that says this set-up. */
	get query(): string {
		return writeLink(this.current);
	}
}
