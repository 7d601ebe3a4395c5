import run from './last-run.json' with { type: 'json' };
import type { TestRun } from './types.ts';

/** The last whole test run that was written down, by scripts/record-run.mjs; null where none was. */
export const lastRun = run as TestRun | null;
