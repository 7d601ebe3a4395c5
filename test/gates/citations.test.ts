import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { describe, expect, test } from 'vitest';
import { citations } from '../../src/reference/citations.ts';

/** A pointer from somewhere in the house to a citation key. */
type Pointer = { from: string; key: string };

const known = new Set(Object.keys(citations));

/** Words that may stand where a key would: our own working-out, and facts of the trade. */
const ownWords = /^(derived|common practice)\b/;

/** What looks like a key inside running text: a name and a year. */
const namedYear = /\b[a-z][A-Za-z]*(?:1[89]|20)\d\d[A-Za-z]*\b/g;

function filesUnder(folder: string, ending: RegExp): string[] {
	if (!existsSync(folder)) return [];
	return readdirSync(folder).flatMap((name) => {
		const path = join(folder, name);
		if (statSync(path).isDirectory()) return filesUnder(path, ending);
		return ending.test(name) ? [path] : [];
	});
}

/** The texts after "Source:" in a file's comments, each up to the next line that starts anew. */
function sourceLines(text: string): string[] {
	const comments = text.match(/\/\*\*[\s\S]*?\*\//g) ?? [];
	return comments.flatMap((comment) => {
		const lines = comment
			.replace(/^\/\*\*|\*\/$/g, '')
			.split('\n')
			.map((line) => line.replace(/^\s*\* ?/, '').trim());
		return lines.flatMap((line, at) => {
			const start = /^(?:@source|Source:)\s*(.+)$/.exec(line);
			if (!start) return [];
			let whole = start[1]!;
			for (const next of lines.slice(at + 1)) {
				if (next === '' || /^(@|[A-Z][a-z]+( [a-z]+)?:)/.test(next)) break;
				whole += ' ' + next;
			}
			return [whole];
		});
	});
}

/** The keys a Source text names: its first word, further pieces that are one word, and every name with a year. */
function keysOf(source: string): string[] {
	const pieces = source.replace(/\([^)]*\)/g, '').split(/[,;]\s*/);
	const words = pieces
		.map((piece) => piece.trim().replace(/\.$/, ''))
		.filter((piece, at) => !ownWords.test(piece) && (at === 0 || /^[a-z][A-Za-z0-9]*$/.test(piece)))
		.map((piece) => piece.split(/\s/)[0]!);
	return [...new Set([...words, ...(source.match(namedYear) ?? [])])];
}

const docstrings: Pointer[] = filesUnder('src/core', /\.ts$/).flatMap((from) =>
	sourceLines(readFileSync(from, 'utf8')).flatMap((source) =>
		keysOf(source).map((key) => ({ from, key }))
	)
);

/** The names that core shows the world: what its docstrings must account for. */
const publicNames = new Set(
	[...readFileSync('src/core/index.ts', 'utf8').matchAll(/export \{([^}]*)\}/g)].flatMap((match) =>
		match[1]!.split(',').map((name) => name.trim().split(/\s+as\s+/)[0]!)
	)
);

const exported = filesUnder('src/core', /\.ts$/).flatMap((from) => {
	const text = readFileSync(from, 'utf8');
	return [
		...text.matchAll(/(\/\*\*(?:(?!\*\/)[\s\S])*\*\/\s*)?(?:^|\n)export function (\w+)/g)
	].map((match) => ({ from, name: match[2]!, comment: match[1] ?? '' }));
});

/** Walks everything a reference module exports and collects each `source` list on the way. */
function sourcesIn(value: unknown, from: string, seen = new Set<unknown>()): Pointer[] {
	if (value === null || typeof value !== 'object' || value === citations || seen.has(value)) {
		return [];
	}
	seen.add(value);
	return Object.entries(value).flatMap(([field, inner]) =>
		field === 'source'
			? [inner].flat().map((key) => ({ from, key: String(key) }))
			: sourcesIn(inner, from, seen)
	);
}

