import { loadCap } from '#core/trials/plan/caps.ts';
import type { CapReason } from '#core/trials/plan/caps.ts';
import { nextUpAndDown } from '#core/trials/plan/up-and-down.ts';
import type { Person, PlanRecord, Session } from '#storage/codecs/notebook/records.ts';
import { capRules, historyOf, painOn } from './history.ts';
import type { Trials } from './history.ts';
import type { Remembered } from './remembered.ts';
import { linesToCome, looseOrder, plannedLines } from './sheet-lines.ts';
import type { SheetLine } from './sheet-lines.ts';

/** The line to be hung next, and what stands in its way. */
export type NextTrial = SheetLine & {
	planned: boolean;
	/** Heaviest load the caps allow now, kg, and the rule; null where no rule says anything. */
	cap: { limit: number; reason: CapReason } | null;
	/** Nothing is suggested: not an adult, or pain today. */
	ended: 'adult' | 'pain' | null;
	/** Whether own maximum and best guess are known from a plan. */
	rulesKnown: boolean;
};

/** What to hang next in a session, as planned or freely. */
export function nextTrial(
	notebook: Trials & { plans: readonly PlanRecord[] },
	session: Session,
	person: Person | undefined,
	wish: Remembered['wish']
): NextTrial | null {
	const trials = notebook.trialsOf(session.id);
	const plan = notebook.plans.find(({ id }) => id === session.planId)?.plan;
	const [line] = plan ? linesToCome(plannedLines(plan), trials, wish.from) : [];
	const gripId = line?.gripId ?? wish.gripId;
	if (gripId === null) return null;
	const kind = line?.kind ?? wish.kind;

	const { trials: history, session: number } = historyOf(
		notebook,
		session.personId,
		gripId,
		session.day
	);
	const { known, ...guesses } = capRules(notebook.plans, {
		personId: session.personId,
		gripId,
		planId: session.planId
	});
	const ended =
		person?.adult !== true
			? 'adult'
			: painOn(notebook, session.personId, session.day)
				? 'pain'
				: null;
	const cap = loadCap(history, {
		...guesses,
		adult: true,
		session: number,
		...(session.targetSeconds !== null && { targetSeconds: session.targetSeconds })
	});
	// A check load stands outside the series: it neither steps nor is stepped from.
	const before = trials.findLast((trial) => trial.gripId === gripId && trial.kind === 'test');
	const asked =
		line && line.loadKg === null && before && plan
			? nextUpAndDown({ load: before.loadKg, outcome: before.outcome }, plan.choice.step, cap.limit)
			: (line?.loadKg ?? null);
	return {
		order: line?.order ?? looseOrder(trials, kind, plan?.plannedNumber ?? 0),
		kind,
		gripId,
		loadKg: ended ? null : asked,
		ropeSide: line?.ropeSide ?? null,
		block: line?.block ?? null,
		planned: line !== undefined,
		cap: Number.isFinite(cap.limit) ? cap : null,
		ended,
		rulesKnown: known
	};
}
