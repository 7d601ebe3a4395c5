import { describe, expect, test } from 'vitest';
import { compareLoads } from '#state/room/analysis.ts';
import { RoomState } from '#state/room/room.svelte.ts';
import { readRoom, writeRoom, type RoomPerson } from '#storage/codecs/room.ts';
import { readVotes, writeVotes } from '#storage/codecs/votes.ts';
import { chanceWords, countWords } from '../../../../src/routes/clinic/room/words.ts';

const start = {
	version: 'hang',
	seed: 1,
	shares: [0.8, 1, 1.1],
	blocks: [0.5, 1, 2],
	tilt: 25,
	people: 4
} as const;
const makeState = () =>
	new RoomState({ ...start, shares: [...start.shares], blocks: [...start.blocks] });

describe('who may do what', () => {
	test('nobody hangs before being marked adult and having both masses', () => {
		const state = makeState();
		const blocks = () => state.goes[0]!.map(({ block }) => block);
		expect(blocks()).toEqual(['under-age', 'under-age', 'under-age']);
		state.setPerson(0, { body: 70, held: 70 });
		expect(blocks()).toEqual(['under-age', 'under-age', 'under-age']);
		state.setPerson(0, { adult: true });
		expect(blocks()).toEqual([undefined, undefined, undefined]);
		state.setPerson(0, { held: null });
		expect(blocks()).toEqual(['unknown', 'unknown', 'unknown']);
	});

	test('the table version needs neither', () => {
		const state = makeState();
		state.change({ version: 'table' });
		expect(state.goes[0]!.every(({ block }) => block === undefined)).toBe(true);
		expect(state.goes[0]!.map(({ load }) => load).sort()).toEqual([0.5, 1, 2]);
	});

	test('pain at the first go ends the person’s session', () => {
		const state = makeState();
		state.setPerson(1, { adult: true, body: 70, held: 75 });
		const [first] = state.goes[1]!;
		state.setOutcome(1, first!.at, 'pain');
		expect(state.goes[1]!.slice(1).map(({ block }) => block)).toEqual(['earlier', 'earlier']);
	});

	test('storage that is not there is said, and nothing is lost', () => {
		const state = makeState();
		state.setPerson(0, { body: 61 });
		expect(state.kept).toBe(false);
		expect(state.room.people[0]!.body).toBe(61);
	});
});

describe('comparing loads', () => {
	const person = (...outcomes: RoomPerson['outcomes']) => ({ outcomes });
	const people = [
		...Array.from({ length: 7 }, () => person('slipped', 'held', 'held')),
		person('held', 'held', 'slipped'),
		person('held', null, 'held'),
		person('opened', 'held', 'held'),
		person(null, null, null)
	];

	test('only whole pairs of holding or slipping count; the rest is said to be left aside', () => {
		const [main] = compareLoads(people);
		expect(main).toMatchObject({
			first: 0,
			second: 2,
			people: 9,
			leftAside: 1,
			table: { both: 1, onlyFirst: 1, onlySecond: 7, neither: 0 },
			exact: 0.0703125
		});
		expect(countWords(main!, 'hang')).toBe(
			'9 people did both light and heavy. 1 did the same at both loads; 7 held only heavy, 1 only light. 1 more is left aside: a go is missing, or ended in something other than holding or slipping.'
		);
		expect(chanceWords(main!)).toMatch(/7 % of rooms\. That is uncommon, not rare/);
	});

	test('the words never pass from luck to cause', () => {
		const words = (more: number, fewer: number) =>
			chanceWords(
				compareLoads([
					...Array.from({ length: more }, () => person('slipped', null, 'held')),
					...Array.from({ length: fewer }, () => person('held', null, 'slipped'))
				])[0]!
			);
		expect(words(0, 0)).toMatch(/^Nobody did differently/);
		expect(words(3, 0)).toMatch(/no split could be rarer than 25 %: can’t tell yet/);
		expect(words(6, 4)).toMatch(/can’t tell\.$/);
		expect(words(12, 1)).toMatch(/heavy was the easier load\. It does not say why\.$/);
		expect(words(1, 12)).toMatch(/light was the easier load/);
		expect([words(0, 0), words(3, 0), words(12, 1)].join(' ')).not.toMatch(
			/p-value|significant|likelihood|posterior/i
		);
	});
});

describe('what is kept', () => {
	test('a room and votes come back as they were', () => {
		const { room } = makeState();
		expect(readRoom(writeRoom(room))).toEqual(room);
		const votes = { counts: { slips: 4 }, mark: 60, sketch: [1, 0.9] };
		expect(readVotes(writeVotes(votes))).toEqual(votes);
	});

	test.each(['', '{', 'null', '{"counts":{"a":-1}}', '{"counts":{"a":1.5}}', '[]'])(
		'damaged votes %s are none',
		(text) => expect(readVotes(text)).toBeUndefined()
	);

	test('a damaged room is none', () => {
		const { room } = makeState();
		for (const bad of [
			{ ...room, people: [] },
			{ ...room, version: 'float' },
			{ ...room, shares: [0, 1, 2] },
			{ ...room, people: [{ ...room.people[0], outcomes: ['flew', null, null] }] }
		]) {
			expect(readRoom(JSON.stringify(bad))).toBeUndefined();
		}
	});
});
