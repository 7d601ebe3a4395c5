import { encode } from 'uqr';

/** A QR code as one path of unit squares, quiet border included. */
export type QrPicture = { size: number; path: string };

/**
 * Largest version drawn: 117 × 117 squares. A bigger one on a sheet of paper or across a room is a
 * code that a phone does not read, and a code that cannot be read is worse than none.
 */
const maxVersion = 25;
/** Four squares of quiet border, as ISO/IEC 18004 asks (from memory). */
const border = 4;

/** The text as a QR code; undefined where it is too long for one that a phone can read. */
export function qrPicture(text: string): QrPicture | undefined {
	for (const ecc of ['M', 'L'] as const) {
		try {
			const { size, data } = encode(text, { ecc, border, maxVersion });
			return { size, path: data.map(rowPath).join('') };
		} catch (error) {
			if (!(error instanceof Error && /too long/i.test(error.message))) throw error;
		}
	}
	return undefined;
}

/** Neighbouring dark squares become one bar: a tenth of the path, and no hairlines between them. */
function rowPath(row: readonly boolean[], y: number): string {
	let path = '';
	for (let x = 0; x < row.length; x++) {
		if (!row[x]) continue;
		const start = x;
		while (row[x + 1]) x++;
		path += `M${start} ${y}h${x + 1 - start}v1h${start - x - 1}z`;
	}
	return path;
}
