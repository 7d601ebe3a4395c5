import {
	readPreferences,
	writePreferences,
	type Preferences
} from '#storage/stores/preferences.ts';

/** Unit and theme: chosen once, remembered, the same on every page. */
class PreferenceState {
	massUnit = $state<Preferences['massUnit']>('kg');
	theme = $state<Preferences['theme']>('system');

	/** Reads what is remembered; called once in the browser. */
	load(): void {
		const { massUnit, theme } = readPreferences();
		this.massUnit = massUnit;
		this.theme = theme;
	}

	setUnit(massUnit: Preferences['massUnit']): void {
		this.massUnit = massUnit;
		this.#keep();
	}

	setTheme(theme: Preferences['theme']): void {
		this.theme = theme;
		const root = document.documentElement;
		if (theme === 'system') delete root.dataset.theme;
		else root.dataset.theme = theme;
		this.#keep();
	}

	#keep(): void {
		writePreferences({ massUnit: this.massUnit, theme: this.theme });
	}
}

export const preferences = new PreferenceState();
