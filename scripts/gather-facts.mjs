// Gathers what the page of sources shows beside the reference rows: every formula of core with its
// source, which page uses which table, what the outside checks compare, and each work's short name.
// Run it after changing any of these:
// node scripts/gather-facts.mjs
import { mkdirSync, writeFileSync } from 'node:fs';
import { dirname, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { format, resolveConfig } from 'prettier';
import { checksOf } from './gather/checks.mjs';
import { formulasOf } from './gather/formulas.mjs';
import { pagesOfFiles } from './gather/import-graph.mjs';

/** The files by path, as they should be. */
export async function gathered(citations) {
	const uses = pagesOfFiles();
	const tables = Object.fromEntries(
		[...uses]
			.filter(([path]) => /^src\/reference\/(?!citations|made|types|read|row-of)/.test(path))
			.map(([path, pages]) => [path.slice('src/reference/'.length), pages])
			.sort(([a], [b]) => (a < b ? -1 : 1))
	);
	const files = {
		formulas: formulasOf(citations, uses),
		uses: tables,
		checks: checksOf(citations),
		works: shortWorks(citations)
	};
	const config = await resolveConfig(resolve('src/reference/made/formulas.json'));
	return Object.fromEntries(
		await Promise.all(
			Object.entries(files).map(async ([name, value]) => [
				`src/reference/made/${name}.json`,
				await format(JSON.stringify(value), { ...config, parser: 'json' })
			])
		)
	);
}

/** A work in two words, for a line that points to it: the whole list is long, and not always there. */
function shortWorks(citations) {
	return Object.fromEntries(
		Object.entries(citations).map(([key, { authors, year }]) => {
			const first = authors.split(/,| and | & /)[0].trim();
			return [key, year === null ? first : `${first} ${year}`];
		})
	);
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
	const { runnerImport } = await import('vite');
	const { module } = await runnerImport(resolve('src/reference/citations.ts'), {
		configFile: false,
		logLevel: 'error'
	});
	for (const [path, text] of Object.entries(await gathered(module.citations))) {
		mkdirSync(dirname(path), { recursive: true });
		writeFileSync(path, text);
		console.log(`wrote ${path}`);
	}
}
