import type { Plan } from '#core/trials/plan/types.ts';
import type { Grip } from '#storage/codecs/notebook/records.ts';
import { put } from '#storage/stores/store.ts';
import type { Change } from '#storage/stores/store.ts';
import { startSession } from './start-session.ts';
import type { Start } from './start-session.ts';

/** A plan and the session that will follow it, as one change; the seed is kept within the plan. */
export function keepPlan(
	plan: Plan,
	parts: Pick<Start, 'person' | 'hold'>,
	said: { day: string; label: string; newGrips: readonly Grip[] },
	newId: () => string
): { changes: Change[]; sessionId: string } {
	const planId = newId();
	const start = startSession(
		{
			...parts,
			grip: { id: plan.choice.grips[0]!.grip },
			session: {
				day: said.day,
				planId,
				targetSeconds: plan.choice.targetSeconds,
				restSeconds: plan.choice.restSeconds,
				checkLoadKg: plan.choice.check?.load ?? null,
				plannedTrials: plan.plannedNumber,
				meanRopeTerm: plan.meanRopeTerm
			}
		},
		newId
	);
	const session = start.changes.find(({ kind }) => kind === 'sessions')!;
	const { personId } = session.record as { personId: string };
	return {
		sessionId: start.sessionId,
		changes: [
			...start.changes.slice(0, -1),
			...said.newGrips.map((grip) => put('grips', grip)),
			put('plans', { id: planId, label: said.label, day: said.day, personId, plan }),
			session
		]
	};
}
