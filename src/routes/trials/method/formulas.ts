/** The model's formulas, each with what its letters mean. */
export const formulas = [
	{
		id: 'slip',
		tex: '\\text{stick} = \\Phi\\!\\left(a + c\\,x + g\\,o - q\\,r\\right)',
		words:
			'The chance of not slipping. x = ln(load/reference load); o: tens of trials from the middle of the session; r: how much more friction the lean of the rope asks for. Friction scatters from go to go by τ, as a bell in its logarithm: q = 1/τ, and c = k/τ where friction goes as load to the power k. A constant friction coefficient gives c = 0: load then cancels.'
	},
	{
		id: 'open',
		tex: '\\text{keep} = \\Phi\\!\\left(\\frac{u - x}{s}\\right)',
		words:
			'The chance that the fingers do not open, once the hand has not slipped. u: ln of the opening limit over the reference load; s: its spread from go to go.'
	},
	{
		id: 'hold',
		tex: '\\text{hold} = \\text{stick}\\times\\text{keep}',
		words:
			'Both must go well. A trial that slipped says nothing about the fingers; one that opened counts as not slipped.'
	},
	{
		id: 'lapse',
		tex: 'p = \\lambda + (1 - 2\\lambda)\\,\\Phi(\\cdot),\\quad \\lambda = 0.02',
		words:
			'A small share of goes ends by accident (a missed grip). So few trials cannot show how many, so the share is fixed.'
	},
	{
		id: 'unseen',
		tex: 'P(\\text{cause not seen}) = 1 - \\text{stick}\\times\\text{keep}',
		words: 'A failure whose cause nobody saw counts as either, weighed by what the rest says.'
	},
	{
		id: 'rope',
		tex: 'r = \\ln\\tan(\\sigma + \\delta) - \\ln\\tan\\sigma',
		words:
			'σ: slope of the hold; δ: lean of the whole pull, positive away from the wall. Its mean over the planned trials is taken off, fixed with the plan.'
	},
	{
		id: 'order',
		tex: 'o = \\frac{\\text{number} - (\\text{planned} + 1)/2}{10}',
		words: 'Fixed with the plan too, so that trials added or left out later do not move the others.'
	},
	{
		id: 'limit',
		tex: 'W_{\\text{slip}} = W_0\\,e^{-a/c}',
		words:
			'The load at which slipping is one in two. Without a load effect there is none. It is given only within 0.8 × the lightest and 1.1 × the heaviest load tried.'
	},
	{
		id: 'gain',
		tex: 'I = H(\\text{outcome}) - \\overline{H(\\text{outcome}\\mid\\text{all unknowns})}',
		words:
			'What a trial is expected to teach, in nats: entropy of its predicted outcome, less what would be left if all unknowns were known.'
	}
] as const;
