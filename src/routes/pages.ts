/** The site's pages in the order of the navigation. */
export const pages = [
	{ path: '/', name: 'Explore' },
	{ path: '/mechanisms/', name: 'Mechanisms' },
	{ path: '/compare/', name: 'Compare' },
	{ path: '/finger/', name: 'Finger' },
	{ path: '/rope/', name: 'Rope' },
	{ path: '/trials/', name: 'Trials' },
	{ path: '/measure/', name: 'Measure' },
	{ path: '/sources/', name: 'Sources and cautions' }
] as const;

/** Pages that stand under another one: reached from there, not from the navigation. */
export const subPages = [
	{ path: '/mechanisms/stories/', name: 'Which stories can tell it?' },
	{ path: '/trials/plan/', name: 'Plan' },
	{ path: '/trials/notebook/', name: 'Notebook' },
	{ path: '/trials/limits/', name: 'Limits and stories' },
	{ path: '/trials/method/', name: 'Method' },
	{ path: '/trials/report/', name: 'Report' }
] as const;
