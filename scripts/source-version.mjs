// Names a build by what it is made of: the package's version and a digest of its sources.
import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const home = fileURLToPath(new URL('..', import.meta.url));
const parts = [
	'src',
	'static',
	'seeds',
	'package.json',
	'package-lock.json',
	'svelte.config.js',
	'vite.config.ts'
];

/** All files under a path, in an order that no file system changes. */
function filesUnder(path) {
	if (!existsSync(join(home, path))) return [];
	if (!statSync(join(home, path)).isDirectory()) return [path];
	return readdirSync(join(home, path))
		.sort()
		.flatMap((name) => filesUnder(`${path}/${name}`));
}

/** For example "0.1.0-3f9a0c2b7d51". */
export function sourceVersion() {
	const { version } = JSON.parse(readFileSync(join(home, 'package.json'), 'utf8'));
	const digest = createHash('sha256');
	for (const file of parts.flatMap(filesUnder)) {
		digest
			.update(`${file}\0`)
			.update(readFileSync(join(home, file)))
			.update('\0');
	}
	return `${version}-${digest.digest('hex').slice(0, 12)}`;
}
