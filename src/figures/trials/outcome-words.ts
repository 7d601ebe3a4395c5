/** How a trial ended. */
export type Outcome = 'held' | 'slipped' | 'opened' | 'stopped' | 'unknown';

/** In the order of the buttons. */
export const outcomes: readonly Outcome[] = ['held', 'slipped', 'opened', 'stopped', 'unknown'];

/** One or two words for the sheet. */
export const outcomeWords: Record<Outcome, string> = {
	held: 'held',
	slipped: 'slipped',
	opened: 'fingers opened',
	stopped: 'stopped',
	unknown: 'cause not seen'
};

/** What each means, for the button's hint and the guide. */
export const outcomeMeanings: Record<Outcome, string> = {
	held: 'to the target time',
	slipped: 'the hand slid, its shape kept',
	opened: 'the fingers straightened first',
	stopped: 'let go or stepped down by choice',
	unknown: 'came off, nobody saw why'
};
