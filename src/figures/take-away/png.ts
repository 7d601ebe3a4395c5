/** Width that a picture has at least, px: sharp on a page of paper and on a projector. */
const leastWidth = 1600;

/** An SVG file drawn as a PNG. Browser only; fails with a plain message where drawing is refused. */
export async function pngOf(file: { svg: string; width: number; height: number }): Promise<Blob> {
	const scale = Math.max(2, Math.ceil(leastWidth / file.width));
	const address = URL.createObjectURL(new Blob([file.svg], { type: 'image/svg+xml' }));
	try {
		const image = new Image(file.width, file.height);
		image.src = address;
		await image.decode();
		const canvas = document.createElement('canvas');
		canvas.width = file.width * scale;
		canvas.height = file.height * scale;
		const pen = canvas.getContext('2d');
		if (!pen) throw new Error('This browser gives no canvas to draw on.');
		pen.drawImage(image, 0, 0, canvas.width, canvas.height);
		const blob = await new Promise<Blob | null>((done) => canvas.toBlob(done, 'image/png'));
		if (!blob) throw new Error('This browser could not make the picture.');
		return blob;
	} finally {
		URL.revokeObjectURL(address);
	}
}
