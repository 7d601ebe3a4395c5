/** A file's text, and how its bytes were read. */
export type Decoded = { text: string; encoding: string; note: string | null };

/**
 * Turns a file's bytes into text, finding out their encoding: a byte-order mark says it; zero bytes
 * in every second place mean UTF-16; what is valid UTF-8 is UTF-8; the rest is read as
 * Windows-1252 (of which Latin-1's letters are a part), and the note asks to check the accents.
 */
export function decodeBytes(bytes: Uint8Array): Decoded {
	const [a, b, c, d] = bytes;
	if (a === 0x50 && b === 0x4b && c === 0x03 && d === 0x04) {
		throw new TypeError(
			'This is a spreadsheet’s own file. Save it as CSV (UTF-8), then try again.'
		);
	}
	const as = (encoding: string, note: string | null): Decoded => ({
		text: new TextDecoder(encoding).decode(bytes),
		encoding,
		note
	});
	const guessed = 'had no mark of its encoding; it was read as';
	if (a === 0xff && b === 0xfe) return as('utf-16le', null);
	if (a === 0xfe && b === 0xff) return as('utf-16be', null);
	if (!(a === 0xef && b === 0xbb && c === 0xbf)) {
		const zeros = zeroShares(bytes);
		if (zeros.odd > 0.4 && zeros.even < 0.1) return as('utf-16le', `The file ${guessed} UTF-16.`);
		if (zeros.even > 0.4 && zeros.odd < 0.1) return as('utf-16be', `The file ${guessed} UTF-16.`);
	}
	try {
		const text = new TextDecoder('utf-8', { fatal: true }).decode(bytes);
		return { text, encoding: 'utf-8', note: null };
	} catch {
		return as(
			'windows-1252',
			'The file is not UTF-8; it was read as Windows-1252. Check letters with accents.'
		);
	}
}

function zeroShares(bytes: Uint8Array): { even: number; odd: number } {
	const length = Math.min(bytes.length - (bytes.length % 2), 4096);
	if (length === 0) return { even: 0, odd: 0 };
	let even = 0;
	let odd = 0;
	for (let i = 0; i < length; i += 2) {
		if (bytes[i] === 0) even++;
		if (bytes[i + 1] === 0) odd++;
	}
	return { even: even / (length / 2), odd: odd / (length / 2) };
}
