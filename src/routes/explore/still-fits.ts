/** Signs that a person is there. */
export const signs = [
	'pointermove',
	'pointerdown',
	'touchstart',
	'keydown',
	'focusin',
	'click',
	'input',
	'wheel',
	'beforeprint'
] as const;

/** Below this share of the size it was drawn in, a still's words are too small to read. */
const leastScale = 0.9;
/** Above this share it looks coarse. */
const mostScale = 1.35;

/** Whether a still is there, drawn for about the size it is shown in. */
export function fits(place: Element): boolean {
	const shown = [...place.querySelectorAll<SVGSVGElement>('[data-still] svg[viewBox]')].find(
		(svg) => svg.clientWidth > 0
	);
	if (!shown) return false;
	const { width, height } = shown.viewBox.baseVal;
	const scale = Math.min(shown.clientWidth / width, shown.clientHeight / height);
	return scale >= leastScale && scale <= mostScale;
}
