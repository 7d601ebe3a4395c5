import { expect, test } from 'vitest';
import { nextStep } from '../../../src/routes/next-step.ts';
import { pages, subPages } from '../../../src/routes/pages.ts';

const all: string[] = [...pages, ...subPages].map(({ path }) => path);
/** Sheets to print and the presenter's screen lead nowhere else; a lesson has its own links. */
const ends = /^\/clinic\/(cancels|rope|pressure|window|fair)\//;
const family =
	/^\/workbook\/(level-floor|incline|connected-blocks|ladder|tipping|wedge|pressing|belt|hang)\/$/;
const routeOf = (path: string) =>
	family.test(path) ? '/workbook/[family]' : path === '/' ? path : path.slice(0, -1);

test.each(all.filter((path) => !ends.test(path)))(
	'%s leads to another page of the site',
	(path) => {
		const next = nextStep(routeOf(path));
		expect(all).toContain(next?.path);
		expect(next?.path).not.toBe(path);
		expect(next?.words).toMatch(/^[a-z].*[^.]$/);
	}
);
