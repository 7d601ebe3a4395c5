/** What a picture that leaves the page says beneath itself. */
export type SheetText = {
	title: string;
	caption: string;
	units: string;
	source: string;
	/** Absolute; leads back to the set-up. */
	link: string;
};

/** A file made on the page. */
export type MadeFile = { name: string; type: string; body: string | Blob };

export type TakeAwayProps = {
	/** What the picture is, in a few words: the file's name and title too. */
	name: string;
	/** The figure element that holds the drawing and, as its caption, the drawing in words. */
	figure: () => Element | null | undefined;
	/** Units of everything drawn, as a sentence. */
	units: string;
	/** Where the picture's numbers come from, as a sentence. */
	source: string;
	/** The link that brings this picture back; absolute. */
	link: () => string;
	/** The curves as CSV text; left out where the picture has none. */
	csv?: (() => string | Promise<string>) | undefined;
};
