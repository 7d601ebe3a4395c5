import { mechanisms } from '#reference/mechanisms.ts';
import type { Setup } from '#storage/codecs/setup.ts';
import { sharedSetup } from '../setup/shared.ts';
import type { SetupState } from '../setup/setup.svelte.ts';
import { boardBase, type BoardBase } from './board-base.ts';
import { startValues, type Values } from './board-values.ts';
import { firstSight } from '#storage/codecs/setup.ts';

/** The board's numbers: the shared set-up that all curves are drawn on, and what was moved in place. */
export class BoardState {
	/** Numbers moved away from where they start, by mechanism. */
	moved = $state.raw<Readonly<Record<string, Values>>>({});

	readonly #setup: SetupState;
	#lastGood: BoardBase | undefined;

	constructor(setup: SetupState) {
		this.#setup = setup;
	}

	readonly outcome = $derived.by((): { base: BoardBase; error: string | undefined } => {
		try {
			this.#lastGood = boardBase(this.#setup.current);
			return { base: this.#lastGood, error: undefined };
		} catch (error) {
			if (!(error instanceof RangeError)) throw error;
			this.#lastGood ??= boardBase({ ...firstSight } as Setup);
			return { base: this.#lastGood, error: error.message };
		}
	});

	readonly base = $derived(this.outcome.base);

	#settled = $state.raw<BoardBase | undefined>();

	/** The base as it stood when the inputs last came to rest: what is out of sight is drawn on it. */
	get settled(): BoardBase {
		return this.#settled ?? this.base;
	}

	settle(base: BoardBase): void {
		this.#settled = base;
	}

	valuesOf(key: string): Values {
		const row = mechanisms.find((one) => one.key === key)!;
		return { ...startValues(row, this.base.hang), ...this.moved[key] };
	}

	move(key: string, field: string, value: number): void {
		this.moved = { ...this.moved, [key]: { ...this.moved[key], [field]: value } };
	}
}

export const sharedBoard = new BoardState(sharedSetup);
