/**
 * Gives the focus to an element if nothing has it: what was pressed has gone from the page, and the
 * keyboard must go on from what came in its place, not from the top.
 */
export function takeFocus(node: HTMLElement | null | undefined): void {
	const lost = document.activeElement === document.body || document.activeElement === null;
	if (lost) node?.focus();
}

/** The same for the undo button, which says what was just done, and takes it back. */
export function takeFocusToUndo(): void {
	takeFocus(document.getElementById('undo'));
}
