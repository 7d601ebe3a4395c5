/**
 * A spreadsheet takes a cell that starts with one of these for a formula, also where its own
 * separator is a semicolon or tab and a cell of ours falls into several (OWASP, CSV injection).
 * The wide forms count in spreadsheets set to East Asian languages.
 */
const start = "[' \\u00a0]*[=+\\-@＝＋－＠]";
const dangerous = new RegExp(`(^|[;\\t\\r\\n])(?=${start})`, 'g');
const guarded = new RegExp(`(^|[;\\t\\r\\n])'(?=${start})`, 'g');

/** Makes text harmless in a spreadsheet: an apostrophe goes before whatever would start a formula. */
export function guardFormulas(text: string): string {
	return text.replace(dangerous, "$1'");
}

/** Takes away exactly the apostrophes that `guardFormulas` put in: unguard(guard(x)) is x. */
export function unguardFormulas(text: string): string {
	return text.replace(guarded, '$1');
}
