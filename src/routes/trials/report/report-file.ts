/**
 * A report as a file of its own: its markup with the page's styles written into it, no script, and
 * nothing that it would have to fetch.
 */
export function reportFile(report: HTMLElement, title: string): Blob {
	const styles = [...document.styleSheets].flatMap((sheet) =>
		[...sheet.cssRules]
			.filter((rule) => !(rule instanceof CSSFontFaceRule))
			.map((rule) => rule.cssText)
	);
	const copy = report.cloneNode(true) as HTMLElement;
	for (const control of copy.querySelectorAll('button, select, input, [data-no-file]'))
		control.remove();
	for (const link of copy.querySelectorAll('a')) link.removeAttribute('href');
	// Written as text: a style element made here would fall under this page's own policy.
	const heading = document.createElement('title');
	heading.textContent = title;
	return new Blob(
		[
			'<!doctype html>\n<html lang="en-GB" data-theme="light"><head><meta charset="utf-8">',
			heading.outerHTML,
			`<style>${styles.join('\n').replaceAll('</', '<\\/')}</style></head>`,
			`<body>${copy.outerHTML}</body></html>\n`
		],
		{ type: 'text/html' }
	);
}

/** Hands a file to the browser to keep. */
export function keepFile(blob: Blob, name: string): void {
	const address = URL.createObjectURL(blob);
	const link = document.createElement('a');
	link.href = address;
	link.download = name;
	link.click();
	// Some browsers read the address only after the click has returned.
	setTimeout(() => URL.revokeObjectURL(address), 60_000);
}
