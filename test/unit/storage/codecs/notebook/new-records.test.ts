import { expect, test } from 'vitest';
import { capTrials } from '#storage/codecs/notebook/cap-trials.ts';
import * as make from '#storage/codecs/notebook/new-records.ts';
import { validate } from '#storage/codecs/notebook/validate.ts';
import { exportCsv } from '#storage/codecs/csv/export-csv.ts';
import { exportJson } from '#storage/codecs/notebook/json.ts';
import { exportFile } from '#storage/import/export-file.ts';
import { randomId } from '#storage/stores/random-id.ts';
import { large } from '../../stores/sample.ts';

let count = 0;
const newId = () => `id-${++count}`;

const trial = make.newTrial(newId, {
	sessionId: 's',
	gripId: 'g',
	order: 1,
	loadKg: 60,
	outcome: 'held'
});

test('new records fit their schemas, and say nothing that was not said', () => {
	const records = {
		people: make.newPerson(newId, { label: 'Kim' }),
		holds: make.newHold(newId, { label: 'Board' }),
		grips: make.newGrip(newId, { label: 'Open' }),
		sessions: make.newSession(newId, { personId: 'p', holdId: 'h', day: '2026-03-09' }),
		trials: trial
	};
	for (const [kind, record] of Object.entries(records)) {
		expect(validate(kind as keyof typeof records, record)).toEqual({ record, unknown: [] });
	}
	expect(records.people.adult).toBe(false);
});

test('random ids are UUIDs of version 4, with and without the browser’s own way', () => {
	const uuid = /^[0-9a-f]{8}-[0-9a-f]{4}-4[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/;
	expect(randomId()).toMatch(uuid);
	const own = Object.getOwnPropertyDescriptor(crypto, 'randomUUID');
	Object.defineProperty(crypto, 'randomUUID', { value: undefined, configurable: true });
	try {
		expect(randomId()).toMatch(uuid);
		expect(randomId()).not.toBe(randomId());
	} finally {
		if (own) Object.defineProperty(crypto, 'randomUUID', own);
		else Reflect.deleteProperty(crypto, 'randomUUID');
	}
});

test('what the caps see: left-out trials too, pain as pain, sessions by number', () => {
	const hurt = {
		...trial,
		sessionId: 't',
		outcome: 'stopped' as const,
		stopReason: 'pain' as const,
		seconds: 2,
		leftOut: 'x'
	};
	const near = { ...hurt, sessionId: 'elsewhere', stopReason: 'opening' as const };
	expect(capTrials([trial, hurt, near], ['s', 't'])).toEqual([
		{ load: 60, outcome: 'held', session: 0 },
		{ load: 60, outcome: 'stopped', seconds: 2, reason: 'pain', session: 1 },
		{ load: 60, outcome: 'stopped', seconds: 2, reason: 'other' }
	]);
});

test('a file written with pauses is the same file', async () => {
	const notebook = large(700);
	const now = new Date(0);
	const bytes = async (blob: Promise<Blob>) => new Uint8Array(await (await blob).arrayBuffer());
	const csv = await bytes(exportFile(notebook, 'csv', now));
	expect(new TextDecoder('utf-8', { ignoreBOM: true }).decode(csv)).toBe(exportCsv(notebook));
	const json = await bytes(exportFile(notebook, 'json', now));
	expect(new TextDecoder().decode(json)).toBe(exportJson(notebook, now));
});
