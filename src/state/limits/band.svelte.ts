/** A fitted limit, on its way into Explore's region. kg. */
export type TrialsBand = {
	kind: 'slip' | 'opening';
	/** A slip limit of friction that falls: slips above rather than below. */
	above: boolean;
	grip: string;
	from: number;
	to: number;
	middle: number;
};

/** What the trials say, laid beside the model until it is taken away or the page is closed. */
class BandState {
	current = $state.raw<TrialsBand | undefined>();
}

export const sharedBand = new BandState();
