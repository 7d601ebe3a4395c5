import type { LessonFormula } from '../types.ts';

export const formulas: readonly LessonFormula[] = [
	{
		tex: String.raw`H(m) = \max(0,\; M g - m g)\,\tan\varphi`,
		says: 'The outward part of the pull: M is the mass that hangs, m the net load the hands keep, φ the rope’s angle from plumb. It is there only while the rope lifts.',
		of: 'loadAtNetMass'
	},
	{
		tex: String.raw`\tan\delta = \frac{H}{m g}`,
		says: 'The pull on the hands leans by δ: H grows while m g shrinks.',
		of: 'loadAtNetMass'
	},
	{
		tex: String.raw`\frac{Q}{N} = \tan(\sigma + \delta)`,
		says: 'The ratio needed: the hold acts as if it were steeper by δ.',
		of: 'ropeLeanDemand'
	},
	{
		tex: String.raw`\tan\varphi_{\text{slip}} = \frac{m}{M - m}\,\tan(\arctan\mu - \sigma)`,
		says: 'The rope angle at which a given load begins to slip.',
		of: 'leanToSlip'
	}
];
