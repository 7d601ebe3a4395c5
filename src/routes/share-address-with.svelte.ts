import { afterNavigate, goto } from '$app/navigation';
import type { SetupState } from '#state/setup/setup.svelte.ts';
import { writeLink } from '#storage/codecs/link.ts';
import { joined, queryOf, without } from './own-numbers.ts';
import { whenSettled } from './when-settled.svelte.ts';

/** What a page keeps in its address beside the shared set-up. */
export type OwnAddress = {
	/** The keys it uses; none of them is a field of a set-up. */
	keys: readonly string[];
	/** Takes the page's own part of an address that was opened, after the set-up's. */
	read: (given: URLSearchParams) => void;
	/** The parts that differ from the page's start; read as an effect. */
	write: () => readonly [string, string][];
};

/** Clears the messages of fields whose text is gone. */
export function forgetProblems(setup: SetupState): void {
	for (const field of Object.keys(setup.problems)) setup.problem(field, undefined);
}

/**
 * Makes the address say the shared set-up and what the page adds to it. Call while a page's
 * component is made. A link that carries nothing keeps the set-up that is there.
 */
export function shareAddressWith(setup: SetupState, own: OwnAddress): void {
	let arrived = false;
	/** What the address says already, in our own spelling. */
	let said: string | undefined;

	const whole = () => joined(writeLink(setup.current), own.write());

	afterNavigate(({ type }) => {
		// Our own writing of the address needs no reading back.
		if (type === 'goto') return;
		arrived = type === 'link';
		if (location.search === '' && arrived) return;
		const given = queryOf(location.search);
		setup.open(without(given, own.keys));
		own.read(given);
		said = whole();
	});

	whenSettled(whole, keep, 400);

	function keep(query: string) {
		const replaceState = arrived && location.search === '';
		arrived = false;
		if (query === said) return;
		said = query;
		// eslint-disable-next-line svelte/no-navigation-without-resolve -- the same page, another query
		void goto(`?${query}`, { keepFocus: true, noScroll: true, replaceState });
	}
}
