import type { CapTrial } from '#core/trials/plan/caps.ts';
import type { Trial } from './records.ts';

/**
 * Turns trials with one grip into what the caps look at, in the order given. Warm-ups and left-out
 * trials are among them: a hang that hurt or opened the fingers counts for safety, whatever is
 * later made of it. Sessions are numbered by their place in `sessionIds`.
 */
export function capTrials(trials: readonly Trial[], sessionIds: readonly string[]): CapTrial[] {
	const numbers = new Map(sessionIds.map((id, place) => [id, place]));
	return trials.map(({ sessionId, loadKg, outcome, seconds, stopReason }) => {
		const session = numbers.get(sessionId);
		return {
			load: loadKg,
			outcome,
			...(seconds !== null && { seconds }),
			...(stopReason !== null && { reason: stopReason === 'pain' ? 'pain' : 'other' }),
			...(session !== undefined && { session })
		};
	});
}
