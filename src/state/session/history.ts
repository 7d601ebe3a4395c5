import type { CapRules, CapTrial } from '#core/trials/plan/caps.ts';
import { capTrials } from '#storage/codecs/notebook/cap-trials.ts';
import type { PlanRecord, Session, Trial } from '#storage/codecs/notebook/records.ts';

/** Where trials are looked up: the notebook, or a test's stand-in. */
export type Trials = {
	sessions: readonly Session[];
	trialsOf(sessionId: string): readonly Trial[];
};

/**
 * A person's trials with one grip, oldest first, as the caps want them. All sessions of one day
 * count as one, so that pain in the morning also ends the afternoon.
 */
export function historyOf(
	notebook: Trials,
	personId: string,
	gripId: string,
	today: string
): { trials: CapTrial[]; session: number } {
	const sessions = sessionsOf(notebook, personId);
	const days = [...new Set([...sessions.map(({ day }) => day), today])].sort();
	const trials = sessions.flatMap(({ id, day }) =>
		notebook
			.trialsOf(id)
			.filter((trial) => trial.gripId === gripId)
			.map((trial) => ({ ...trial, sessionId: day }))
	);
	return { trials: capTrials(trials, days), session: days.indexOf(today) };
}

/** Whether this person stopped for pain on this day, with any grip. */
export function painOn(notebook: Trials, personId: string, day: string): boolean {
	return sessionsOf(notebook, personId)
		.filter((session) => session.day === day)
		.some(({ id }) => notebook.trialsOf(id).some(({ stopReason }) => stopReason === 'pain'));
}

/**
 * What the caps lean on beside the trials: from this session's plan, else from the person's latest
 * plan with this grip. Without any, neither number is known and the two caps that need them are
 * open (infinite).
 */
export function capRules(
	plans: readonly PlanRecord[],
	of: { personId: string; gripId: string; planId: string | null }
): Pick<CapRules, 'ownMaximum' | 'bestGuess'> & { known: boolean } {
	const own = plans.filter(
		(plan) =>
			plan.personId === of.personId && plan.plan.choice.grips.some(({ grip }) => grip === of.gripId)
	);
	const plan =
		own.find(({ id }) => id === of.planId) ??
		own.sort((one, other) => (one.day < other.day ? 1 : -1))[0];
	const choice = plan?.plan.choice.grips.find(({ grip }) => grip === of.gripId);
	return choice
		? { ownMaximum: choice.ownMaximum, bestGuess: choice.bestGuess, known: true }
		: { ownMaximum: Infinity, bestGuess: Infinity, known: false };
}

function sessionsOf(notebook: Trials, personId: string): Session[] {
	return notebook.sessions
		.filter((session) => session.personId === personId)
		.sort((one, other) => (one.day < other.day ? -1 : one.day > other.day ? 1 : 0));
}
