import type { Session, Trial } from './records.ts';

/** Something odd about a logged trial: shown beside it, never a reason to drop it. */
export type Flag = { trialId: string; code: FlagCode; text: string };

export type FlagCode =
	| 'order-doubled'
	| 'order-odd'
	| 'seconds-negative'
	| 'held-short'
	| 'clock-back'
	| 'reason-missing'
	| 'reason-unasked'
	| 'rope-side-missing';

/** Lists what is odd about the trials of one session, in the order of their numbers. */
export function flagsOf(session: Pick<Session, 'targetSeconds'>, trials: readonly Trial[]): Flag[] {
	const flags: Flag[] = [];
	const ordered = [...trials].sort((one, other) => one.order - other.order);
	const numbers = new Map<number, number>();
	for (const { order } of ordered) numbers.set(order, (numbers.get(order) ?? 0) + 1);
	let clock: number | null = null;
	for (const trial of ordered) {
		const say = (code: FlagCode, text: string) => flags.push({ trialId: trial.id, code, text });
		if (numbers.get(trial.order)! > 1) {
			say('order-doubled', `Number ${trial.order} stands on ${numbers.get(trial.order)} trials.`);
		}
		if (!Number.isInteger(trial.order) || (trial.order < 1 && trial.kind !== 'warm-up')) {
			say('order-odd', `Number ${trial.order} is not 1, 2, 3, …`);
		}
		if (trial.seconds !== null && trial.seconds < 0) {
			say('seconds-negative', `${trial.seconds} s held is below 0.`);
		}
		if (
			trial.outcome === 'held' &&
			trial.seconds !== null &&
			session.targetSeconds !== null &&
			trial.seconds < session.targetSeconds
		) {
			say('held-short', `Marked held, at ${trial.seconds} s of ${session.targetSeconds} s.`);
		}
		if (trial.outcome === 'stopped' && trial.stopReason === null) {
			say('reason-missing', 'Stopped, with no reason given.');
		}
		if (trial.outcome !== 'stopped' && trial.stopReason !== null) {
			say('reason-unasked', `A reason to stop, but marked ${trial.outcome}.`);
		}
		if ((trial.ropeDegrees ?? 0) > 0 && (trial.ropeSide ?? 'plumb') === 'plumb') {
			say('rope-side-missing', 'The rope leans, but not said which way.');
		}
		if (trial.loggedAt !== null) {
			if (clock !== null && trial.loggedAt < clock) {
				say('clock-back', 'Logged earlier than the trial before: the clock was changed.');
			}
			clock = trial.loggedAt;
		}
	}
	return flags;
}
