import type { Trial } from '#core/trials/trial.ts';
import { orderTerm } from '#core/trials/plan/order-term.ts';
import type { RopeSide } from '#core/trials/plan/types.ts';
import { degreesToRadians } from '#core/units/angle.ts';
import type { Session, Trial as TrialRecord } from '#storage/codecs/notebook/records.ts';
import { tiltsIn } from '#storage/codecs/notebook/tilt-note.ts';
import { capRules } from '../session/history.ts';
import { ropeTermOf } from '../session/rope-term.ts';
import { planOf, sessionsAt, type Pick, type Records } from './pick.ts';

/** A grip's trials as the analysis sees them, and what was done to get there. */
export type Analysed = {
	pick: Pick;
	/** Core's trials and the records they come from, in the same order. */
	trials: Trial[];
	records: TrialRecord[];
	sessions: Session[];
	/** Not analysed: warm-ups, and those left out with a reason. */
	warmUps: number;
	leftOut: TrialRecord[];
	/** Marked held, but let go before the target time: taken as stopped. */
	early: number;
	/** Off plumb, but slope, lean or body mass is not known: taken as plumb. */
	ropeUnknown: number;
	/** Lean of the rope used most, degrees; null where it never leaned. */
	leanDegrees: number | null;
	/** Rope term less its mean, for a hang to come; undefined where it cannot be known. */
	ropeTerm(load: number, side: RopeSide): number | undefined;
	/** Order term of the trial to come. */
	nextOrder: number;
	/** kg; what the analysis counts loads from, and the starting guess of the opening limit. */
	referenceLoad: number;
	bestGuess: number;
	/** Whether the guess was given beforehand, by the plan or by hand. */
	guessGiven: boolean;
	/** kg; null: never said. */
	ownMaximum: number | null;
	/** The one target time of all sessions, s; null where there is none, or several. */
	targetSeconds: number | null;
	/** Friction ratios of repeated tilts, a list for each series in a session's note. */
	tilts: number[][];
};

/** Guess and maximum as typed on the page; null where the plan's stand. */
export type Typed = { bestGuess: number | null; ownMaximum: number | null };

/**
 * Takes a grip's trials out of the notebook for the analysis.
 * Warm-ups and trials left out with a reason are not analysed. Rope terms and order terms are counted
 * from what the session's plan fixed; without a plan, from the session's own trials.
 */
