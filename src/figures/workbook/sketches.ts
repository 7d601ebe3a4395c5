/** One small drawing: ink lines, and one arrow each for the friction it is about. 96 by 64. */
export type Sketch = { lines: string; body: string; friction: string };

const right = (x: number, y: number) => `M${x - 16} ${y}H${x}m-5 -3l5 3l-5 3`;

/** Drawn by hand for this workbook; each shows the arrangement that comes first. */
export const sketches: Record<string, Sketch> = {
	'level-floor': {
		lines: 'M6 52H90M58 36h24m-6-4l6 4l-6 4',
		body: 'M28 26h30v26h-30z',
		friction: 'M26 57H8m5-3l-5 3l5 3'
	},
	incline: {
		lines: 'M8 56H88M8 56L84 18',
		body: 'M38 41L62 29L53 11L29 23z',
		friction: 'M40 49L58 40m-6 0l6 0l-4 5'
	},
	'connected-blocks': {
		lines: 'M6 44H66V60M56 30H70M76 36V44M76 30m-6 0a6 6 0 1 0 12 0a6 6 0 1 0 -12 0M82 30V42',
		body: 'M18 20h38v24H18zM74 42h16v16H74z',
		friction: 'M36 49H14m5-3l-5 3l5 3'
	},
	ladder: {
		lines: 'M14 58H90M78 6V58',
		body: 'M34 58L78 12L76 10L32 56z',
		friction: right(58, 62)
	},
	tipping: {
		lines: 'M6 56H90M20 18h18m-5-3l5 3l-5 3',
		body: 'M42 56L38 12L60 10L64 54z',
		friction: 'M40 60H22m5-3l-5 3l5 3'
	},
	wedge: {
		lines: 'M8 56H90M28 8V34M70 8V24M6 51h14m-5-3l5 3l-5 3',
		body: 'M22 56H84V34zM30 12H68V38L30 51z',
		friction: 'M40 60H24m5-3l-5 3l5 3'
	},
	belt: {
		lines: 'M30 30V60M66 30V50M30 30a18 18 0 0 1 36 0M60 50h12v10H60z',
		body: 'M34 30a14 14 0 1 0 28 0a14 14 0 1 0 -28 0z',
		friction: 'M38 20a14 14 0 0 1 20 0m-6-1l6 1l-1-6'
	},
	pressing: {
		lines: 'M22 6V60M74 6V60M2 34h14m-5-3l5 3l-5 3M94 34H80m5-3l-5 3l5 3',
		body: 'M24 16h48v34H24z',
		friction: 'M28 44V24m-3 5l3-5l3 5M68 44V24m-3 5l3-5l3 5'
	},
	hang: {
		lines: 'M14 4V60M14 24L56 34L52 42L14 42M48 28V58m-3-5l3 5l3-5',
		body: 'M34 24a8 5 12 0 1 16 5l-1 3l-16-4z',
		friction: 'M44 22L28 18m6-2l-6 2l4 4'
	}
};
