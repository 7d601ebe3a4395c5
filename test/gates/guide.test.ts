import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs';
import { extname, join } from 'node:path';
import { describe, expect, test } from 'vitest';

const guide = readFileSync('DEVELOPERS.md', 'utf8');
const readme = readFileSync('README.md', 'utf8');
const { scripts } = JSON.parse(readFileSync('package.json', 'utf8')) as {
	scripts: Record<string, string>;
};
/** What stands in backquotes in the guide. */
const quoted = [...guide.matchAll(/`([^`\n]+)`/g)].map((match) => match[1]!);

describe('guide: what DEVELOPERS.md names exists', () => {
	test('there is something to check', () => {
		expect(quoted.length).toBeGreaterThan(20);
	});

	test('every path', () => {
		const paths = quoted.filter((text) =>
			/^(src|test|seeds|static|scripts|bench|\.ci)\/[\w\-./]*$/.test(text)
		);
		expect(paths.length).toBeGreaterThan(10);
		expect(paths.filter((path) => !existsSync(path))).toEqual([]);
	});

	test('every command, in the README too', () => {
		const commands = [...`${guide}\n${readme}`.matchAll(/npm (?:run )?([\w:]+)/g)]
			.map((match) => match[1]!)
			.filter((name) => !['ci', 'install'].includes(name));
		expect(commands.length).toBeGreaterThan(3);
		expect(commands.filter((name) => !(name in scripts))).toEqual([]);
	});

	test('every room of src/ is described', () => {
		const rooms = readdirSync('src').filter((name) => statSync(join('src', name)).isDirectory());
		expect(rooms.length).toBeGreaterThan(8);
		expect(rooms.filter((room) => !guide.includes(`src/${room}/`))).toEqual([]);
	});

	test('no source file is past 300 lines', () => {
		const files = readdirSync('src', { recursive: true, encoding: 'utf8' })
			.map((path) => join('src', path))
			.filter((path) => ['.ts', '.svelte'].includes(extname(path)));
		expect(files.length).toBeGreaterThan(20);
		const long = files.filter((path) => readFileSync(path, 'utf8').split('\n').length > 301);
		expect(long).toEqual([]);
	});
});
