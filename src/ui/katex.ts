import katex from 'katex';
import 'katex/dist/katex-swap.min.css';

/** Renders one TeX string to HTML with MathML inside; a mistake shows as text, never as an exception. */
export function renderTex(tex: string, display: boolean): string {
	return katex.renderToString(tex, { displayMode: display, throwOnError: false, strict: false });
}
