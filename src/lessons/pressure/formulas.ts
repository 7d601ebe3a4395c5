import type { LessonFormula } from '../types.ts';

export const formulas: readonly LessonFormula[] = [
	{
		tex: String.raw`\mu(p) = \mu_0`,
		says: 'Stays: the textbook law. Neither load nor patch matters.',
		of: 'frictionRatio'
	},
	{
		tex: String.raw`\mu(p) = \mu_0 + \frac{\tau}{p}`,
		says: 'Falls: a part τ of the friction goes with the patch; p is the mean pressure on it.',
		of: 'frictionRatio'
	},
	{
		tex: String.raw`\mu(p) = \mu_{\text{film}} + (\mu_0 - \mu_{\text{film}})\left(1 - e^{-(p/p_{*})^{k}}\right)`,
		says: 'Rises: a slippery film that pressure breaks at about p*. Assumed, not shown by experiments.',
		of: 'frictionRatio'
	},
	{
		tex: String.raw`\mu(p) = \mu_0 + \frac{\tau}{p} + \mu_d \left(\frac{p}{p_r}\right)^{1/3}`,
		says: 'Falls, then rises: losses inside a soft body, least supported on slick holds.',
		of: 'frictionRatio'
	}
];
