/**
 * Marks for records of a file that brings none: made from what the row says, so that the same file
 * read twice gives the same marks and nothing comes in twice.
 */
export function markFrom(kind: string, said: readonly unknown[]): string {
	return `file-${kind}-${fnv1a64(JSON.stringify(said))}`;
}

/** FNV-1a, 64 bits, of the text's UTF-8 bytes, as 16 hexadecimal digits (RFC 9923). */
export function fnv1a64(text: string): string {
	let hash = 0xcbf29ce484222325n;
	for (const byte of new TextEncoder().encode(text)) {
		hash = BigInt.asUintN(64, (hash ^ BigInt(byte)) * 0x100000001b3n);
	}
	return hash.toString(16).padStart(16, '0');
}
