import type { MadeFile } from './types.ts';

/** Hands a file to the browser's downloads. Browser only. */
export function saveFile({ name, type, body }: MadeFile): void {
	const address = URL.createObjectURL(new Blob([body], { type }));
	const link = document.createElement('a');
	link.href = address;
	link.download = name;
	link.click();
	// Some browsers read the address only after the click has been dealt with.
	setTimeout(() => URL.revokeObjectURL(address), 60_000);
}

/** A name that every file system takes: "Margins against net load" and "svg" give one word. */
export function fileName(title: string, ending: string): string {
	const words = title
		.toLowerCase()
		.replace(/[^a-z0-9]+/g, '-')
		.replace(/^-|-$/g, '');
	return `holding-window-${words || 'picture'}.${ending}`;
}
