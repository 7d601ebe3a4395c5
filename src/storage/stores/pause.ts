/** Lets the browser draw and hear before long work goes on. */
export function pause(): Promise<void> {
	return new Promise((resolve) => setTimeout(resolve, 0));
}
