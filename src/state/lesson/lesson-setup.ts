import type { Hang } from '#core/types.ts';
import { firstSight, type Setup } from '#storage/codecs/setup.ts';
import { loadRange } from '../setup/results.ts';
import { SetupState } from '../setup/setup.svelte.ts';
import { hangOf, netMassOf } from '../setup/to-hang.ts';

/** A lesson's given fields as a whole set-up. */
export function lessonSetup(fields: Record<string, number | string>): Setup {
	return { ...firstSight, ...(fields as Partial<Setup>) };
}

/** A set-up of its own for a lesson, so that its sliders leave the shared one alone. */
export function lessonState(fields: Record<string, number | string>): SetupState {
	const state = new SetupState();
	state.change(lessonSetup(fields));
	return state;
}

/** What a lesson is written for: its given set-up in SI, and variations of it. */
export function lessonHangs(fields: Record<string, number | string>): {
	hang: Hang;
	hangWith: (change: Record<string, number | string>) => Hang;
	netMass: number;
	range: { from: number; to: number };
} {
	const setup = lessonSetup(fields);
	return {
		hang: hangOf(setup),
		hangWith: (change) => hangOf({ ...setup, ...(change as Partial<Setup>) }),
		netMass: netMassOf(setup),
		range: loadRange(setup)
	};
}
