/** The site's pages in the order of the navigation. */
export const pages = [
	{ path: '/', name: 'Explore' },
	{ path: '/sources/', name: 'Sources and cautions' }
] as const;
