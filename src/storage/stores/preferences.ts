/** What a person likes, remembered on the device. */
export type Preferences = { massUnit: 'kg' | 'lb'; theme: 'system' | 'light' | 'dark' };

const themeKey = 'holding-window.theme';
const unitKey = 'holding-window.mass-unit';

/** Reads what is remembered; where storage is blocked, the defaults. */
export function readPreferences(): Preferences {
	const theme = read(themeKey);
	return {
		massUnit: read(unitKey) === 'lb' ? 'lb' : 'kg',
		theme: theme === 'light' || theme === 'dark' ? theme : 'system'
	};
}

/** Remembers; where storage is blocked, the choice lasts as long as the page. */
export function writePreferences({ massUnit, theme }: Preferences): void {
	write(unitKey, massUnit);
	write(themeKey, theme);
}

function read(key: string): string | null {
	try {
		return localStorage.getItem(key);
	} catch {
		return null;
	}
}

function write(key: string, value: string): void {
	try {
		localStorage.setItem(key, value);
	} catch {
		// Blocked or full: nothing is lost but the memory of a preference.
	}
}
