// Writes down what the last whole test run counted, for the page that says how the product checks
// itself. Run it after npm test: node scripts/record-run.mjs
import { readFileSync, writeFileSync } from 'node:fs';
import { relative } from 'node:path';
import { format, resolveConfig } from 'prettier';

const target = 'src/reference/made/last-run.json';
const kinds = ['oracles', 'own', 'properties', 'unit', 'gates', 'browser'];
const counts = Object.fromEntries(kinds.map((kind) => [kind, { files: 0, passed: 0, failed: 0 }]));

const unit = JSON.parse(readFileSync('reports/vitest.json', 'utf8'));
/** The same tests by topic of the outside checks. */
const topics = {};
for (const { name, assertionResults } of unit.testResults) {
	const [, kind, topic] = relative(process.cwd(), name).split('/');
	const count = counts[kind];
	if (!count) throw new Error(`${name} is of no known kind`);
	count.files += 1;
	for (const { status } of assertionResults) {
		if (status === 'passed') count.passed += 1;
		else if (status === 'failed') count.failed += 1;
	}
	if (kind === 'oracles') {
		topics[topic] =
			(topics[topic] ?? 0) + assertionResults.filter(({ status }) => status === 'passed').length;
	}
}
const { stats, suites } = JSON.parse(readFileSync('reports/playwright.json', 'utf8'));
counts.browser = {
	files: suites.length,
	passed: stats.expected + stats.flaky,
	failed: stats.unexpected
};

const failures = Object.values(counts).reduce((sum, { failed }) => sum + failed, 0);
if (failures > 0)
	throw new Error(`${failures} failed: only a whole run that passed is written down.`);
const day = new Date(unit.startTime).toISOString().slice(0, 10);
const config = await resolveConfig(target);
writeFileSync(
	target,
	await format(JSON.stringify({ day, counts, topics }), { ...config, parser: 'json' })
);
console.log(`wrote ${target}`);
