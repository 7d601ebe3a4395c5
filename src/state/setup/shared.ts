import { SetupState } from './setup.svelte.ts';

/** The one set-up that Explore and its neighbours share while a person walks between pages. */
export const sharedSetup = new SetupState();
