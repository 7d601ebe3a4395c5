/** Words people write, and the notebook's own word for each. What is not listed stays as it is. */
const words: Record<string, Record<string, string[]>> = {
	outcome: {
		held: ['hold', 'holds', 'success', 'ok', 'made it'],
		slipped: ['slip', 'slips', 'slid', 'slide'],
		opened: ['open', 'opens', 'fingers opened', 'opening'],
		stopped: ['stop', 'let go'],
		unknown: ['failed', 'fail', 'fell', 'not seen', '?']
	},
	ropeSide: {
		away: ['away from the wall', 'away from wall', 'out', 'outward'],
		toward: ['toward the wall', 'towards', 'towards the wall', 'in', 'inward'],
		plumb: ['vertical', 'straight', 'none', 'no rope']
	},
	kind: {
		'warm-up': ['warm up', 'warmup'],
		check: ['check load'],
		test: ['trial']
	},
	stopReason: {
		pain: ['hurt', 'hurts'],
		opening: ['about to open', 'felt about to open'],
		slipping: ['about to slip', 'felt about to slip'],
		other: []
	},
	reached: {
		scale: ['from the scale'],
		plates: ['added', 'weights'],
		counterweight: ['assist', 'rope'],
		both: [],
		body: ['body weight', 'bodyweight', 'nothing'],
		unknown: ['?']
	},
	'yes-no': { yes: ['y', 'true', '1', 'x'], no: ['n', 'false', '0'] }
};

const own = new Map(
	Object.entries(words).map(([field, list]) => [
		field,
		new Map(
			Object.entries(list).flatMap(([word, others]) =>
				[word, ...others].map((name): [string, string] => [name, word])
			)
		)
	])
);

/** The notebook's word for what a cell says, whatever its capitals. */
export function wordOf(field: string, cell: string): string {
	const plain = cell.trim().toLowerCase().replace(/\s+/g, ' ');
	return own.get(field)?.get(plain) ?? cell.trim();
}
