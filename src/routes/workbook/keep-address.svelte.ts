import { afterNavigate, beforeNavigate, goto } from '$app/navigation';

/**
 * Makes the address say what a page shows. Call while the page's component is made.
 *
 * @param open - takes the query of a link
 * @param query - what the page shows now; undefined while there is nothing worth a link
 */
export function keepAddress(open: (query: string) => void, query: () => string | undefined): void {
	let ready = $state(false);
	let timer: ReturnType<typeof setTimeout> | undefined;

	// Someone who follows a link meanwhile is not called back.
	beforeNavigate(() => clearTimeout(timer));

	afterNavigate(({ type }) => {
		// Our own writing of the address needs no reading back.
		if (type !== 'goto') open(location.search);
		ready = true;
	});

	$effect(() => {
		const next = query();
		if (!ready || next === undefined || `?${next}` === location.search) return;
		timer = setTimeout(() => {
			// eslint-disable-next-line svelte/no-navigation-without-resolve -- the same page, another query
			void goto(`?${next}`, { keepFocus: true, noScroll: true, replaceState: true });
		}, 500);
		return () => clearTimeout(timer);
	});
}
