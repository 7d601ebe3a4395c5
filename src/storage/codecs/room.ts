import * as v from 'valibot';
import type { RoomOutcome } from '#core/trials/room/room-loads.ts';

/** One person of the room: a number, never a name. */
export type RoomPerson = {
	adult: boolean;
	/** Body mass and heaviest load held in this grip, kg; null until known. */
	body: number | null;
	held: number | null;
	/** How light, plain and heavy ended. */
	outcomes: [RoomOutcome | null, RoomOutcome | null, RoomOutcome | null];
};

export type Room = {
	/** Hanging, or a block on a tilting board. */
	version: 'hang' | 'table';
	seed: number;
	shares: [number, number, number];
	blocks: [number, number, number];
	/** Degrees at which the board stands. */
	tilt: number;
	people: RoomPerson[];
};

export const mostPeople = 30;

const outcome = v.picklist(['held', 'slipped', 'opened', 'stopped', 'pain']);
const mass = v.pipe(v.number(), v.minValue(1), v.maxValue(400));
const positive = v.pipe(v.number(), v.minValue(0.01), v.maxValue(100));
const person = v.object({
	adult: v.boolean(),
	body: v.nullable(mass),
	held: v.nullable(mass),
	outcomes: v.tuple([v.nullable(outcome), v.nullable(outcome), v.nullable(outcome)])
});
const room = v.object({
	version: v.picklist(['hang', 'table']),
	seed: v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(999_999)),
	shares: v.tuple([positive, positive, positive]),
	blocks: v.tuple([positive, positive, positive]),
	tilt: v.pipe(v.number(), v.minValue(0), v.maxValue(89)),
	people: v.pipe(v.array(person), v.minLength(1), v.maxLength(mostPeople))
});

/** Reads a kept room; a damaged one is as good as none. */
export function readRoom(text: string | undefined): Room | undefined {
	if (text === undefined) return undefined;
	try {
		return v.parse(room, JSON.parse(text));
	} catch {
		return undefined;
	}
}

export const writeRoom = (value: Room): string => JSON.stringify(value);
