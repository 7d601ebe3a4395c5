import type { PlannedTrial, Truth } from '#core/trials/simulate-plan.ts';
import { storiesInPlay } from '#core/trials/stories-in-play.ts';
import type { Story } from '#core/trials/trial.ts';
import type { Analysed } from './analysed.ts';
import { planOf, type Records } from './pick.ts';
import { Stopped, type StoriesClient } from './stories-client.ts';

/** Probits per e-fold of load: with a tenth of scatter, friction 7, 15 and 32 % higher per doubling. */
export const effects = { small: 1, middling: 2, large: 4 } as const;
export type Effect = keyof typeof effects;
export type Supposed = 'rises' | 'falls' | 'rope';

/** How many of the simulated sessions ended clear. */
export type PowerRow = { trials: number; runs: number; right: number; wrong: number };

const runs = 100;
const longest = 200;

/** One's own plan hung again and again in the machine: how many trials a clear answer needs. */
export class PowerState {
	supposed = $state<Supposed>('rises');
	effect = $state<Effect>('middling');
	status = $state<'idle' | 'running' | 'done' | 'cancelled' | 'failed'>('idle');
	rows = $state.raw<readonly PowerRow[]>([]);
	/** Of the size in hand. */
	progress = $state.raw<{ trials: number; done: number; of: number } | undefined>();
	failure = $state('');
	#make: () => StoriesClient;
	#client: StoriesClient | undefined;
	#id: number | undefined;

	constructor(make: () => StoriesClient) {
		this.#make = make;
	}

	async run(analysed: Analysed, plan: readonly PlannedTrial[]): Promise<void> {
		this.#client ??= this.#make();
		this.status = 'running';
		this.rows = [];
		this.failure = '';
		const { inPlay } = storiesInPlay(plan.map((trial) => ({ ...trial, outcome: 'held' as const })));
		const truth = this.#truth(analysed);
		try {
			for (const times of [1, 2, 4]) {
				const hung = Array.from({ length: times }, () => plan).flat();
				if (hung.length > longest && times > 1) break;
				const { tally } = await this.#client.ask(
					{
						kind: 'power',
						plan: hung,
						options: {
							...{ referenceLoad: analysed.referenceLoad, truth, seed: 20 + times, runs },
							judged: inPlay
						}
					},
					{
						onid: (id) => (this.#id = id),
						onprogress: ({ done, of }) => (this.progress = { trials: hung.length, done, of })
					}
				);
				const won = (right: boolean) =>
					inPlay
						.filter((story) => this.#isRight(story) === right)
						.reduce((sum, story) => sum + tally.won[story], 0);
				this.rows = [
					...this.rows,
					{ trials: hung.length, runs: tally.runs, right: won(true), wrong: won(false) }
				];
			}
			this.status = 'done';
		} catch (error) {
			this.status = error instanceof Stopped ? 'cancelled' : 'failed';
			this.failure = error instanceof Error ? error.message : String(error);
		} finally {
			this.progress = undefined;
			this.#id = undefined;
		}
	}

	cancel(): void {
		if (this.#id !== undefined) this.#client?.cancel(this.#id);
	}

	leave(): void {
		this.#client?.stop();
	}

	/** Slipping one in two in the middle: the best case there is. The rope's geometry always acts. */
	#truth({ leanDegrees }: Analysed): Truth {
		const size = effects[this.effect];
		return {
			margin: 0,
			loadEffect: this.supposed === 'rises' ? size : this.supposed === 'falls' ? -size : 0,
			ropeEffect: leanDegrees === null ? 0 : 8,
			orderEffect: 0
		};
	}

	#isRight(story: Story): boolean {
		return this.supposed === 'rope' ? story === 'rope' : story.startsWith(this.supposed);
	}
}

/** The person's own plan as the simulation needs it; without one, the trials as they were hung. */
export function planToSimulate(
	notebook: Records,
	analysed: Analysed
): { plan: PlannedTrial[]; from: 'plan' | 'trials' } {
	const plan = planOf(notebook, analysed.pick, analysed.sessions.at(-1)?.planId ?? null);
	const lines = (plan?.trials ?? []).flatMap(({ kind, grip, load, ropeSide, order }) => {
		if (kind === 'warm-up' || grip !== analysed.pick.gripId || load === null || order === null)
			return [];
		return [{ load, order, ropeTerm: analysed.ropeTerm(load, ropeSide) ?? 0 }];
	});
	if (lines.length > 0) return { plan: lines, from: 'plan' };
	return {
		plan: analysed.trials
			.slice(-longest)
			.map(({ load, order, ropeTerm }) => ({ load, order, ropeTerm })),
		from: 'trials'
	};
}
