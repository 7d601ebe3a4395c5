import type { Fact, Row } from './types.ts';

/** What powder did to the ratio in one study. */
export type PowderRow = Row & {
	contact: string;
	effect: 'raises' | 'lowers' | 'either' | 'no difference';
	finding: string;
	/** Ratio with powder over ratio without, where given. */
	factor?: number;
};

/** The sign of powder is unsettled: let people choose it. */
export const powderFindings: readonly PowderRow[] = [
	{
		key: 'li',
		contact: 'flat rock pulled from the fingertips, 15 people',
		effect: 'lowers',
		finding: 'Lowers; water made no difference; sandstone above granite and slate.',
		source: ['li2001'],
		status: 'seen'
	},
	{
		key: 'amca-limestone',
		contact: 'tilting hold, limestone, 11 climbers',
		effect: 'raises',
		finding: 'Raises by 18.7 %.',
		factor: 1.187,
		source: ['amca2012'],
		status: 'seen'
	},
	{
		key: 'amca-sandstone',
		contact: 'tilting hold, sandstone, 11 climbers',
		effect: 'raises',
		finding: 'Raises by 21.6 %.',
		factor: 1.216,
		source: ['amca2012'],
		status: 'seen'
	},
	{
		key: 'fuss',
		contact: 'hand and hold',
		effect: 'either',
		finding: 'On the hand only it raises; on hand and hold it lowers.',
		source: ['fuss2012chalk'],
		status: 'seen'
	},
	{
		key: 'carre',
		contact: 'finger rig, polished steel and sandstone',
		effect: 'either',
		finding:
			'Dry steel: powder lowers. Wet fingers: powder raises. Sandstone: no real difference, but loose grains lubricate a dry bare finger.',
		source: ['carre2012'],
		status: 'seen'
	},
	{
		key: 'clarke',
		contact: 'four rocks at 5, 10 and 15 N',
		effect: 'either',
		finding: 'Depends on moisture and texture; makes the ratio more even.',
		source: ['clarke2024'],
		status: 'seen'
	},
	{
		key: 'kilgas',
		contact: 'hang to exhaustion',
		effect: 'no difference',
		finding: 'No difference in the ratio, but longer hangs.',
		source: ['kilgas2016'],
		status: 'seen'
	},
	{
		key: 'yamaguchi',
		contact: 'finger on leather, 10 men',
		effect: 'either',
		finding: 'Less dependence on load; wet and heavy: higher than without.',
		source: ['yamaguchi2020'],
		status: 'seen'
	},
	{
		key: 'softball',
		contact: 'softball, 14 players',
		effect: 'lowers',
		finding: 'Chalk and rosin lower.',
		source: ['softballFriction'],
		status: 'seen'
	},
	{
		key: 'cadoret',
		contact: 'fingers on objects',
		effect: 'lowers',
		finding: 'Talc lowers; water and sugar raise.',
		source: ['cadoret1996'],
		status: 'seen'
	}
];

/** Rock against rock, from one study at body weight. */
export const rockRatios: readonly Fact[] = [
	{
		key: 'sandstone-over-limestone-bare',
		what: 'sandstone over limestone, bare hand',
		value: 1.156,
		unit: '1',
		conditions: 'tilted at body weight, eleven climbers',
		source: ['amca2012'],
		status: 'seen'
	},
	{
		key: 'sandstone-over-limestone-chalked',
		what: 'sandstone over limestone, chalked hand',
		value: 1.184,
		unit: '1',
		conditions: 'tilted at body weight, eleven climbers',
		source: ['amca2012'],
		status: 'seen'
	}
];
