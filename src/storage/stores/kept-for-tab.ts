/** Small texts kept for as long as this tab is open, over a reload. */
const prefix = 'holding-window.';

/** What this tab keeps under a name; nothing where storage is blocked. */
export function readForTab(name: string): string | undefined {
	try {
		return sessionStorage.getItem(prefix + name) ?? undefined;
	} catch {
		return undefined;
	}
}

/** Keeps a text for this tab, or forgets it; says whether that was done. */
export function keepForTab(name: string, text: string | undefined): boolean {
	try {
		if (text === undefined) sessionStorage.removeItem(prefix + name);
		else sessionStorage.setItem(prefix + name, text);
		return true;
	} catch {
		return false;
	}
}
