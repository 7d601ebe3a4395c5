import type {
	Grip,
	Hold,
	Person,
	PlanRecord,
	Session,
	Trial as TrialRecord
} from '#storage/codecs/notebook/records.ts';

/** Whose trials are looked at: one person, hold and grip, and one session or (null) all of them. */
export type Pick = { personId: string; holdId: string; gripId: string; sessionId: string | null };

/** What is read of the notebook. */
export type Records = {
	people: readonly Person[];
	holds: readonly Hold[];
	grips: readonly Grip[];
	plans: readonly PlanRecord[];
	sessions: readonly Session[];
	trialsOf(sessionId: string): readonly TrialRecord[];
};

/** Sessions of a person on a hold, oldest first. */
export function sessionsAt(
	notebook: Records,
	{ personId, holdId }: { personId: string; holdId: string }
): Session[] {
	return notebook.sessions
		.filter((session) => session.personId === personId && session.holdId === holdId)
		.sort((one, other) => (one.day < other.day ? -1 : one.day > other.day ? 1 : 0));
}

/** Grips that this person has tried on this hold, the most tried first. */
export function gripsAt(notebook: Records, at: { personId: string; holdId: string }): Grip[] {
	const counts = new Map<string, number>();
	for (const { id } of sessionsAt(notebook, at)) {
		for (const { gripId } of notebook.trialsOf(id))
			counts.set(gripId, (counts.get(gripId) ?? 0) + 1);
	}
	return notebook.grips
		.filter(({ id }) => counts.has(id))
		.sort((one, other) => counts.get(other.id)! - counts.get(one.id)!);
}

/** Holds that this person has hung from. */
export function holdsOf(notebook: Records, personId: string): Hold[] {
	const used = new Set(
		notebook.sessions.filter((s) => s.personId === personId).map(({ holdId }) => holdId)
	);
	return notebook.holds.filter(({ id }) => used.has(id));
}

/**
 * The choice as asked, mended where it names what is not there: the person's latest session decides.
 * Undefined while the notebook holds no trial.
 */
export function settledPick(notebook: Records, asked: Partial<Pick>): Pick | undefined {
	const latest = [...notebook.sessions]
		.filter(({ id }) => notebook.trialsOf(id).length > 0)
		.sort((one, other) => (one.day < other.day ? 1 : one.day > other.day ? -1 : 0));
	const session =
		latest.find((s) => s.personId === asked.personId && s.holdId === asked.holdId) ??
		latest.find((s) => s.personId === asked.personId) ??
		latest[0];
	if (!session) return undefined;
	const at = { personId: session.personId, holdId: session.holdId };
	const grips = gripsAt(notebook, at);
	const grip = grips.find(({ id }) => id === asked.gripId) ?? grips[0];
	if (!grip) return undefined;
	const own = sessionsAt(notebook, at).filter(({ id }) =>
		notebook.trialsOf(id).some(({ gripId }) => gripId === grip.id)
	);
	const sessionId = own.some(({ id }) => id === asked.sessionId) ? asked.sessionId! : null;
	return { ...at, gripId: grip.id, sessionId };
}

/** The plan of a session, or the person's latest one, with this grip. */
export function planOf(notebook: Records, pick: Pick, planId: string | null) {
	const own = notebook.plans
		.filter(
			({ personId, plan }) =>
				personId === pick.personId && plan.choice.grips.some(({ grip }) => grip === pick.gripId)
		)
		.sort((one, other) => (one.day < other.day ? 1 : -1));
	return (own.find(({ id }) => id === planId) ?? own[0])?.plan;
}

/** The choice as a link's query, and back. */
export function pickQuery({ personId, holdId, gripId, sessionId }: Pick): string {
	const query = new URLSearchParams({ person: personId, hold: holdId, grip: gripId });
	if (sessionId) query.set('session', sessionId);
	return query.toString();
}

export function readPick(search: string): Partial<Pick> {
	const query = new URLSearchParams(search);
	const get = (key: string) => query.get(key) ?? undefined;
	const asked = {
		personId: get('person'),
		holdId: get('hold'),
		gripId: get('grip'),
		sessionId: get('session')
	};
	return Object.fromEntries(Object.entries(asked).filter(([, value]) => value !== undefined));
}
