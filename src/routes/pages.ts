/** The site's pages in the order of the navigation. */
export const pages = [
	{ path: '/', name: 'Explore' },
	{ path: '/trials/', name: 'Trials' },
	{ path: '/measure/', name: 'Measure' },
	{ path: '/sources/', name: 'Sources and cautions' }
] as const;

/** Pages that are reached from one of the above. */
export const subPages = [
	{ path: '/trials/plan/', name: 'Plan' },
	{ path: '/trials/notebook/', name: 'Notebook' }
] as const;
