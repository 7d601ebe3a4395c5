import type { BenchKind } from '#state/workbook/bench-rows.ts';

/** Invented rows, to show how the page works; nobody measured them. */
export const examples: Record<BenchKind, string> = {
	pairs: '2.0 1.3\n4.1 2.2\n6.0 2.9\n8.2 3.9\n10.1 4.6\n15.0 6.6\n20.2 8.8\n25.1 10.7',
	tilts: '24.5\n25.8\n25.1\n26.4\n24.9',
	loaded: '2 33.0\n4 29.2\n6 28.1\n8 27.0\n12 26.4\n16 26.1'
};
