/** The site's pages in the order of the navigation. */
export const pages = [
	{ path: '/', name: 'Explore' },
	{ path: '/mechanisms/', name: 'Mechanisms' },
	{ path: '/compare/', name: 'Compare' },
	{ path: '/finger/', name: 'Finger' },
	{ path: '/rope/', name: 'Rope' },
	{ path: '/trials/', name: 'Trials' },
	{ path: '/measure/', name: 'Measure' },
	{ path: '/workbook/', name: 'Workbook' },
	{ path: '/clinic/', name: 'Clinic' },
	{ path: '/sources/', name: 'Sources and cautions' }
] as const;

/** Pages that stand under another one: reached from there, not from the navigation. */
export const subPages = [
	{ path: '/mechanisms/stories/', name: 'Which stories can tell it?' },
	{ path: '/trials/plan/', name: 'Plan' },
	{ path: '/trials/notebook/', name: 'Notebook' },
	{ path: '/trials/limits/', name: 'What the trials say' },
	{ path: '/trials/method/', name: 'How it is reckoned' },
	{ path: '/trials/report/', name: 'Report' },
	...[
		...['level-floor', 'incline', 'connected-blocks', 'ladder', 'tipping'],
		...['wedge', 'belt', 'pressing', 'hang']
	].map((family) => ({ path: `/workbook/${family}/`, name: `Workbook: ${family}` })),
	{ path: '/workbook/published/', name: 'Published problems' },
	{ path: '/workbook/misconceptions/', name: 'Misconceptions' },
	{ path: '/workbook/tables/', name: 'Tables and standards' },
	{ path: '/workbook/practice/', name: 'Practice' },
	{ path: '/workbook/bench/', name: 'Bench data' },
	...['cancels', 'rope', 'pressure', 'window', 'fair'].flatMap((lesson) => [
		{ path: `/clinic/${lesson}/`, name: `Lesson: ${lesson}` },
		{ path: `/clinic/${lesson}/present/`, name: `Presenter view: ${lesson}` },
		{ path: `/clinic/${lesson}/handout/`, name: `Handouts: ${lesson}` }
	]),
	{ path: '/clinic/hands/', name: 'Big hands or big bodies?' },
	{ path: '/clinic/safety/', name: 'Staying safe' },
	{ path: '/clinic/room/', name: 'The room’s experiment' },
	{ path: '/clinic/session/', name: 'Blank session sheet' },
	{ path: '/clinic/set-up/', name: 'Set-up sheet' },
	{ path: '/sources/formulas/', name: 'Every formula and its source' },
	{ path: '/sources/checks/', name: 'How the product checks itself' },
	{ path: '/glossary/', name: 'Words and symbols' }
];
