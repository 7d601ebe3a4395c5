import { tick } from 'svelte';
import type { Results } from '#state/setup/results.ts';
import type { Shown } from './rehearse.svelte.ts';

/** Signs that a person is there. */
const signs = [
	'pointermove',
	'pointerdown',
	'touchstart',
	'keydown',
	'focusin',
	'click',
	'input',
	'wheel',
	'beforeprint'
] as const;

/** Below this share of the size it was drawn in, a still's words are too small to read. */
const leastScale = 0.9;
/** Above this share it looks coarse. */
const mostScale = 1.35;

/** Whether a still is there, drawn for about the size it is shown in. */
function fits(place: Element): boolean {
	const shown = [...place.querySelectorAll<SVGSVGElement>('[data-still] svg[viewBox]')].find(
		(svg) => svg.clientWidth > 0
	);
	if (!shown) return false;
	const { width, height } = shown.viewBox.baseVal;
	const scale = Math.min(shown.clientWidth / width, shown.clientHeight / height);
	return scale >= leastScale && scale <= mostScale;
}

/**
 * The code that draws the pictures anew: fetched at the first sign of a person, or at once where the
 * stills in the page do not fit the window.
 */
export class LivePictures {
	/** The pictures that can be drawn anew by now. */
	drawings = $state.raw<Partial<typeof import('./drawings.ts')>>({});
	readonly all = $derived(this.drawings.MarginCurve !== undefined);

	#fetching = false;
	#left = false;
	/** Where the pictures stand. */
	readonly #places: () => HTMLElement[];
	readonly #rehearsed: () => [Results, Shown];

	constructor(places: () => HTMLElement[], rehearsed: () => [Results, Shown]) {
		this.#places = places;
		this.#rehearsed = rehearsed;
	}

	/** Waits for a sign; gives back what ends the waiting. Call when the page stands. */
	watch(): () => void {
		if (!this.#places().some(fits)) void this.draw();
		const heard = new AbortController();
		for (const sign of signs) {
			window.addEventListener(sign, () => void this.draw(), {
				signal: heard.signal,
				passive: true
			});
		}
		return () => {
			this.#left = true;
			heard.abort();
		};
	}

	async draw(): Promise<void> {
		if (this.#fetching) return;
		this.#fetching = true;
		try {
			const { HoldingRegion, FreeBodyDiagram, MarginCurve, marginSeries, rehearse } =
				await import('./drawings.ts');
			// One at a time, so that no single task holds up a drag.
			await this.#put({ HoldingRegion });
			await this.#put({ FreeBodyDiagram });
			await this.#put({ MarginCurve, marginSeries });
			// Only practice: nothing is lost where it does not come about.
			if (!this.#left) rehearse(...this.#rehearsed()).catch(() => {});
		} catch {
			// Not to be had just now; the next sign asks again.
			this.#fetching = false;
		}
	}

	async #put(drawing: LivePictures['drawings']): Promise<void> {
		const place = this.#handles().findIndex((handle) => handle === document.activeElement);
		this.drawings = { ...this.drawings, ...drawing };
		await tick();
		// Whoever stood on a handle of a still stands on the same handle of the picture.
		const handle = this.#handles()[place];
		if (handle !== document.activeElement) handle?.focus();
		// After the next paint, with nothing else in hand.
		await new Promise((done) => requestAnimationFrame(() => setTimeout(done)));
	}

	/** The handles in sight; of the stills, one window's alone is. */
	#handles(): HTMLElement[] {
		return this.#places()
			.flatMap((at) => [...at.querySelectorAll<HTMLElement>('input, [tabindex]')])
			.filter((handle) => handle.getClientRects().length > 0);
	}
}
