import { balancedOrders } from '#core/statistics/paired/balanced-orders.ts';
import { roomLoads, stillAllowed, type RoomOutcome } from '#core/trials/room/room-loads.ts';
import {
	mostPeople,
	readRoom,
	writeRoom,
	type Room,
	type RoomPerson
} from '#storage/codecs/room.ts';
import { forget, keep, readKept } from '#storage/stores/kept-text.ts';
import { compareLoads } from './analysis.ts';

const name = 'room';

/** Why a go is not to be done. */
export type Block = 'under-age' | 'unknown' | 'cap' | 'earlier' | undefined;

/** One go of one person: which load, in kg where it is known, and whether it may be done. */
export type Go = { at: 0 | 1 | 2; load: number | undefined; lowered: boolean; block: Block };

const nobody = (): RoomPerson => ({
	adult: false,
	body: null,
	held: null,
	outcomes: [null, null, null]
});

/** The room's experiment: who does what in which order, and how it ended. Kept on this device. */
export class RoomState {
	room: Room = $state.raw()!;
	kept = $state(true);
	readonly #start: Room;

	constructor(start: Omit<Room, 'people'> & { people: number }) {
		const { people, ...rest } = start;
		this.#start = { ...rest, people: Array.from({ length: people }, nobody) };
		this.room = this.#start;
	}

	readonly orders = $derived.by(() => balancedOrders(this.room.people.length, 3, this.room.seed));

	/** Each person's goes, in the order they are to be done. */
	readonly goes = $derived.by((): Go[][] =>
		this.room.people.map((person, index) => goesOf(this.room, person, this.orders[index]!))
	);

	readonly comparisons = $derived.by(() => compareLoads(this.room.people));

	/** True once an outcome was entered: changing the plan then would mix two experiments. */
	readonly started = $derived.by(() =>
		this.room.people.some(({ outcomes }) => outcomes.some((outcome) => outcome !== null))
	);

	load(): void {
		this.room = readRoom(readKept(name)) ?? this.#start;
	}

	change(patch: Partial<Omit<Room, 'people'>>): void {
		this.#take({ ...this.room, ...patch });
	}

	/** Sets how many take part; those already there stay as they are. */
	setNumber(number: number): void {
		if (!Number.isInteger(number) || number < 1 || number > mostPeople) return;
		const people = Array.from({ length: number }, (_, at) => this.room.people[at] ?? nobody());
		this.#take({ ...this.room, people });
	}

	setPerson(index: number, patch: Partial<Omit<RoomPerson, 'outcomes'>>): void {
		this.#withPerson(index, (person) => ({ ...person, ...patch }));
	}

	setOutcome(index: number, at: 0 | 1 | 2, outcome: RoomOutcome | null): void {
		this.#withPerson(index, (person) => {
			const outcomes: RoomPerson['outcomes'] = [...person.outcomes];
			outcomes[at] = outcome;
			return { ...person, outcomes };
		});
	}

	/** Forgets outcomes and people, keeps the plan. */
	clear(): void {
		forget(name);
		const people = Array.from({ length: this.room.people.length }, nobody);
		this.room = { ...this.room, people };
	}

	#withPerson(index: number, change: (person: RoomPerson) => RoomPerson): void {
		const people = this.room.people.map((person, at) => (at === index ? change(person) : person));
		this.#take({ ...this.room, people });
	}

	#take(room: Room): void {
		this.room = room;
		this.kept = keep(name, writeRoom(room));
	}
}

function goesOf(room: Room, person: RoomPerson, order: readonly number[]): Go[] {
	const { adult, body, held, outcomes } = person;
	const ats = order as (0 | 1 | 2)[];
	if (room.version === 'table') {
		return ats.map((at) => ({ at, load: room.blocks[at], lowered: false, block: undefined }));
	}
	if (body === null || held === null) {
		const block = adult ? 'unknown' : 'under-age';
		return ats.map((at) => ({ at, load: undefined, lowered: false, block }));
	}
	const loads = roomLoads({ bodyMass: body, heldMass: held, shares: room.shares });
	const done: { load: number; outcome: RoomOutcome }[] = [];
	return ats.map((at) => {
		const { load, allowed, lowered } = loads[at];
		const block = !adult
			? 'under-age'
			: !allowed
				? 'cap'
				: stillAllowed(load, done)
					? undefined
					: 'earlier';
		const outcome = outcomes[at];
		if (outcome) done.push({ load, outcome });
		return { at, load, lowered, block };
	});
}