const referenceFiles = filesUnder('src/reference', /\.ts$/).filter(
	(path) => !path.includes('/citations')
);
const rows: Pointer[] = (
	await Promise.all(
		referenceFiles.map(async (path) =>
			sourcesIn(
				{ ...((await import(/* @vite-ignore */ pathToFileURL(resolve(path)).href)) as object) },
				path
			)
		)
	)
).flat();

/** Keys written out on a page: `<Citation key="…">`, `<Citation keys={['…', '…']}>`, `cite('…')`. */
function keysShown(text: string): string[] {
	const single = [
		...text.matchAll(/<Citation\b[^>]*?\bkey=(?:"([^"{]+)"|\{'([^']+)'\}|'([^']+)')/g),
		...text.matchAll(/\bcite\(\s*['"]([^'"]+)['"]\s*\)/g)
	].map((match) => (match[1] ?? match[2] ?? match[3])!);
	const lists = [...text.matchAll(/<Citation\b[^>]*?\bkeys=\{\[([^\]]*)\]\}/g)].flatMap((match) =>
		[...match[1]!.matchAll(/['"]([^'"]+)['"]/g)].map((key) => key[1]!)
	);
	return [...single, ...lists];
}

const shown: Pointer[] = ['lessons', 'routes', 'figures', 'ui']
	.flatMap((room) => filesUnder(join('src', room), /\.(svelte|ts)$/))
	.flatMap((from) => keysShown(readFileSync(from, 'utf8')).map((key) => ({ from, key })));

const testNotes = filesUnder('test', /\.(md|json)$/).map((path) => readFileSync(path, 'utf8'));

describe('citations: each pointer leads to a work, each work is pointed at', () => {
	test('there is something to check', () => {
		expect(known.size, 'no citations').toBeGreaterThan(0);
		expect(docstrings.length, 'no Source: line under src/core').toBeGreaterThan(0);
		expect(rows.length, 'no source in any reference row').toBeGreaterThan(0);
	});

	test('every key in a docstring, a reference row or on a page has its entry', () => {
		const lost = [...docstrings, ...rows, ...shown].filter(({ key }) => !known.has(key));
		expect(lost.map(({ from, key }) => `${from} cites "${key}", which has no entry`)).toEqual([]);
	});

	test('every function that core shows says where it comes from', () => {
		const shownFunctions = exported.filter(({ name }) => publicNames.has(name));
		expect(shownFunctions.length, 'no public function found').toBeGreaterThan(0);
		const silent = shownFunctions.filter(({ comment }) => !/Source:/.test(comment));
		expect(silent.map(({ from, name }) => `${from}: ${name} has no Source: line`)).toEqual([]);
	});

	test('every entry is used: by a row, a docstring, a page or a test’s notes', () => {
		const used = new Set([...docstrings, ...rows, ...shown].map(({ key }) => key));
		const idle = [...known].filter(
			(key) => !used.has(key) && !testNotes.some((text) => new RegExp(`\\b${key}\\b`).test(text))
		);
		expect(idle.map((key) => `${key} is cited nowhere`)).toEqual([]);
	});

	test('the reading of Source lines and pages itself', () => {
		expect(
			keysShown(`<Citation key="a" /> <Citation\n\tkeys={['b', 'c']} of="x" /> cite('d')`)
		).toEqual(['a', 'd', 'b', 'c']);
		expect(keysOf('derived')).toEqual([]);
		expect(keysOf('common practice.')).toEqual([]);
		expect(keysOf('amca2012, p. 473')).toEqual(['amca2012']);
		expect(keysOf('ketchum1978, brandHollister1993')).toEqual([
			'ketchum1978',
			'brandHollister1993'
		]);
		expect(keysOf('nistSp811, appendix B.')).toEqual(['nistSp811']);
		expect(keysOf('derived, from a sphere pressed in (hertz1882, from memory).')).toEqual([
			'hertz1882'
		]);
		expect(sourceLines('/**\n * A.\n * Source: amca2012,\n * li2001\n * Example: x\n */')).toEqual([
			'amca2012, li2001'
		]);
	});
});
