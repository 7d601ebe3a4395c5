import type { BlockedBy } from '#core/trials/caps.ts';
import type { Candidate } from '#core/trials/next-trial.ts';
import { loadCap, overCap, type CapReason } from '#core/trials/plan/caps.ts';
import type { RopeSide } from '#core/trials/plan/types.ts';
import { storiesInPlay } from '#core/trials/stories-in-play.ts';
import type { Story } from '#core/trials/trial.ts';
import { historyOf, painOn } from '../session/history.ts';
import { planOf, type Records } from './pick.ts';
import type { Analysed } from './analysed.ts';

/** A hang that could come next. */
export type Hang = { load: number; side: RopeSide; ropeTerm: number };
export type NextRow = Candidate & { side: RopeSide };

/** How many loads are looked at between the lightest and a little above the heaviest. */
const steps = 5;
/** And how many plates down from the top. */
const nearTop = 6;

/** Loads and rope sides that could come next, before anyone asks whether they may. */
export function hangsToCome(notebook: Records, analysed: Analysed): Hang[] {
	const { trials, bestGuess } = analysed;
	const plan = planOf(notebook, analysed.pick, analysed.sessions.at(-1)?.planId ?? null);
	const choice = plan?.choice.grips.find(({ grip }) => grip === analysed.pick.gripId);
	const tried = trials.map(({ load }) => load);
	const from = tried.length > 0 ? 0.9 * Math.min(...tried) : 0.3 * bestGuess;
	const to = tried.length > 0 ? 1.15 * Math.max(...tried) : 0.6 * bestGuess;
	const whole = plan?.choice.increment || 1;
	const round = (load: number) => Math.max(whole, Math.round(load / whole) * whole);
	const spread = Array.from({ length: steps }, (_, k) =>
		round(from * (to / from) ** (k / (steps - 1)))
	);
	// Plate by plate below the cap, so that the heaviest that may be suggested is found.
	const most = Math.floor((wholeCap(notebook, analysed)?.limit ?? to) / whole) * whole;
	const top = Array.from({ length: nearTop }, (_, k) => most - k * whole);
	const loads = [...new Set([...spread, ...top, ...(choice?.loads ?? [])])]
		.filter((load) => load > 0)
		.sort((a, b) => a - b);
	const sides: RopeSide[] = analysed.leanDegrees === null ? ['plumb'] : ['away', 'toward'];
	return loads.flatMap((load) =>
		sides.flatMap((side) => {
			const ropeTerm = analysed.ropeTerm(load, side);
			// Above body mass no rope lifts: both sides are then the same hang.
			if (side === 'toward' && ropeTerm === analysed.ropeTerm(load, 'away')) return [];
			return ropeTerm === undefined ? [] : [{ load, side, ropeTerm }];
		})
	);
}

/** The story under which the next trial is weighed: with the rope, where the rope can be told. */
export function storyForNext(analysed: Analysed, best: Story): Story {
	const { inPlay } = storiesInPlay(analysed.trials);
	const falls = best.startsWith('falls');
	if (inPlay.includes('rises+rope')) return falls ? 'falls+rope' : 'rises+rope';
	return falls ? 'falls' : 'rises';
}

/**
 * The cap in force from everything that was ever hung, also what is not analysed: warm-ups, trials left
 * out, pain with another grip that day. Undefined while no own maximum is known.
 */
function wholeCap(
	notebook: Records,
	{ pick, sessions, bestGuess, ownMaximum }: Analysed
): { limit: number; reason: CapReason } | undefined {
	const adult = notebook.people.find(({ id }) => id === pick.personId)?.adult === true;
	const last = sessions.at(-1);
	if (!adult) return { limit: 0, reason: 'adult' };
	if (!last || ownMaximum === null) return undefined;
	if (painOn(notebook, pick.personId, last.day)) return { limit: 0, reason: 'pain' };
	const { trials, session } = historyOf(notebook, pick.personId, pick.gripId, last.day);
	const target = last.targetSeconds;
	return loadCap(trials, {
		...{ ownMaximum, bestGuess, adult, session },
		...(target !== null && { targetSeconds: target })
	});
}

/** The first cap that a load breaks, or null; the analysis adds its own. */
export function capBeyond(
	notebook: Records,
	analysed: Analysed
): (load: number) => BlockedBy | null {
	const cap = wholeCap(notebook, analysed);
	return (load) => (cap ? overCap(load, cap) : null);
}

/** Heaviest load held to the target time in anything with this grip, warm-ups too, kg. */
export function heaviestHeld(notebook: Records, { pick, sessions }: Analysed): number {
	const day = sessions.at(-1)?.day;
	if (!day) return 0;
	const targets = new Map(notebook.sessions.map((s) => [s.day, s.targetSeconds]));
	const target = targets.get(day) ?? 0;
	return Math.max(
		0,
		...historyOf(notebook, pick.personId, pick.gripId, day)
			.trials.filter(
				({ outcome, seconds }) => outcome === 'held' && (seconds === undefined || seconds >= target)
			)
			.map(({ load }) => load)
	);
}

/** Two or three hangs worth doing next, and the ones that caps forbid. */
export function suggested(rows: readonly NextRow[], random: () => number) {
	const open = rows.filter(({ blockedBy }) => blockedBy === null);
	const most = Math.max(0, ...open.map(({ information }) => information));
	// Near-best ones are as good: which of them comes up is left to chance, so that load and order stay unlinked.
	const near = open
		.filter(({ information }) => information >= 0.9 * most)
		.map((row) => ({ row, place: random() }))
		.sort((one, other) => one.place - other.place)
		.map(({ row }) => row);
	const rest = open
		.filter((row) => !near.includes(row))
		.sort((one, other) => other.information - one.information);
	const picked: NextRow[] = [];
	for (const row of [...near, ...rest.slice(0, Math.max(0, 2 - near.length))]) {
		if (picked.length < 3) picked.push(row);
	}
	const blocked = rows.filter(
		({ load, blockedBy }, k) => blockedBy !== null && rows.findIndex((r) => r.load === load) === k
	);
	const cap = Math.max(0, ...open.map(({ load }) => load)) || undefined;
	// The lightest and the heaviest of the blocked, and one for each reason between them.
	const told = blocked.filter(
		(row, k) => k === 0 || row.blockedBy !== blocked[k - 1]!.blockedBy || k === blocked.length - 1
	);
	return { picked, blocked: told, cap };
}
