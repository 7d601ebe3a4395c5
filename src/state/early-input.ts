type Field = HTMLInputElement | HTMLTextAreaElement | HTMLSelectElement;
type Early = {
	earlyInput?: Map<Field, { value: string; checked?: boolean }>;
	rememberEarly?: (event: Event) => void;
};

/**
 * Takes up what was typed, ticked or chosen while the page's scripts were still on their way
 * (static/first.js remembers it): each field is set and says so once more, now that someone listens.
 */
export function takeEarlyInput(root: Document, early: Early = globalThis as Early): void {
	const { earlyInput, rememberEarly } = early;
	if (rememberEarly) removeEventListener('input', rememberEarly, true);
	for (const [field, { value, checked }] of earlyInput ?? []) {
		if (!root.contains(field)) continue;
		field.value = value;
		if (field instanceof HTMLInputElement && checked !== undefined) field.checked = checked;
		field.dispatchEvent(new Event('input', { bubbles: true }));
		field.dispatchEvent(new Event('change', { bubbles: true }));
	}
	earlyInput?.clear();
}
