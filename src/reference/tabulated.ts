import { appendixTable } from './tabulated/appendix.ts';
import { laboratoryTable } from './tabulated/laboratory.ts';
import { textbookTable } from './tabulated/textbooks.ts';
import { tradeTable } from './tabulated/trade.ts';

/**
 * Coefficients of everyday pairs as tables print them. Show one only with its source, its condition
 * and the spread of the other sources; never as a property of one material.
 */
export const tabulated = [...textbookTable, ...laboratoryTable, ...appendixTable, ...tradeTable];
