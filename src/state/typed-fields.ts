import type { TypedText } from '#storage/stores/typed-texts.ts';

type Field = HTMLInputElement | HTMLTextAreaElement;

const textual = new Set(['text', 'search', 'number', 'email', 'url', 'tel', 'date', 'time']);

function isTextField(target: unknown): target is Field {
	return (
		target instanceof HTMLTextAreaElement ||
		(target instanceof HTMLInputElement && textual.has(target.type))
	);
}

/** What a field is called on the page. */
function nameOf(field: Field): string {
	const label = field.labels?.[0]?.textContent ?? '';
	const name = field.getAttribute('aria-label') ?? (label || field.name || field.placeholder);
	return name.replace(/\s+/g, ' ').trim();
}

function fieldsNamed(name: string, root: ParentNode): Field[] {
	return [...root.querySelectorAll<Field>('input, textarea')].filter(
		(field) => isTextField(field) && nameOf(field) === name
	);
}

/** Remembers which text fields were typed in, from now on. */
export function watchTyping(root: Document): () => TypedText[] {
	const typed = new Set<Field>();
	root.addEventListener('input', ({ target }) => isTextField(target) && typed.add(target), {
		capture: true
	});
	return () =>
		[...typed]
			.filter((field) => field.isConnected)
			.map((field) => {
				const name = nameOf(field);
				return { field: name, place: fieldsNamed(name, root).indexOf(field), text: field.value };
			});
}

/** Types the texts into their fields again; gives back those whose field is not there. */
export function retype(texts: readonly TypedText[], root: Document): TypedText[] {
	return texts.filter(({ field: name, place, text }) => {
		const field = fieldsNamed(name, root)[place];
		if (!field) return text.trim() !== '';
		if (field.value !== text) {
			field.value = text;
			field.dispatchEvent(new Event('input', { bubbles: true }));
			field.dispatchEvent(new Event('change', { bubbles: true }));
		}
		return false;
	});
}
