/** A text that someone typed, and the field it stood in: its name and its place among namesakes. */
export type TypedText = { field: string; place: number; text: string };

const key = 'holding-window.typed';

/** Keeps typed texts over a reload of this tab; where storage is blocked, says so by false. */
export function keepTypedTexts(texts: readonly TypedText[]): boolean {
	try {
		if (texts.length > 0) sessionStorage.setItem(key, JSON.stringify(texts));
		return true;
	} catch {
		return texts.length === 0;
	}
}

/** Takes back what was kept, once; nothing where it cannot be read. */
export function takeTypedTexts(): TypedText[] {
	try {
		const kept: unknown = JSON.parse(sessionStorage.getItem(key) ?? '[]');
		sessionStorage.removeItem(key);
		return Array.isArray(kept) ? kept.filter(isTypedText) : [];
	} catch {
		return [];
	}
}

function isTypedText(value: unknown): value is TypedText {
	if (typeof value !== 'object' || value === null) return false;
	const { field, place, text } = value as Record<string, unknown>;
	return typeof field === 'string' && typeof place === 'number' && typeof text === 'string';
}
