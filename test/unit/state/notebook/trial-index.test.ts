import { describe, expect, test } from 'vitest';
import { newTrial } from '#storage/codecs/notebook/new-records.ts';
import type { Trial } from '#storage/codecs/notebook/records.ts';
import { TrialIndex } from '../../../../src/state/notebook/trial-index.ts';

const trial = (id: string, order: number, sessionId = 's'): Trial =>
	newTrial(() => id, { sessionId, gripId: 'g', order, loadKg: 50, outcome: 'held' });
const ids = (trials: readonly Trial[]) => trials.map(({ id }) => id).join('');

describe('trials by session', () => {
	test('stand in the order of their numbers, whatever the order they came in', () => {
		const index = new TrialIndex();
		index.replaceAll([trial('c', 3), trial('a', -1), trial('x', 1, 'other'), trial('b', 2)]);
		expect(ids(index.ofSession('s'))).toBe('abc');
		index.set('d', trial('d', 2.5));
		expect(ids(index.ofSession('s'))).toBe('abdc');
		expect(index.size).toBe(5);
	});

	test('a changed number or session moves the trial; nothing is left behind', () => {
		const index = new TrialIndex();
		index.replaceAll([trial('a', 1), trial('b', 2)]);
		index.set('a', trial('a', 3));
		expect(ids(index.ofSession('s'))).toBe('ba');
		index.set('b', trial('b', 1, 'other'));
		expect(ids(index.ofSession('s'))).toBe('a');
		expect(ids(index.ofSession('other'))).toBe('b');
		index.set('a', undefined);
		expect(index.ofSession('s')).toEqual([]);
		expect(index.get('a')).toBeUndefined();
	});

	test('a list once handed out never changes', () => {
		const index = new TrialIndex();
		index.replaceAll([trial('a', 1)]);
		const before = index.ofSession('s');
		index.set('b', trial('b', 2));
		expect(before).toHaveLength(1);
		expect(index.ofSession('s')).toHaveLength(2);
	});
});
