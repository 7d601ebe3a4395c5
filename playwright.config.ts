import { defineConfig, devices } from '@playwright/test';
import { chromiumArgs, findBrowser } from './scripts/browser.mjs';

// A deep folder, so that every test also proves that the build can be hosted anywhere.
const port = Number(process.env.TEST_PORT ?? 4179);
const folder = '/some/deep/folder/';
const executablePath = await findBrowser();

export default defineConfig({
	testDir: 'test/browser',
	outputDir: 'reports/browser',
	fullyParallel: true,
	workers: 2,
	timeout: 120_000,
	// A busy machine now and then starves the browser; a test that needs a second go is listed as flaky.
	retries: 2,
	reporter: [['list'], ['json', { outputFile: 'reports/playwright.json' }]],
	use: {
		...devices['Desktop Chrome'],
		baseURL: `http://127.0.0.1:${port}${folder}`,
		viewport: { width: 1440, height: 900 },
		launchOptions: { executablePath, args: chromiumArgs }
	},
	webServer: {
		command: `node scripts/serve.mjs --port ${port} --prefix ${folder}`,
		url: `http://127.0.0.1:${port}${folder}`,
		reuseExistingServer: false
	}
});
