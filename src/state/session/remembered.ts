import type { Trial } from '#storage/codecs/notebook/records.ts';

/** What the device remembers of a session under way, beside the notebook itself. */
export type Remembered = {
	/** The session on the sheet. */
	session: string;
	/** What was changed on the line that is not logged yet. */
	line: { session: string; order: number; changes: Partial<Trial> };
	/** The hang clock: when the hang began or will begin, and when it was stopped; ms since 1970. */
	clock: { start: number; stop: number | null };
	/** Which kind and grip come next where no plan says it, and the planned line passed to. */
	wish: { kind: Trial['kind']; gripId: string | null; from: number | null };
	sound: boolean;
	vibration: boolean;
};

export type Memory = {
	get<K extends keyof Remembered>(key: K): Remembered[K] | null;
	set<K extends keyof Remembered>(key: K, value: Remembered[K] | null): void;
};

const named = (key: string) => `holding-window.trials.${key}`;

/** Remembers on the device; where that is blocked, nothing is lost but the convenience. */
export const deviceMemory: Memory = {
	get(key) {
		try {
			return JSON.parse(localStorage.getItem(named(key)) ?? 'null');
		} catch {
			return null;
		}
	},
	set(key, value) {
		try {
			if (value === null) localStorage.removeItem(named(key));
			else localStorage.setItem(named(key), JSON.stringify(value));
		} catch {
			// Blocked or full.
		}
	}
};

/** The same for tests, and for a page being prerendered. */
export function plainMemory(): Memory {
	const held = new Map<string, unknown>();
	return {
		get: (key) => (held.get(key) ?? null) as never,
		set: (key, value) => void held.set(key, value)
	};
}
