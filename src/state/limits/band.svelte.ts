import { keepForTab, readForTab } from '#storage/stores/kept-for-tab.ts';

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

const name = 'trials-band';

/** What the trials say, laid beside the model until it is taken away or the tab is closed. */
export class BandState {
	#current = $state.raw<TrialsBand | undefined>();

	get current(): TrialsBand | undefined {
		return this.#current;
	}

	set current(band: TrialsBand | undefined) {
		this.#current = band;
		keepForTab(name, band && JSON.stringify(band));
	}

	/** Takes up what a reload interrupted; call when the page stands, since a page written beforehand has none. */
	recall(): void {
		this.#current ??= bandIn(readForTab(name));
	}
}

function bandIn(text: string | undefined): TrialsBand | undefined {
	try {
		const { kind, above, grip, from, to, middle } = JSON.parse(text ?? '') as TrialsBand;
		const loads = [from, to, middle];
		const fine =
			(kind === 'slip' || kind === 'opening') &&
			typeof above === 'boolean' &&
			typeof grip === 'string' &&
			loads.every((load) => Number.isFinite(load) && load > 0);
		return fine ? { kind, above, grip, from, to, middle } : undefined;
	} catch {
		// Nothing kept, or not ours.
		return undefined;
	}
}

export const sharedBand = new BandState();
