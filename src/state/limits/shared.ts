import { sharedNotebook } from '../notebook/shared.ts';
import { LimitsState } from './limits.svelte.ts';
import { workerClient } from './stories-client.ts';

/** What the pages about limits share: chosen once, computed once. */
export const sharedLimits = new LimitsState(sharedNotebook, workerClient);
