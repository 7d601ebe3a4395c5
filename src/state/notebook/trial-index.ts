import type { Trial } from '#storage/codecs/notebook/records.ts';

/**
 * Trials by id and, in the order of their numbers, by session. Lists are replaced, never changed, so
 * that whoever holds one sees at a glance that there is a new one.
 */
export class TrialIndex {
	#byId = new Map<string, Trial>();
	#bySession = new Map<string, readonly Trial[]>();

	get size(): number {
		return this.#byId.size;
	}

	get(id: string): Trial | undefined {
		return this.#byId.get(id);
	}

	/** Trials of one session, by number. */
	ofSession(sessionId: string): readonly Trial[] {
		return this.#bySession.get(sessionId) ?? [];
	}

	/** Takes a whole notebook's trials in place of what was there. */
	replaceAll(trials: readonly Trial[]): void {
		this.#byId = new Map(trials.map((trial) => [trial.id, trial]));
		const lists = new Map<string, Trial[]>();
		for (const trial of trials) {
			const list = lists.get(trial.sessionId);
			if (list) list.push(trial);
			else lists.set(trial.sessionId, [trial]);
		}
		for (const list of lists.values()) list.sort(byNumber);
		this.#bySession = lists;
	}

	/** Takes one trial as it now stands, or takes it away. */
	set(id: string, trial: Trial | undefined): void {
		const before = this.#byId.get(id);
		if (before) {
			const rest = this.ofSession(before.sessionId).filter((one) => one.id !== id);
			this.#bySession.set(before.sessionId, rest);
		}
		if (!trial) {
			this.#byId.delete(id);
			return;
		}
		this.#byId.set(id, trial);
		const list = [...this.ofSession(trial.sessionId)];
		// Nearly always the last: looked for from the end.
		let place = list.length;
		while (place > 0 && byNumber(list[place - 1]!, trial) > 0) place--;
		list.splice(place, 0, trial);
		this.#bySession.set(trial.sessionId, list);
	}
}

function byNumber(one: Trial, other: Trial): number {
	return one.order - other.order || (one.id < other.id ? -1 : one.id > other.id ? 1 : 0);
}
