import { randomId } from '#storage/stores/random-id.ts';
import { sharedNotebook } from '../notebook/shared.ts';
import { deviceMemory } from './remembered.ts';
import { SessionLog } from './session-log.svelte.ts';

/** The session on the sheet of this tab. */
export const sharedLog = new SessionLog(sharedNotebook, {
	// Asked anew each time: a clock that is set later, by the person or a test, counts.
	now: () => Date.now(),
	newId: randomId,
	memory: deviceMemory
});
