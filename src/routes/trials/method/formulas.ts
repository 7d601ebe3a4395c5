/** The model's formulas, each with what its letters mean. */
export const formulas = [
	{
		id: 'slip',
		of: 'slipDensity',
		tex: '\\text{stick} = \\Phi\\!\\left(a + c\\,x + g\\,o - q\\,r\\right)',
		words:
			'The chance of not slipping. x = ln(load/reference load); o: tens of trials from the middle of the session; r: how much more friction the lean of the rope asks for. Friction scatters from go to go by τ, as a bell in its logarithm: q = 1/τ, and c = k/τ where friction goes as load to the power k. A constant friction coefficient gives c = 0: load then cancels.'
	},
	{
		id: 'open',
		of: 'openDensity',
		tex: '\\text{keep} = \\Phi\\!\\left(\\frac{u - x}{s}\\right)',
		words:
			'The chance that the fingers do not open, once the hand has not slipped. u: ln of the opening limit over the reference load; s: its spread from go to go.'
	},
	{
		id: 'hold',
		of: 'holdingCurve',
		tex: '\\text{hold} = \\text{stick}\\times\\text{keep}',
		words:
			'Both must go well. A trial that slipped says nothing about the fingers; one that opened counts as not slipped.'
	},
	{
		id: 'lapse',
		of: 'logChance',
		tex: 'p = \\lambda + (1 - 2\\lambda)\\,\\Phi(\\cdot)',
		words:
			'A small share of goes ends by accident (a missed grip). So few trials cannot show how many, so the share λ is fixed; the table below sets other shares beside it.'
	},
	{
		id: 'unseen',
		of: 'averageOverOpenings',
		tex: 'P(\\text{cause not seen}) = 1 - \\text{stick}\\times\\text{keep}',
		words: 'A failure whose cause nobody saw counts as either, weighed by what the rest says.'
	},
	{
		id: 'rope',
		of: 'ropeTerm',
		tex: 'r = \\ln\\tan(\\sigma + \\delta) - \\ln\\tan\\sigma',
		words:
			'σ: slope of the hold; δ: lean of the whole pull, positive away from the wall. Its mean over the planned trials is taken off, fixed with the plan.'
	},
	{
		id: 'order',
		of: 'orderTerm',
		tex: 'o = \\frac{\\text{number} - (\\text{planned} + 1)/2}{10}',
		words: 'Fixed with the plan too, so that trials added or left out later do not move the others.'
	},
	{
		id: 'limit',
		of: 'slipLimit',
		tex: 'W_{\\text{slip}} = W_0\\,e^{-a/c}',
		words:
			'The load at which slipping is one in two. Without a load effect there is none. It is given only within 0.8 × the lightest and 1.1 × the heaviest load tried.'
	},
	{
		id: 'gain',
		of: 'nextTrial',
		tex: 'I = H(\\text{outcome}) - \\overline{H(\\text{outcome}\\mid\\text{all unknowns})}',
		words:
			'What a trial is expected to teach, in nats: entropy of its predicted outcome, less what would be left if all unknowns were known.'
	},
	{
		id: 'time',
		of: 'timedOpeningLimit',
		tex: '\\ln T \\sim N\\!\\left(\\ln t^{*} + \\sigma\\,\\frac{u - x}{s},\\; \\sigma^{2}\\right)',
		words:
			'Hold times, where enough openings have one: T is the time to opening, t* the target, σ its scatter at one load. Held means “not opened up to t*”; a hang that slipped or was stopped means “not opened up to then”. At t* this is the same chance of not opening as above, and a limit for another time moves by s/σ for each e-fold of time.'
	},
	{
		id: 'scatter',
		of: 'frictionScatter',
		tex: 'p(\\ln q) \\propto p_0(\\ln q)\\; q^{\\nu}\\, e^{-q^{2} S/2}',
		words:
			'Repeated tilts: S is the sum of squares of the logarithms of the ratios about the mean of their series, ν the number of tilts less the number of series. What comes out takes the place of the starting guess of q.'
	}
] as const;
