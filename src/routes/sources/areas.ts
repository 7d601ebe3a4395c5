import { uses } from '#reference/made/uses.ts';
import { entriesOf, type Group } from './entries.ts';

/** Headings in the order of the page; a table without one is headed by its file's name. */
const headings: Record<string, string> = {
	'laws.ts': 'Friction laws and their numbers',
	'surface-presets.ts': 'Surfaces to start from',
	'coefficients.ts': 'Measured friction of skin',
	'skin-friction-trends.ts': 'Skin friction against load',
	'contact-facts.ts': 'The pad’s contact, moisture and time',
	'powder.ts': 'Powder, and rock against rock',
	'mechanisms.ts': 'Why load may help, hurt or cancel',
	'tests-against-mechanisms.ts': 'Tests that tell the reasons apart',
	'tabulated.ts': 'Coefficients that tables print',
	'friction-standards.ts': 'Standards for measuring friction',
	'grips.ts': 'Grips',
	'joint-angles.ts': 'Joint angles',
	'finger-lengths.ts': 'Bone lengths of the fingers',
	'moment-arms.ts': 'Tendon arms',
	'sharing.ts': 'How fingers share a load',
	'strength.ts': 'Published finger strength',
	'published-ratios.ts': 'Published finger loads',
	'endurance.ts': 'How long strength lasts',
	'pulleys.ts': 'Pulleys and carabiners',
	'reliability.ts': 'How well tests repeat, and what a fair session needs',
	'anthropometry.ts': 'Sizes of hands and bodies',
	'body-scaling.ts': 'Size, strength and big hands',
	'safety.ts': 'The numbers behind the cautions',
	'misconceptions.ts': 'Ideas that mislead',
	'statistics-sources.ts': 'What the trials’ method takes from where',
	'textbook-sources.ts': 'Where the textbook problems come from'
};

// Parts of a table are shown in their table; the works and what is gathered have lists of their own.
const modules = import.meta.glob<Record<string, unknown>>(
	['/src/reference/*.ts', '!/src/reference/{citations,types,read,published-problems}.ts'],
	{ eager: true }
);

/** Every table of facts: its heading, the pages that use it, and its entries. */
export const areas: readonly (Group & { file: string })[] = Object.entries(modules)
	.map(([path, { cautions: _shownInFull, ...exports }]) => {
		const file = path.slice('/src/reference/'.length);
		return {
			file,
			heading: headings[file] ?? file.replace(/\.ts$/, '').replaceAll('-', ' '),
			used: usedOn(pagesOf(file)),
			entries: entriesOf(exports)
		};
	})
	.filter(({ entries }) => entries.length > 0)
	.sort((a, b) => order(a.file) - order(b.file));

function order(file: string): number {
	const at = Object.keys(headings).indexOf(file);
	return at < 0 ? Infinity : at;
}

/** Pages that use a table, whole or by one of its parts. */
function pagesOf(file: string): string[] {
	const parts = file.replace(/\.ts$/, '/');
	const tables = Object.keys(uses).filter((name) => name === file || name.startsWith(parts));
	return [...new Set(tables.flatMap((name) => uses[name] ?? []))];
}

function usedOn(pages: readonly string[]): string {
	if (pages.length === 0) return 'Kept as evidence: no page computes with it.';
	return `Used on: ${pages.join(', ')}.`;
}