export function analysedOf(notebook: Records, pick: Pick, typed: Typed): Analysed {
	const person = notebook.people.find(({ id }) => id === pick.personId);
	const hold = notebook.holds.find(({ id }) => id === pick.holdId);
	const sessions = sessionsAt(notebook, pick).filter(
		({ id }) => pick.sessionId === null || id === pick.sessionId
	);
	const trials: Trial[] = [];
	const records: TrialRecord[] = [];
	const used: Session[] = [];
	const leftOut: TrialRecord[] = [];
	let [warmUps, early, ropeUnknown, nextOrder, meanTerm] = [0, 0, 0, 0, 0];
	for (const session of sessions) {
		const all = notebook.trialsOf(session.id).filter(({ gripId }) => gripId === pick.gripId);
		const kept = all.filter(({ kind, leftOut: why }) => kind !== 'warm-up' && why === null);
		warmUps += all.filter(({ kind }) => kind === 'warm-up').length;
		leftOut.push(...all.filter(({ kind, leftOut: why }) => kind !== 'warm-up' && why !== null));
		if (kept.length === 0) continue;
		used.push(session);
		const bodyMassKg = session.bodyMassKg ?? person?.bodyMassKg ?? null;
		const raw = eachOnce(
			kept,
			({ loadKg, ropeSide, ropeDegrees }) => `${loadKg} ${ropeSide} ${ropeDegrees}`,
			(record) => rawTerm(record, hold?.slopeDegrees ?? null, bodyMassKg)
		);
		ropeUnknown += raw.filter((term) => term === undefined).length;
		const terms = raw.map((term) => term ?? 0);
		const mean = session.meanRopeTerm ?? terms.reduce((a, b) => a + b, 0) / terms.length;
		const planned =
			session.plannedTrials ??
			// Odd numbers are flagged in the notebook, not refused.
			Math.max(1, ...kept.map(({ order }) => Math.ceil(order)));
		const orderOf = (number: number) => orderTerm(number, planned);
		kept.forEach((record, k) => {
			const target = session.targetSeconds;
			const short =
				record.outcome === 'held' &&
				target !== null &&
				record.seconds !== null &&
				record.seconds < target;
			if (short) early++;
			records.push(record);
			trials.push({
				load: record.loadKg,
				outcome: short ? 'stopped' : record.outcome,
				order: orderOf(record.order),
				ropeTerm: terms[k]! - mean,
				session: used.length,
				...(record.seconds !== null && record.seconds >= 0 && { seconds: record.seconds }),
				...(record.stopReason !== null && {
					reason: record.stopReason === 'pain' ? ('pain' as const) : ('other' as const)
				})
			});
		});
		nextOrder = orderOf(Math.max(...kept.map(({ order }) => order)) + 1);
		meanTerm = mean;
	}
	const last = used.at(-1);
	const rules = capRules(notebook.plans, { ...pick, planId: last?.planId ?? null });
	const plan = planOf(notebook, pick, last?.planId ?? null);
	const targets = new Set(used.map(({ targetSeconds }) => targetSeconds));
	const tilts = used.flatMap(({ note }) =>
		tiltsIn(note).map((angles) => angles.map((angle) => Math.tan(degreesToRadians(angle))))
	);
	const heaviest = Math.max(0, ...trials.map(({ load }) => load));
	const bestGuess =
		typed.bestGuess ?? (rules.known ? rules.bestGuess : heaviest > 0 ? heaviest : 60);
	const loads = plan?.choice.grips.find(({ grip }) => grip === pick.gripId)?.loads ?? [];
	const leanDegrees = usualLean(records);
	const bodyMassKg = last?.bodyMassKg ?? person?.bodyMassKg ?? null;
	const slopeDegrees = hold?.slopeDegrees ?? null;
	return {
		...{ pick, trials, records, sessions: used, warmUps, leftOut, early, ropeUnknown },
		...{ leanDegrees, nextOrder, bestGuess, tilts },
		targetSeconds: targets.size === 1 ? [...targets][0]! : null,
		ropeTerm: (load, side) => {
			const record = { loadKg: load, ropeSide: side, ropeDegrees: leanDegrees };
			const raw = rawTerm(record, slopeDegrees, bodyMassKg);
			return raw === undefined ? undefined : raw - meanTerm;
		},
		// The middle of what was planned: fixed beforehand, never moved by what happened.
		referenceLoad:
			loads.length > 0 ? Math.sqrt(Math.min(...loads) * Math.max(...loads)) : 0.75 * bestGuess,
		guessGiven: typed.bestGuess !== null || rules.known,
		ownMaximum: typed.ownMaximum ?? (rules.known ? rules.ownMaximum : null)
	};
}

/** ln of how much more friction the lean asks for; 0 for a plumb rope, undefined where it is not known. */
function rawTerm(
	{ loadKg, ropeSide, ropeDegrees }: Hung,
	slopeDegrees: number | null,
	bodyMassKg: number | null
): number | undefined {
	if (ropeSide === null || ropeSide === 'plumb' || ropeDegrees === 0) return 0;
	const hang = { grip: '', load: loadKg, ropeSide };
	const of = ropeTermOf({ slopeDegrees, leanDegrees: ropeDegrees, bodyMassKg }, [hang]);
	const term = of?.(hang);
	return term !== undefined && Number.isFinite(term) ? term : undefined;
}

/** Computes once for all that are alike: thousands of trials share a few loads and sides. */
function eachOnce<T, R>(list: readonly T[], keyOf: (one: T) => string, of: (one: T) => R): R[] {
	const known = new Map<string, R>();
	return list.map((one) => {
		const key = keyOf(one);
		if (!known.has(key)) known.set(key, of(one));
		return known.get(key)!;
	});
}

type Hung = {
	loadKg: number;
	ropeSide: TrialRecord['ropeSide'];
	ropeDegrees: number | null;
};

function usualLean(records: readonly TrialRecord[]): number | null {
	const counts = new Map<number, number>();
	for (const { ropeDegrees, ropeSide } of records) {
		if (ropeDegrees && ropeSide !== 'plumb')
			counts.set(ropeDegrees, (counts.get(ropeDegrees) ?? 0) + 1);
	}
	return [...counts].sort((one, other) => other[1] - one[1])[0]?.[0] ?? null;
}
