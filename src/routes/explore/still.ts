import type { Component } from 'svelte';
import { render } from 'svelte/server';

/** For which window a still is drawn, and the size of each picture's sheet there, px. */
const sizes = {
	narrow: { region: { width: 366, height: 354 } },
	wide: {
		region: { width: 746, height: 476 },
		forces: { width: 622, height: 476 },
		margin: { width: 746, height: 352 }
	},
	low: {
		region: { width: 659, height: 320 },
		forces: { width: 549, height: 320 },
		margin: { width: 659, height: 352 }
	}
};

function still(
	window: keyof typeof sizes,
	picture: unknown,
	props: object,
	size: { width: number; height: number }
): string {
	const { body } = render(picture as Component<Record<string, unknown>>, {
		props: { ...props, size },
		idPrefix: window
	});
	return `<div data-still="${window}">${body}</div>`;
}

/**
 * The pictures as they are written into the page while the site is built; never part of what a
 * browser loads. A narrow window shows the region first, so only that is drawn for it.
 */
export function stillsOf(drawings: typeof import('./drawings.ts')) {
	const { HoldingRegion, FreeBodyDiagram, MarginCurve, marginSeries } = drawings;
	const everyWindow = ['narrow', 'wide', 'low'] as const;
	const broadWindows = ['wide', 'low'] as const;
	return {
		region: (props: object) =>
			everyWindow.map((at) => still(at, HoldingRegion, props, sizes[at].region)).join(''),
		forces: (props: object) =>
			broadWindows.map((at) => still(at, FreeBodyDiagram, props, sizes[at].forces)).join(''),
		margin: (props: object, results: Parameters<typeof marginSeries>[0]) => {
			const given = { ...props, series: marginSeries(results) };
			return broadWindows.map((at) => still(at, MarginCurve, given, sizes[at].margin)).join('');
		}
	};
}
