import type { Expression } from '../algebra/expression.ts';

/** One wrong version of a formula, and what was done wrong. */
export type Mutation = { slip: string; words: string; formula: Expression; rank: number };

/** A plain number as a formula. */
export const number = (value: number): Expression => ({ kind: 'number', value });
