/** Sizes of type tried for a screen of words, the largest first; 1 is the presenter view's own. */
const sizes = [1.5, 1.35, 1.2, 1.1, 1];

/** Sets a screen of words as large as it fits without scrolling: a hall reads from far away. */
export function fit(body: HTMLElement): () => void {
	const settle = () => {
		for (const size of sizes) {
			body.style.fontSize = `${size}em`;
			// A formula scrolls in a box of its own.
			const boxes = [body, ...body.querySelectorAll('[role="group"]')];
			if (
				body.scrollHeight <= body.clientHeight &&
				boxes.every((box) => box.scrollWidth <= box.clientWidth)
			)
				return;
		}
	};
	settle();
	void document.fonts.ready.then(settle);
	const watch = new MutationObserver(settle);
	watch.observe(body, { childList: true, subtree: true, characterData: true });
	addEventListener('resize', settle);
	return () => {
		watch.disconnect();
		removeEventListener('resize', settle);
	};
}
