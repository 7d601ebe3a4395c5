import type { Problem } from './draft.ts';
import { flagsOf } from './flags.ts';
import type { FlagCode } from './flags.ts';
import type { Notebook, Trial } from './records.ts';

/** The field at which each oddity is best looked up. */
const fields: Record<FlagCode, keyof Trial> = {
	'order-doubled': 'order',
	'order-odd': 'order',
	'seconds-negative': 'seconds',
	'held-short': 'seconds',
	'clock-back': 'loggedAt',
	'reason-missing': 'stopReason',
	'reason-unasked': 'stopReason',
	'rope-side-missing': 'ropeSide'
};

/**
 * Lists what is odd about the trials that a file brings, by row: they come in all the same.
 *
 * `rows` says in which row of the file a trial stands, `nameOf` how the file calls a field.
 */
export function oddTrials(
	{ sessions, trials }: Pick<Notebook, 'sessions' | 'trials'>,
	rows: ReadonlyMap<string, number>,
	nameOf: (field: keyof Trial) => string
): Problem[] {
	const bySession = new Map<string, Trial[]>();
	for (const trial of trials) {
		const list = bySession.get(trial.sessionId);
		if (list) list.push(trial);
		else bySession.set(trial.sessionId, [trial]);
	}
	const targets = new Map(sessions.map(({ id, targetSeconds }) => [id, targetSeconds]));
	return [...bySession]
		.flatMap(([id, list]) => flagsOf({ targetSeconds: targets.get(id) ?? null }, list))
		.map(({ trialId, code, text }): Problem => ({
			severity: 'flagged',
			row: rows.get(trialId) ?? null,
			field: nameOf(fields[code]),
			reason: text
		}))
		.sort((one, other) => (one.row ?? 0) - (other.row ?? 0));
}
