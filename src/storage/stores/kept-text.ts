/** Small texts kept on this device: a lesson's counts, the room's experiment. */
const prefix = 'holding-window.';

/** What is kept under a name; nothing where storage is blocked. */
export function readKept(name: string): string | undefined {
	try {
		return localStorage.getItem(prefix + name) ?? undefined;
	} catch {
		return undefined;
	}
}

/** Keeps a text; says whether it was kept. */
export function keep(name: string, text: string): boolean {
	try {
		localStorage.setItem(prefix + name, text);
		return true;
	} catch {
		return false;
	}
}

/** Forgets a text; where storage is blocked there is none. */
export function forget(name: string): void {
	try {
		localStorage.removeItem(prefix + name);
	} catch {
		// Blocked: nothing was kept.
	}
}
