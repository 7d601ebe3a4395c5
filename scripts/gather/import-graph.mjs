// Which page leads to which file of src/, by following imports.
import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs';
import { dirname, join } from 'node:path';

const pattern =
	/(?:^|[\s;])(?:import|export)\b([^'";]*?)\bfrom\s*['"]([^'"]+)['"]|\bimport\(\s*['"]([^'"]+)['"]\s*\)|(?:^|\n)\s*import\s+['"]([^'"]+)['"]|new URL\(\s*['"]([^'"]+)['"],\s*import\.meta/g;
const barrel = 'src/core/index.ts';

export function filesUnder(folder, ending = /./) {
	if (!existsSync(folder)) return [];
	return readdirSync(folder)
		.sort()
		.flatMap((name) => {
			const path = join(folder, name);
			if (statSync(path).isDirectory()) return filesUnder(path, ending);
			return ending.test(name) ? [path] : [];
		});
}

function resolved(specifier, from) {
	if (specifier.startsWith('#seeds/')) return specifier.slice(1);
	if (specifier.startsWith('#')) return `src/${specifier.slice(1)}`;
	return specifier.startsWith('.') ? join(dirname(from), specifier) : undefined;
}

/** Names that core's public surface gives, each with its file. */
function surface() {
	const text = readFileSync(barrel, 'utf8');
	return new Map(
		[...text.matchAll(/export \{([^}]*)\} from '([^']+)'/g)].flatMap((match) =>
			match[1].split(',').map((name) => [
				name
					.trim()
					.split(/\s+as\s+/)
					.pop(),
				join('src/core', match[2])
			])
		)
	);
}

function importsOf(path, names) {
	const text = readFileSync(path, 'utf8');
	return [...text.matchAll(pattern)].flatMap((match) => {
		const clause = (match[1] ?? '').trim();
		if (clause.startsWith('type ')) return [];
		const target = resolved(match[2] ?? match[3] ?? match[4] ?? match[5], path);
		if (!target || !existsSync(target)) return [];
		if (target !== barrel) return [target];
		// The public surface names everything; only what is asked of it counts.
		const asked = /\{([^}]*)\}/.exec(clause)?.[1] ?? '';
		return asked
			.split(',')
			.map((name) => name.trim())
			.filter((name) => name !== '' && !name.startsWith('type '))
			.map((name) => names.get(name.split(/\s+as\s+/)[0]))
			.filter((file) => file !== undefined);
	});
}

/** The pages' names, by their address. */
function pageNames() {
	const text = readFileSync('src/routes/pages.ts', 'utf8');
	return [...text.matchAll(/path: '([^']+)',\s*name: '([^']+)'/g)].map(([, path, name]) => ({
		path,
		name
	}));
}

/** For each file of src/ the names of the pages that lead to it, in the order of the navigation. */
export function pagesOfFiles() {
	const names = surface();
	const known = new Map();
	const importsFrom = (path) => {
		if (!known.has(path)) known.set(path, importsOf(path, names));
		return known.get(path);
	};
	const pages = pageNames();
	// This list shows everything and uses nothing.
	const doors = filesUnder('src/routes', /^\+page\.(svelte|ts)$/).filter(
		(path) => !/^src\/routes\/(sources|glossary)\//.test(path)
	);
	const uses = new Map();
	for (const { path: address, name } of pages) {
		const own = doors.filter((door) => {
			const at = door.replace(/^src\/routes|\+page\.(svelte|ts)$/g, '');
			const home = pages
				.filter(({ path }) => at.startsWith(path))
				.sort((a, b) => b.path.length - a.path.length)[0];
			return home?.path === address;
		});
		const seen = new Set();
		const open = [...own];
		while (open.length > 0) {
			const path = open.pop();
			if (seen.has(path) || !/\.(ts|svelte)$/.test(path)) continue;
			seen.add(path);
			open.push(...importsFrom(path));
		}
		for (const path of seen) uses.set(path, [...(uses.get(path) ?? []), name]);
	}
	return uses;
}
