import type { LessonFormula } from '../types.ts';

export const formulas: readonly LessonFormula[] = [
	{
		tex: String.raw`P = 2 \sum_{k=0}^{r} \binom{n}{k}\,\frac{1}{2^{n}}`,
		says: 'How often luck alone splits n people at least as lopsidedly as r against n − r, when load does nothing. Those who did the same at both loads are left aside.',
		of: 'splitChance'
	},
	{
		tex: String.raw`\frac{\mu_k}{\mu_1} = e^{d\,(k-1)}`,
		says: 'A drift: the ratio changes by the same factor from each go k to the next, whatever the load.',
		of: 'orderDriftFactor'
	}
];
