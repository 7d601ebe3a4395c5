// `npm test`: every check, from a fresh clone, ending in one line: N passed, N failed.
import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, readFileSync, rmSync } from 'node:fs';
import { ensureInstalled } from './install.mjs';

ensureInstalled();
const { ensureBrowser } = await import('./browser.mjs');
const browser = await ensureBrowser();

rmSync('reports', { recursive: true, force: true });
mkdirSync('reports', { recursive: true });
const vitestReport = 'reports/vitest.json';
const playwrightReport = 'reports/playwright.json';
const bin = (path) => [process.execPath, `node_modules/${path}`];

const steps = [
	['Format', [...bin('prettier/bin/prettier.cjs'), '--check', '--log-level', 'warn', '.']],
	['Sync', [...bin('@sveltejs/kit/svelte-kit.js'), 'sync']],
	['Lint', [...bin('eslint/bin/eslint.js'), '.']],
	[
		'Types',
		[...bin('svelte-check/bin/svelte-check'), '--tsconfig', './tsconfig.json', '--fail-on-warnings']
	],
	['Types of the service worker', [...bin('typescript/bin/tsc'), '-p', 'src/service-worker']],
	[
		'Unit, oracle, property and gate tests',
		[
			...bin('vitest/vitest.mjs'),
			'run',
			'--reporter=default',
			'--reporter=json',
			`--outputFile.json=${vitestReport}`
		]
	],
	['Build', [...bin('vite/bin/vite.js'), 'build', '--logLevel', 'warn']],
	['Browser tests', [...bin('@playwright/test/cli.js'), 'test']]
];

let passed = 0;
let failed = 0;
for (const [name, [command, ...args]] of steps) {
	const began = Date.now();
	console.log(`\n— ${name}`);
	const { status } = spawnSync(command, args, {
		stdio: 'inherit',
		env: { ...process.env, CHROMIUM_PATH: browser, PLAYWRIGHT_JSON_OUTPUT_NAME: playwrightReport }
	});
	console.log(`  ${name}: ${status === 0 ? 'ok' : 'FAILED'}, ${(Date.now() - began) / 1000} s`);
	const tests = counted(name);
	passed += tests.passed;
	failed += tests.failed;
	if (status !== 0 && tests.failed === 0) failed += 1;
	// Browser tests of a build that failed would only repeat the message.
	if (status !== 0 && name === 'Build') break;
}

/** Test counts from the report that a step leaves; a step without one counts as one check. */
function counted(name) {
	if (name.startsWith('Unit')) {
		if (!existsSync(vitestReport)) return { passed: 0, failed: 1 };
		const report = JSON.parse(readFileSync(vitestReport, 'utf8'));
		return {
			passed: report.numPassedTests,
			failed:
				report.numFailedTests +
				report.testResults.filter(
					(file) => file.status === 'failed' && !file.assertionResults.length
				).length
		};
	}
	if (name.startsWith('Browser')) {
		if (!existsSync(playwrightReport)) return { passed: 0, failed: 1 };
		const { stats } = JSON.parse(readFileSync(playwrightReport, 'utf8'));
		return { passed: stats.expected + stats.flaky, failed: stats.unexpected };
	}
	return { passed: 0, failed: 0 };
}

if (passed === 0) failed += 1;
console.log(`\n${passed} passed, ${failed} failed`);
process.exit(failed === 0 ? 0 : 1);
