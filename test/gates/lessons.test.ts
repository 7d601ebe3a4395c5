import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { parse } from 'svelte/compiler';
import ts from 'typescript';
import { describe, expect, test } from 'vitest';
import { lessons } from '#lessons/index.ts';
import { plain } from '#lessons/say.ts';
import type { LessonText, Says } from '#lessons/types.ts';
import { misconceptions } from '#reference/misconceptions.ts';
import { lessonHangs } from '#state/lesson/lesson-setup.ts';

// A number in a lesson's words is computed by core, read from reference, or given in seeds/lessons.ts.
// So the lessons' own source holds none: no digit in any string, template or markup text outside TeX,
// and no number but small whole ones that count or halve.

/** The largest number a lesson's code may hold; and the factors of percent and of milli. */
const largestCount = 10;
const unitFactors = new Set([100, 1000]);

function filesUnder(folder: string): string[] {
	return readdirSync(folder).flatMap((name) => {
		const path = join(folder, name);
		return statSync(path).isDirectory() ? filesUnder(path) : [path];
	});
}

/** What a piece of TypeScript types in: texts with digits and numbers that may be results. */
function typedIn(code: string): string[] {
	const source = ts.createSourceFile('x.ts', code, ts.ScriptTarget.Latest, true);
	const found: string[] = [];
	const isTex = (node: ts.Node): boolean => {
		if (ts.isPropertyAssignment(node)) return node.name.getText(source) === 'tex';
		return node.parent !== undefined && !ts.isBlock(node) && isTex(node.parent);
	};
	const visit = (node: ts.Node): void => {
		if (ts.isImportDeclaration(node) || ts.isExportDeclaration(node)) return;
		const text =
			ts.isStringLiteral(node) ||
			ts.isNoSubstitutionTemplateLiteral(node) ||
			ts.isTemplateHead(node) ||
			ts.isTemplateMiddleOrTemplateTail(node)
				? node.text
				: undefined;
		if (text !== undefined && /\d/.test(text) && !isTex(node)) found.push(text);
		if (ts.isNumericLiteral(node)) {
			const value = Number(node.text);
			const counts = Number.isInteger(value) && value <= largestCount;
			if (!counts && !unitFactors.has(value)) found.push(node.text);
		}
		ts.forEachChild(node, visit);
	};
	visit(source);
	return found;
}

/** The same for a component: its script, and the words of its markup and spoken attributes. */
function typedInComponent(code: string): string[] {
	const root = parse(code, { modern: true });
	const script = root.instance
		? code.slice(...spanOf(root.instance.content as unknown as { start: number; end: number }))
		: '';
	const found = typedIn(script);
	const visit = (value: unknown): void => {
		if (Array.isArray(value)) return value.forEach(visit);
		if (value === null || typeof value !== 'object') return;
		const node = value as Record<string, unknown>;
		if (node.type === 'Attribute' && !/^(aria-|title$|alt$|label$)/.test(String(node.name))) {
			return;
		}
		if (node.type === 'Text' && /\d/.test(String(node.data))) found.push(String(node.data).trim());
		Object.values(node).forEach(visit);
	};
	visit(root.fragment);
	return found;
}
const spanOf = ({ start, end }: { start: number; end: number }): [number, number] => [start, end];

const files = filesUnder('src/lessons').filter((path) => /\.(ts|svelte)$/.test(path));
/** Every text a lesson says. */
function saidIn(text: LessonText): Says[] {
	return [
		...[text.aim, text.question, text.tempting, text.tryIt.expect],
		...[...text.situation, ...text.reveal, ...text.tryIt.steps, ...text.notes, ...text.unknown],
		...text.options.map(({ says }) => says),
		...text.exercises.flatMap(({ ask, answer }) => [ask, answer]),
		...(text.mark ? [text.mark.says] : [])
	];
}

const written = lessons.flatMap((lesson) =>
	(['kg', 'lb'] as const).map((mass) => ({
		key: `${lesson.key}, ${mass}`,
		lesson,
		text: lesson.write({ ...lessonHangs(lesson.fields), mass })
	}))
);

describe('lessons: no typed-in result, and every pointer leads somewhere', () => {
	test('there is something to check', () => {
		expect(lessons.length).toBe(5);
		expect(files.length).toBeGreaterThan(15);
	});

	test.each(files)('%s types in no number', (path) => {
		const code = readFileSync(path, 'utf8');
		expect(path.endsWith('.svelte') ? typedInComponent(code) : typedIn(code)).toEqual([]);
	});

	test('the rule catches what it should', () => {
		expect(typedIn('const a = say`slips below 60.3 kg`;')).toEqual(['slips below 60.3 kg']);
		expect(typedIn('const edge = 60.3;')).toEqual(['60.3']);
		expect(typedIn('const a = { says: "at 5 degrees" };')).toEqual(['at 5 degrees']);
		expect(typedIn('const a = say`at ${x}, then 12 more ${y}`;')).toEqual([', then 12 more ']);
		expect(typedIn('const f = { tex: String.raw`\\frac{1}{2}` }; a / 2;')).toEqual([]);
		expect(typedInComponent('<p>holds to 91 kg</p>')).toEqual(['holds to 91 kg']);
		expect(typedInComponent('<i aria-label="up to 91 kg" class="h2"></i>')).toEqual([
			'up to 91 kg'
		]);
	});

	test.each(written)('$key: its numbers are finite, and some are computed', ({ text }) => {
		const numbers = saidIn(text)
			.flat()
			.filter((part) => typeof part !== 'string');
		expect(numbers.filter(({ quantity }) => quantity).length).toBeGreaterThan(4);
		for (const { value } of numbers) expect(Number.isFinite(value)).toBe(true);
		for (const says of saidIn(text))
			expect(plain(says)).not.toMatch(/NaN|undefined|Infinity|–\s*$/);
	});

	test.each(written)('$key: right and popular answers are among the options', ({ text }) => {
		const keys = text.options.map(({ key }) => key);
		expect(keys).toContain(text.right);
		expect(keys).toContain(text.popular);
		expect(text.popular).not.toBe(text.right);
	});

	test.each(lessons)('$key: five to eight minutes, and a misconception with a source', (lesson) => {
		expect(lesson.minutes).toBeGreaterThanOrEqual(5);
		expect(lesson.minutes).toBeLessThanOrEqual(8);
		const row = misconceptions.find(({ key }) => key === lesson.misconception);
		expect(row?.source.length).toBeGreaterThan(0);
	});
});
