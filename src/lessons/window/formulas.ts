import type { LessonFormula } from '../types.ts';

export const formulas: readonly LessonFormula[] = [
	{
		tex: String.raw`\ell(s) = \left(L - \tfrac{1}{2}\ell_c\right)\cos s + h \sin s`,
		says: 'The arm of the hold’s force about the last joint: L from joint to fingertip, ℓc the length of the patch, h the depth of the pad, s the slope and the lean together. A longer patch makes a shorter arm.',
		of: 'evaluateHang'
	},
	{
		tex: String.raw`F_s = F_{\text{best}}\,\frac{L - D/2}{\ell(s)}\,\frac{f(t)}{f(t_{\text{best}})}`,
		says: 'The strength limit of one hand, from a best hang on a flat edge of depth D.',
		of: 'evaluateHang'
	},
	{
		tex: String.raw`t = 60\left(-1.5 + \frac{2.1}{f} - \frac{0.6}{f^2} + \frac{0.1}{f^3}\right)`,
		says: 'Hold time in seconds at the share f of the best force: a long hold lowers the strength limit.',
		of: 'enduranceTime'
	},
	{
		tex: String.raw`\min\left(\frac{\mu N}{Q},\; \frac{F_s}{F}\right) \ge 1`,
		says: 'The holding window: the loads at which neither limit is passed.',
		of: 'holdingWindow'
	}
];
