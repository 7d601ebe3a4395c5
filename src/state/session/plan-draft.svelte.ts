import { planRefusals } from '#core/trials/plan/check-choice.ts';
import type { Refusal } from '#core/trials/plan/check-choice.ts';
import { conditionsOf } from '#core/trials/plan/conditions.ts';
import { makePlan } from '#core/trials/plan/make-plan.ts';
import type { Design, GripChoice, Plan, PlanChoice, RopeSide } from '#core/trials/plan/types.ts';
import { planVerdict } from '#core/trials/plan/verdict.ts';
import type { GripVerdict } from '#core/trials/plan/verdict.ts';
import type { Grip } from '#storage/codecs/notebook/records.ts';
import { newGrip } from '#storage/codecs/notebook/new-records.ts';
import type { NotebookState } from '../notebook/notebook.svelte.ts';
import { historyOf, painOn } from './history.ts';
import { Picks } from './picks.svelte.ts';
import { ropeTermOf } from './rope-term.ts';

/** One grip of the plan being made. Loads in kg; null: not typed yet. */
export type GripDraft = {
	grip: Grip;
	loads: readonly (number | null)[];
	ownMaximum: number | null;
	bestGuess: number | null;
};

/** What comes out: a plan, or why there is none. */
export type Planned =
	| { plan: Plan; verdict: GripVerdict[]; refusals: []; problem: null }
	| { plan: null; verdict: []; refusals: Refusal[]; problem: string | null };

const none = (problem: string | null, refusals: Refusal[] = []): Planned => ({
	plan: null,
	verdict: [],
	refusals,
	problem
});

/** The plan being made: what is chosen, and what follows from it. */
export class PlanDraft {
	readonly picks: Picks;
	grips = $state.raw<readonly GripDraft[]>([]);
	design = $state<Design>('shuffled');
	sides = $state.raw<readonly RopeSide[]>(['away', 'toward']);
	repeats = $state<number | null>(4);
	checked = $state(true);
	step = $state<number | null>(6);
	increment = $state<number | null>(1);
	target = $state<number | null>(5);
	rest = $state<number | null>(180);
	setup = $state<number | null>(30);
	lean = $state<number | null>(null);
	seed = $state(1);
	readonly day: string;
	#notebook: NotebookState;
	#newId: () => string;

	constructor(notebook: NotebookState, deps: { day: string; seed: number; newId: () => string }) {
		this.#notebook = notebook;
		this.#newId = deps.newId;
		this.picks = new Picks(notebook);
		this.picks.preset();
		this.day = deps.day;
		this.seed = deps.seed;
		this.addGrip(notebook.grips[0]?.id ?? null);
	}

	/** A grip with what was last planned for it; null: a new one. */
	#gripDraft(id: string | null): GripDraft {
		const known = this.#notebook.grips.find((grip) => grip.id === id);
		const grip = known ?? newGrip(this.#newId, { label: '' });
		const last = this.#notebook.plans
			.filter(({ personId }) => personId === this.picks.known.person?.id)
			.flatMap(({ plan }) => plan.choice.grips)
			.find((choice) => choice.grip === grip.id);
		return {
			grip,
			loads: last?.loads ?? [null, null],
			ownMaximum: last?.ownMaximum ?? null,
			bestGuess: last?.bestGuess ?? null
		};
	}

