// Every function and constant of core that says where it comes from, as its docstring has it.
import { readFileSync } from 'node:fs';
import { filesUnder } from './import-graph.mjs';

const ownWords = /^(derived|common practice)\b/;
const namedYear = /\b[a-z][A-Za-z]*(?:1[89]|20)\d\d[A-Za-z]*\b/g;

function linesOf(comment) {
	return comment
		.replace(/^\/\*\*|\*\/$/g, '')
		.split('\n')
		.map((line) => line.replace(/^\s*\* ?/, '').trim());
}

/** The plain words before the first tag. */
function saysOf(lines) {
	const words = [];
	for (const line of lines) {
		if (/^(@|Source:|Example:|Valid for:|Sign:)/.test(line) || (line === '' && words.length > 0))
			break;
		if (line !== '') words.push(line.replace(/\s*Source:.*$/, ''));
	}
	return words.join(' ').trim();
}

function sourceOf(lines) {
	const at = lines.findIndex((line) => /(^|\s)Source:/.test(line));
	if (at < 0) return undefined;
	let whole = lines[at].replace(/^.*Source:\s*/, '');
	for (const next of lines.slice(at + 1)) {
		if (next === '' || /^(@|[A-Z][a-z]+( [a-z]+)?:)/.test(next)) break;
		whole += ' ' + next;
	}
	return whole.replace(/\.$/, '').trim();
}

function keysOf(source, known) {
	const pieces = source.replace(/\([^)]*\)/g, '').split(/[,;]\s*|\s+and\s+/);
	const words = pieces
		.filter((piece) => !ownWords.test(piece))
		.map((piece) => piece.trim().split(/\s/)[0] ?? '');
	return [...new Set([...words, ...(source.match(namedYear) ?? [])])].filter((key) =>
		known.has(key)
	);
}

function statusOf(source, keys, citations) {
	if (/assum/.test(source)) return 'assumed';
	if (/from memory/.test(source)) return 'memory';
	if (keys.length === 0) return /common practice/.test(source) ? 'common practice' : 'derived';
	if (keys.every((key) => citations[key].how === 'memory')) return 'memory';
	return /derived/.test(source) ? 'derived' : 'seen';
}

export function formulasOf(citations, uses) {
	const known = new Set(Object.keys(citations));
	return filesUnder('src/core', /\.ts$/).flatMap((path) => {
		const text = readFileSync(path, 'utf8');
		const pattern = /(\/\*\*(?:(?!\*\/)[\s\S])*\*\/)\s*\nexport (?:function|const) (\w+)/g;
		return [...text.matchAll(pattern)].flatMap(([, comment, name]) => {
			const lines = linesOf(comment);
			const words = sourceOf(lines);
			if (words === undefined) return [];
			const source = keysOf(words, known);
			return [
				{
					// A name may stand in two files of one folder.
					key: `${path.slice('src/core/'.length, -'.ts'.length).replaceAll('/', '-')}-${name}`,
					name,
					file: path.slice('src/core/'.length),
					says: saysOf(lines),
					words,
					source,
					status: statusOf(words, source, citations),
					usedOn: uses.get(path) ?? []
				}
			];
		});
	});
}
