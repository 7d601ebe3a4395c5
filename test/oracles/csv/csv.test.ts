import { readFileSync, readdirSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { decodeBytes } from '#storage/codecs/csv/decode-bytes.ts';
import { parseRows } from '#storage/codecs/csv/parse-rows.ts';
import { fnv1a64 } from '#storage/codecs/csv/row-ids.ts';
import { conversionFrom } from '#storage/codecs/csv/units.ts';
import { within } from '#test/within.ts';
import cases from './cases.json' with { type: 'json' };

const contact = 'Contact Phone Number';
const corpus = 'node_modules/csv-spectrum';
const names = readdirSync(`${corpus}/csvs`).map((file) => file.replace(/\.csv$/, ''));

describe('the published corpus csv-spectrum', () => {
	test('is there whole', () => expect(names).toHaveLength(12));

	for (const name of names) {
		test(`${name} parses as its JSON says`, () => {
			const bytes = readFileSync(`${corpus}/csvs/${name}.csv`);
			const { rows, broken } = parseRows(decodeBytes(bytes).text);
			const [header, ...data] = rows;
			const records = data.map((cells) =>
				Object.fromEntries(header!.map((field, i) => [field, cells[i]]))
			);
			const said = JSON.parse(readFileSync(`${corpus}/json/${name}.json`, 'utf8'));
			// See README: this one file’s JSON is a single record, with another number in one cell.
			if (name === 'location_coordinates') {
				expect(records).toEqual([{ ...said, [contact]: records[0]![contact] }]);
				expect(bytes.toString('utf8')).toContain(`\n${records[0]![contact]},`);
			} else expect(records).toEqual(said);
			expect(broken).toEqual([]);
		});
	}
});

describe('RFC 4180, section 2', () => {
	for (const { rule, text, rows } of cases.rfc4180) {
		test(`rule ${rule}`, () => expect(parseRows(text).rows).toEqual(rows));
	}
});

test('FNV-1a gives its published values', () => {
	for (const { text, hash } of cases.fnv1a64) expect(fnv1a64(text)).toBe(hash);
});

test('pounds and newtons convert by their exact definitions', () => {
	within(conversionFrom('mass', 'lb')!(100), 45.359237, { relative: 1e-15 });
	within(conversionFrom('mass', 'N')!(9.80665), 1, { relative: 1e-15 });
});
