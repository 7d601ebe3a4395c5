import { afterNavigate, goto } from '$app/navigation';
import type { SetupState } from '#state/setup/setup.svelte.ts';
import { readLink, writeLink } from '#storage/codecs/link.ts';
import { whenSettled } from './when-settled.svelte.ts';

/**
 * Makes the address say the set-up, on any page that shares it. Call while a page's component is made.
 * A link that carries a set-up is read; one that carries none keeps the set-up that is there.
 */
export function shareAddress(setup: SetupState): void {
	let arrived = false;

	afterNavigate(({ type }) => {
		// Our own writing of the address needs no reading back.
		if (type === 'goto') return;
		arrived = type === 'link';
		if (location.search !== '' || type !== 'link') setup.open(location.search);
	});

	whenSettled(() => writeLink(setup.current), keep, 400);

	function keep(query: string) {
		const replaceState = arrived && location.search === '';
		arrived = false;
		if (query === writeLink(readLink(location.search).setup)) return;
		// eslint-disable-next-line svelte/no-navigation-without-resolve -- the same page, another query
		void goto(`?${query}`, { keepFocus: true, noScroll: true, replaceState });
	}
}
