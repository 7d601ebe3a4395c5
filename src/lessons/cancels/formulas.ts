import type { LessonFormula } from '../types.ts';

export const formulas: readonly LessonFormula[] = [
	{
		tex: String.raw`N = \frac{m g}{2}\cos\sigma, \qquad Q = \frac{m g}{2}\sin\sigma`,
		says: 'N presses on the hold, Q pulls along it, at each of two hands; m is the net load, σ the slope.',
		of: 'evaluateHang'
	},
	{
		tex: String.raw`\frac{\mu N}{Q} = \frac{\mu}{\tan\sigma}`,
		says: 'The slip margin: the most friction over the friction needed. The load m has dropped out.',
		of: 'evaluateHang'
	},
	{
		tex: String.raw`\mu = \tan\sigma_{\text{slip}}`,
		says: 'The tilt test: the ratio is the tangent of the angle of first slip.',
		of: 'ratioFromTilts'
	}
];
