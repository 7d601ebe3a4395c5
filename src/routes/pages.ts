/** The site's pages in the order of the navigation. */
export const pages = [
	{ path: '/', name: 'Explore' },
	{ path: '/workbook/', name: 'Workbook' },
	{ path: '/sources/', name: 'Sources and cautions' }
] as const;

/** Pages that stand under another one: reached from there, not from the navigation. */
export const subPages = [
	...[
		...['level-floor', 'incline', 'connected-blocks', 'ladder', 'tipping'],
		...['wedge', 'belt', 'pressing', 'hang']
	].map((family) => ({ path: `/workbook/${family}/`, name: `Workbook: ${family}` })),
	{ path: '/workbook/published/', name: 'Published problems' },
	{ path: '/workbook/misconceptions/', name: 'Misconceptions' },
	{ path: '/workbook/tables/', name: 'Tables and standards' },
	{ path: '/workbook/practice/', name: 'Practice' },
	{ path: '/workbook/bench/', name: 'Bench data' }
];
