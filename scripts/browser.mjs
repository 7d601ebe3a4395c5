// Finds a Chromium for the browser tests, and installs one when there is none.
import { execFileSync } from 'node:child_process';
import { existsSync } from 'node:fs';

const known = [
	process.env.CHROMIUM_PATH,
	'/usr/bin/chromium',
	'/usr/bin/chromium-browser',
	'/usr/bin/google-chrome'
];

/** Flags that headless Chromium needs as root, and that keep it from calling other hosts. */
export const chromiumArgs = [
	'--no-sandbox',
	'--disable-gpu',
	'--disable-quic',
	'--no-first-run',
	'--disable-background-networking',
	'--disable-component-update',
	'--disable-sync'
];

/** The path of a browser already on this machine, or undefined. */
export async function findBrowser() {
	for (const path of known) if (path && existsSync(path)) return path;
	const { chromium } = await import('@playwright/test');
	const own = chromium.executablePath();
	return own && existsSync(own) ? own : undefined;
}

/** The path of a browser, installing one if needed: Debian's as root, else Playwright's own. */
export async function ensureBrowser() {
	const found = await findBrowser();
	if (found) return found;
	const run = (command, args) => execFileSync(command, args, { stdio: 'inherit' });
	if (process.getuid?.() === 0 && existsSync('/usr/bin/apt-get')) {
		console.log('No browser found: installing Debian’s chromium …');
		const wait = ['-o', 'DPkg::Lock::Timeout=300'];
		run('apt-get', [...wait, 'update', '-qq']);
		// fonts-dejavu-core: with no system font at all headless Chromium draws no text.
		run('apt-get', [...wait, 'install', '-y', '-qq', 'chromium', 'fonts-dejavu-core']);
	} else {
		console.log('No browser found: downloading Playwright’s Chromium …');
		run(process.execPath, ['node_modules/@playwright/test/cli.js', 'install', 'chromium']);
	}
	const installed = await findBrowser();
	if (!installed) throw new Error('No Chromium could be installed; set CHROMIUM_PATH to one.');
	return installed;
}
