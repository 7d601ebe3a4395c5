import type { TimedOpeningLimit } from '#core/trials/hold-times.ts';
import type { TimePoint } from '#core/trials/hold-time-curve.ts';
import type { Analysed } from './analysed.ts';
import { curveLoads, optionsOf } from './options.ts';
import type { StoriesClient } from './stories-client.ts';

/** How long holds last against load: both readings of stopped trials, s and kg. */
export type TimesFound = {
	leftOut: { limit: TimedOpeningLimit; curve: TimePoint[] };
	/** Undefined where nothing was stopped. */
	opened: { limit: TimedOpeningLimit; curve: TimePoint[] } | undefined;
};

/** Openings with a time that are needed, at two loads or more, before times are read. Judgement. */
export const fewestTimed = 3;

/** Whether the times allow an answer, or what is missing. */
export function timesAllow({
	trials,
	targetSeconds,
	sessions
}: Pick<Analysed, 'trials' | 'targetSeconds' | 'sessions'>):
	'yes' | 'targets' | 'few' | 'one-load' {
	if (targetSeconds === null) return sessions.length > 0 ? 'targets' : 'few';
	const timed = trials.filter(
		({ outcome, seconds }) => outcome === 'opened' && seconds !== undefined
	);
	if (timed.length < fewestTimed) return 'few';
	return new Set(timed.map(({ load }) => load)).size < 2 ? 'one-load' : 'yes';
}

/** Asks the worker how long holds last, where the times allow it. */
export async function timesOf(
	client: Pick<StoriesClient, 'ask'>,
	of: Analysed
): Promise<TimesFound | undefined> {
	const { trials, targetSeconds } = of;
	if (timesAllow(of) !== 'yes' || targetSeconds === null) return undefined;
	const { referenceLoad, bestGuess, priors } = optionsOf(of);
	const { loads } = curveLoads(of);
	const reading = async (stopped: 'left-out' | 'opened') => {
		const options = {
			...{ referenceLoad, bestGuess, stopped, targetTime: targetSeconds },
			...(priors && { priors })
		};
		const { limit, curve } = await client.ask({ kind: 'times', trials, options, loads });
		return { limit, curve };
	};
	const leftOut = await reading('left-out');
	const both = trials.some(({ outcome }) => outcome === 'stopped');
	return { leftOut, opened: both ? await reading('opened') : undefined };
}
