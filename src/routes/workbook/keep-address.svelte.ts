import { afterNavigate, goto } from '$app/navigation';
import { whenSettled } from '../when-settled.svelte.ts';

/**
 * Makes the address say what a page shows. Call while the page's component is made.
 *
 * @param open - takes the query of a link
 * @param query - what the page shows now; undefined while there is nothing worth a link
 */
export function keepAddress(open: (query: string) => void, query: () => string | undefined): void {
	let ready = $state(false);

	afterNavigate(({ type }) => {
		// Our own writing of the address needs no reading back.
		if (type !== 'goto') open(location.search);
		ready = true;
	});

	whenSettled(
		() => {
			const next = query();
			return !ready || `?${next}` === location.search ? undefined : next;
		},
		(next) => {
			// eslint-disable-next-line svelte/no-navigation-without-resolve -- the same page, another query
			void goto(`?${next}`, { keepFocus: true, noScroll: true, replaceState: true });
		},
		500
	);
}
