import topics from './checks.json' with { type: 'json' };
import type { OutsideCheck } from './types.ts';

/** What is compared with numbers whose author is not this project; gathered by scripts/gather-facts.mjs. */
export const outsideChecks = topics as readonly OutsideCheck[];
