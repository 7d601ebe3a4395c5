import { readdirSync, readFileSync, statSync } from 'node:fs';
import { extname, join } from 'node:path';
import { describe, expect, test } from 'vitest';

type Room = { ours: string[]; outside: RegExp[] };

const svelte = /^svelte(\/|$)/;
const d3 = /^d3$/;

/** What each room of src/ may import: the house's table, as data. */
const rooms: Record<string, Room> = {
	core: { ours: ['core'], outside: [/^pure-rand(\/|$)/] },
	reference: { ours: ['reference', 'core/units'], outside: [] },
	storage: { ours: ['storage', 'core'], outside: [d3, /^idb$/, /^valibot$/] },
	workers: { ours: ['workers', 'core'], outside: [/^comlink$/] },
	plot: { ours: ['plot', 'core/units'], outside: [svelte, d3] },
	ui: { ours: ['ui', 'core/units', 'reference'], outside: [svelte, /^katex/, /^uqr$/] },
	state: { ours: ['state', 'core', 'reference', 'storage', 'workers'], outside: [svelte] },
	figures: { ours: ['figures', 'core', 'plot', 'ui'], outside: [svelte] },
	lessons: {
		ours: ['lessons', 'core', 'reference', 'plot', 'ui', 'figures', 'seeds'],
		outside: [svelte]
	},
	routes: {
		ours: [
			...['core', 'reference', 'storage', 'workers', 'plot', 'ui', 'state', 'figures'],
			...['lessons', 'routes', 'seeds']
		],
		outside: [svelte, /^\$app\//, /^@sveltejs\/kit$/, /^@fontsource-variable\//]
	}
};

/** What each folder of core may use of the others. */
const coreFolders: Record<string, string[]> = {
	units: [],
	mechanics: ['units'],
	friction: ['units'],
	strength: ['units', 'friction', 'mechanics'],
	region: ['units', 'mechanics', 'friction', 'strength'],
	mechanisms: ['units', 'mechanics', 'friction', 'strength', 'region'],
	search: ['units', 'mechanics', 'friction', 'strength', 'region'],
	measure: ['units'],
	statistics: [],
	trials: ['units', 'mechanics', 'statistics'],
	workbook: ['units', 'mechanics', 'friction', 'strength', 'region', 'statistics'],
	scenario: ['units', 'mechanics', 'friction', 'strength', 'region']
};

function filesUnder(folder: string): string[] {
	return readdirSync(folder).flatMap((name) => {
		const path = join(folder, name);
		return statSync(path).isDirectory() ? filesUnder(path) : [path];
	});
}

function importsOf(path: string): string[] {
	const text = readFileSync(path, 'utf8');
	return [
		...text.matchAll(
			/(?:^|[\s;])(?:import|export)\b[^'";]*?\bfrom\s*['"]([^'"]+)['"]|\bimport\(\s*['"]([^'"]+)['"]\s*\)|(?:^|\n)\s*import\s+['"]([^'"]+)['"]|new URL\(\s*['"]([^'"]+)['"],\s*import\.meta/g
		)
	].map((match) => (match[1] ?? match[2] ?? match[3] ?? match[4])!);
}

/** Turns an import's specifier into the path from src/ (or seeds/), or undefined when it is outside. */
function inside(specifier: string, from: string): string | undefined {
	if (specifier.startsWith('#')) return specifier.slice(1);
	if (specifier.startsWith('.')) return join(from, '..', specifier).replace(/^src\//, '');
	return undefined;
}

const checked: { path: string; specifier: string; room: string }[] = [];
for (const room of Object.keys(rooms)) {
	for (const path of filesUnder(join('src', room))) {
		if (!['.ts', '.svelte'].includes(extname(path))) continue;
		for (const specifier of importsOf(path)) checked.push({ path, specifier, room });
	}
}

describe('rooms: each imports only what the house allows', () => {
	test('there is something to check', () => {
		expect(checked.length, 'no imports found under src/').toBeGreaterThan(0);
	});

	test('every import stays within its room’s list', () => {
		const wrong = checked.filter(({ path, specifier, room }) => {
			if (specifier.endsWith('.css') && room === 'routes') return false;
			if (specifier.startsWith('./$types')) return false;
			const own = inside(specifier, path);
			const { ours, outside } = rooms[room]!;
			if (own === undefined) return !outside.some((pattern) => pattern.test(specifier));
			return !ours.some((allowed) => own === allowed || own.startsWith(allowed + '/'));
		});
		expect(wrong.map(({ path, specifier }) => `${path} imports ${specifier}`)).toEqual([]);
	});

	test('between rooms the specifier names the room and ends as the file does', () => {
		const wrong = checked.filter(({ path, specifier, room }) => {
			const own = inside(specifier, path);
			if (own === undefined || specifier.startsWith('./$types')) return false;
			if (specifier.endsWith('.css')) return false;
			const other = !own.startsWith(room + '/');
			return (other && !specifier.startsWith('#')) || extname(specifier) === '';
		});
		expect(wrong.map(({ path, specifier }) => `${path} imports ${specifier}`)).toEqual([]);
	});

	test('inside core the folders build on one another in one direction', () => {
		const wrong = checked.filter(({ path, specifier, room }) => {
			if (room !== 'core') return false;
			const from = path.split('/')[2]!;
			if (from.endsWith('.ts')) return false; // index.ts, the public surface, and types.ts
			const own = inside(specifier, path);
			const to = own?.split('/')[1];
			if (!to || to === from || to.endsWith('.ts')) return to === 'index.ts';
			return !coreFolders[from]?.includes(to);
		});
		expect(wrong.map(({ path, specifier }) => `${path} imports ${specifier}`)).toEqual([]);
	});

	test('browser storage is touched only in stores, and core touches no browser at all', () => {
		const browser =
			/(?<![\w-])(indexedDB|localStorage|sessionStorage|navigator\.|document\.|window\.\w)/;
		const wrong = ['core', 'reference', 'plot', 'storage/codecs']
			.flatMap((room) => {
				try {
					return filesUnder(join('src', room));
				} catch {
					return [];
				}
			})
			.filter((path) => path.endsWith('.ts') && !path.endsWith('.svelte.ts'))
			.filter((path) => {
				const code = readFileSync(path, 'utf8').replace(/\/\*[\s\S]*?\*\/|\/\/.*$/gm, '');
				return browser.test(code);
			});
		expect(wrong).toEqual([]);
	});

	test('no folder is a drawer for everything', () => {
		const drawers = filesUnder('src').filter((path) =>
			/\/(utils|helpers|common|lib)\//.test('/' + path)
		);
		expect(drawers).toEqual([]);
	});
});
