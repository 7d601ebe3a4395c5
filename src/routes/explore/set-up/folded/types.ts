import type { MassUnit } from '#core/units/mass-text.ts';
import type { SetupState } from '#state/setup/setup.svelte.ts';

/** What every folded part of the set-up is given. */
export type FoldedProps = { setup: SetupState; mass: MassUnit };