	addGrip(id: string | null): void {
		this.grips = [...this.grips, this.#gripDraft(id)];
	}

	/** Another grip in the same place. */
	swapGrip(place: number, id: string | null): void {
		const next = this.#gripDraft(id);
		this.grips = this.grips.map((one, i) => (i === place ? next : one));
	}

	changeGrip(place: number, changes: Partial<GripDraft>): void {
		this.grips = this.grips.map((one, i) => (i === place ? { ...one, ...changes } : one));
	}

	removeGrip(place: number): void {
		this.grips = this.grips.filter((_, i) => i !== place);
	}

	/** Grips of the plan that the notebook does not know yet. */
	get newGrips(): Grip[] {
		return this.grips
			.map(({ grip }) => grip)
			.filter(({ id }) => !this.#notebook.grips.some((known) => known.id === id));
	}

	get painToday(): boolean {
		const person = this.picks.known.person;
		return person !== undefined && painOn(this.#notebook, person.id, this.day);
	}

	/** What is still missing before a plan can be made, in words. */
	readonly missing: string | null = $derived.by(() => {
		if (this.grips.length === 0) return 'Choose a grip.';
		for (const { grip, loads, ownMaximum, bestGuess } of this.grips) {
			const name = grip.label || 'the grip';
			if (grip.label.trim() === '') return 'Name the grip.';
			if (!loads.some((load) => load !== null)) return `Give at least one load for ${name}.`;
			if (bestGuess === null) return `Give a best guess of where the fingers open, for ${name}.`;
			if (ownMaximum === null) return `Say the most that may hang in ${name}.`;
		}
		if (this.sides.length === 0) return 'Choose where the rope leads.';
		const { repeats, increment, target, rest, setup } = this;
		if ([repeats, increment, target, rest, setup].includes(null)) return 'A number is missing.';
		return null;
	});

	readonly choice: PlanChoice | null = $derived.by(() => {
		if (this.missing !== null) return null;
		const person = this.picks.known.person;
		let session = 0;
		const grips = this.grips.map(({ grip, loads, ownMaximum, bestGuess }): GripChoice => {
			const history = person
				? historyOf(this.#notebook, person.id, grip.id, this.day)
				: { trials: [], session: 0 };
			session = history.session;
			return {
				grip: grip.id,
				loads: loads.filter((load) => load !== null),
				ownMaximum: ownMaximum!,
				bestGuess: bestGuess!,
				history: history.trials
			};
		});
		const first = grips[0]!;
		const sorted = [...first.loads].sort((one, other) => one - other);
		const middle = sorted[Math.floor((sorted.length - 1) / 2)]!;
		return {
			seed: this.seed,
			design: this.design,
			grips,
			ropeSides: [...this.sides],
			repeats: this.repeats!,
			check: this.checked ? { grip: first.grip, load: middle, ropeSide: this.sides[0]! } : null,
			step: (this.step ?? 6) / 100,
			increment: this.increment!,
			targetSeconds: this.target!,
			restSeconds: this.rest!,
			setupSeconds: this.setup!,
			session,
			adult: this.picks.adult
		};
	});

	/** The plan as chosen just now. */
	make(): Planned {
		const { choice } = this;
		if (!choice) return none(this.missing);
		try {
			const refusals = planRefusals(choice);
			if (this.painToday && choice.adult) {
				return none(
					null,
					choice.grips.flatMap(({ grip, loads }) =>
						loads.map((load) => ({ grip, load, reason: 'pain' as const, limit: 0 }))
					)
				);
			}
			if (refusals.length > 0) return none(null, refusals);
			const plan = makePlan(
				choice,
				ropeTermOf(
					{
						slopeDegrees: this.picks.slopeDegrees,
						leanDegrees: this.lean,
						bodyMassKg: this.picks.bodyMassKg
					},
					[...conditionsOf(choice.grips, choice.ropeSides), ...(choice.check ? [choice.check] : [])]
				)
			);
			return { plan, verdict: planVerdict(plan), refusals: [], problem: null };
		} catch (error) {
			if (!(error instanceof RangeError)) throw error;
			return none(this.#readable(error.message));
		}
	}

	/** The core speaks of ids and fields; people know names. */
	#readable(message: string): string {
		let text = message;
		for (const { grip } of this.grips) text = text.replaceAll(grip.id, grip.label);
		const words: Record<string, string> = {
			ropeSides: 'rope sides',
			targetSeconds: 'hold time',
			restSeconds: 'rest',
			setupSeconds: 'time to set up',
			increment: 'smallest plate'
		};
		for (const [field, word] of Object.entries(words)) text = text.replace(field, word);
		return `${text.charAt(0).toUpperCase()}${text.slice(1)}.`;
	}
}
