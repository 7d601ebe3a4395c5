import { flushSync, mount, unmount, type ComponentProps } from 'svelte';
import FreeBodyDiagram from '#figures/forces/FreeBodyDiagram.svelte';
import HoldingRegion from '#figures/region/HoldingRegion.svelte';
import MarginCurve from '#figures/margin/MarginCurve.svelte';
import { computeResults, type Results } from '#state/setup/results.ts';
import { marginSeries } from './margin-series.ts';

/** What the pictures on the page are drawn from. */
export type Shown = {
	region: ComponentProps<typeof HoldingRegion>;
	forces: ComponentProps<typeof FreeBodyDiagram>;
	margin: Omit<ComponentProps<typeof MarginCurve>, 'series'>;
};

const times = 12;

/** When nothing else is to be done. */
const idle = () =>
	new Promise<void>((done) =>
		'requestIdleCallback' in window
			? requestIdleCallback(() => done(), { timeout: 1000 })
			: setTimeout(done, 30)
	);

/**
 * Draws the pictures a few times where nobody sees them, moving as in a drag, in idle moments: a browser runs code it
 * has run before several times faster, and the first drag would pay for that otherwise.
 */
export async function rehearse(of: Results, shown: Shown): Promise<void> {
	let results = $state.raw(of);
	const place = document.createElement('div');
	const drawn: Record<string, unknown>[] = [];
	const put = [
		() =>
			mount(HoldingRegion, {
				target: place,
				props: {
					...shown.region,
					get region() {
						return results.region;
					},
					get point() {
						return { value: results.across.value, netMass: results.netMass };
					}
				}
			}),
		() =>
			mount(FreeBodyDiagram, {
				target: place,
				props: {
					...shown.forces,
					get hang() {
						return results.hang;
					},
					get load() {
						return results.load;
					},
					get contact() {
						return results.contact;
					}
				}
			}),
		() =>
			mount(MarginCurve, {
				target: place,
				props: {
					...shown.margin,
					get series() {
						return marginSeries(results);
					},
					get window() {
						return results.window;
					}
				}
			})
	];
	try {
		for (const one of put) {
			await idle();
			drawn.push(one());
		}
		for (let k = 1; k <= times; k += 1) {
			await idle();
			const { setup } = of;
			results = computeResults({ ...setup, body: setup.body + (k % 2 ? k : -k) / 2 });
			flushSync();
		}
	} finally {
		await Promise.all(drawn.map((one) => unmount(one)));
	}
}
