import rows from './formulas.json' with { type: 'json' };
import type { FormulaRow } from './types.ts';

/** Every function and constant of core that says where it comes from; gathered by scripts/gather-facts.mjs. */
export const formulas = rows as readonly FormulaRow[];
