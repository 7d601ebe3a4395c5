/** How one go ended. */
export type Outcome = 'held' | 'slipped' | 'opened' | 'stopped' | 'unknown';

/** One go at a grip, as the analysis sees it. */
export type Trial = {
	/** Net hanging load, kg, above 0. */
	load: number;
	/**
	 * held to the target time; slipped; fingers opened; stopped by choice; or failed with the cause not seen.
	 */
	outcome: Outcome;
	/** Order term, (trial number − (planned number + 1)/2)/10, no unit. */
	order: number;
	/** Rope term less its mean over the planned trials, no unit; positive is harder. */
	ropeTerm: number;
	/** Time on the hold, s. */
	seconds?: number;
	/** Why a trial was stopped. */
	reason?: 'pain' | 'other';
	/** Session number; 1 when left out. */
	session?: number;
};

/** What is supposed to make the hold easier or harder to stick to. */
export type Story = 'constant' | 'rises' | 'falls' | 'rope' | 'rises+rope' | 'falls+rope';

/** A story, with or without warming up or tiring. */
export type StoryVersion = { story: Story; withOrder: boolean };

/** The six stories, simplest first. */
export const stories: readonly Story[] = [
	'constant',
	'rises',
	'falls',
	'rope',
	'rises+rope',
	'falls+rope'
];

/** All twelve: the six without an order term, then the six with one. */
export const storyVersions: readonly StoryVersion[] = [false, true].flatMap((withOrder) =>
	stories.map((story) => ({ story, withOrder }))
);
