import { beforeNavigate } from '$app/navigation';

/**
 * Hands over what a page's address should say once no change has come for a while: a finished change
 * is one step of the browser's history, a drag is not a hundred. Someone who follows a link meanwhile
 * is not called back. Call while the page's component is made.
 *
 * @param query - what the address should say now; undefined while it should stay as it is
 * @param keep - writes it
 * @param wait - time without a change, ms
 */
export function whenSettled(
	query: () => string | undefined,
	keep: (query: string) => void,
	wait: number
): void {
	let timer: ReturnType<typeof setTimeout> | undefined;
	beforeNavigate(() => clearTimeout(timer));
	$effect(() => {
		const settled = query();
		if (settled === undefined) return;
		timer = setTimeout(() => keep(settled), wait);
		return () => clearTimeout(timer);
	});
}
