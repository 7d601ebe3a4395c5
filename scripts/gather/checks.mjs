// What the product is compared with: the outside checks, as their notes and cases have them.
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

const folder = 'test/oracles';

/** A case is a thing with a number of its own; a list or a named group of them counts its members. */
export function countCases(value) {
	if (Array.isArray(value)) {
		return value.every((one) => typeof one !== 'object' || one === null) ? 1 : value.length;
	}
	if (typeof value !== 'object' || value === null) return 0;
	const inner = Object.entries(value).filter(([name]) => !/^(_|sources?$)/.test(name));
	if (inner.some(([, one]) => typeof one !== 'object' || one === null)) return 1;
	return inner.reduce((sum, [, one]) => sum + countCases(one), 0);
}

function plain(text) {
	return text.replace(/[`*]/g, '').replace(/\s+/g, ' ').trim();
}

export function checksOf(citations) {
	return readdirSync(folder)
		.sort()
		.filter((topic) => existsSync(join(folder, topic, 'README.md')))
		.map((topic) => {
			const notes = readFileSync(join(folder, topic, 'README.md'), 'utf8');
			const [, title = topic] = /^# (.+)$/m.exec(notes) ?? [];
			const paragraphs = notes.split(/\n\s*\n/).filter((part) => !/^\s*[#|]/.test(part));
			const cases = join(folder, topic, 'cases.json');
			return {
				topic,
				title: plain(title),
				// A sentence that leads to the table in the notes would lead nowhere here.
				notes: plain(paragraphs[0] ?? '')
					.replace(/[^.]*:$/, '')
					.trim(),
				works: Object.keys(citations).filter((key) => new RegExp(`\\b${key}\\b`).test(notes)),
				cases: existsSync(cases) ? countCases(JSON.parse(readFileSync(cases, 'utf8'))) : 0
			};
		});
}
