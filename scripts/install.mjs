// Installs the dependencies when the lock file has changed since the last installation.
import { execFileSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';

const [major = 0, minor = 0] = process.versions.node.split('.').map(Number);
if (major < 20 || (major === 20 && minor < 19)) {
	console.error(`Node 20.19 or newer is needed; this is ${process.versions.node}.`);
	process.exit(1);
}

/** Runs `npm ci` unless node_modules already matches the lock file. */
export function ensureInstalled() {
	const stamp = 'node_modules/.holding-window-lock';
	const hash = createHash('sha256').update(readFileSync('package-lock.json')).digest('hex');
	if (existsSync(stamp) && readFileSync(stamp, 'utf8') === hash) return;
	console.log('Installing dependencies …');
	const npm = process.platform === 'win32' ? 'npm.cmd' : 'npm';
	execFileSync(npm, ['ci', '--no-audit', '--no-fund'], {
		stdio: 'inherit',
		shell: process.platform === 'win32'
	});
	writeFileSync(stamp, hash);
}
