/** The site's pages in the order of the navigation. */
export const pages = [
	{ path: '/', name: 'Explore' },
	{ path: '/compare/', name: 'Compare' },
	{ path: '/finger/', name: 'Finger' },
	{ path: '/rope/', name: 'Rope' },
	{ path: '/sources/', name: 'Sources and cautions' }
] as const;
