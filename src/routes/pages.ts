/** The site's pages in the order of the navigation. */
export const pages = [
	{ path: '/', name: 'Explore' },
	{ path: '/sources/', name: 'Sources and cautions' }
] as const;

/** Pages that others lead to: not in the navigation. */
export const subPages = [
	{ path: '/sources/formulas/', name: 'Every formula and its source' },
	{ path: '/sources/checks/', name: 'How the product checks itself' },
	{ path: '/glossary/', name: 'Words and symbols' }
] as const;
