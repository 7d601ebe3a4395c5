import { formulas } from '#reference/made/formulas.ts';
import type { Group } from '../entries.ts';

/** Headings of core's folders, in the order of the computation. */
const headings: Record<string, string> = {
	units: 'Units and constants',
	mechanics: 'Forces of the hang',
	friction: 'Friction laws',
	strength: 'Finger strength and time',
	region: 'Windows and regions',
	mechanisms: 'Reasons why load may matter',
	measure: 'Measuring aids',
	statistics: 'Statistics',
	trials: 'Trials',
	workbook: 'Workbook',
	scenario: 'Scenarios',
	search: 'Searching for set-ups'
};

const folderOf = (file: string) => file.split('/')[0]!;
const folders = [
	...new Set([...Object.keys(headings), ...formulas.map(({ file }) => folderOf(file))])
];

/** Every formula and constant of the computation, by the part that it belongs to. */
export const formulaGroups: readonly Group[] = folders
	.map((folder) => ({
		heading: headings[folder] ?? folder,
		entries: formulas
			.filter(({ file }) => folderOf(file) === folder)
			.map(({ key, name, file, says, words, usedOn, status, source }) => ({
				id: `formula-${key}`,
				what: name,
				value: '',
				details: [
					says.replace(/\.$/, ''),
					`Source: ${words}`,
					usedOn.length > 0 ? `Used on: ${usedOn.join(', ')}` : 'No page uses it by itself',
					`In the code: core/${file}`
				],
				status,
				source
			}))
	}))
	.filter(({ entries }) => entries.length > 0);
