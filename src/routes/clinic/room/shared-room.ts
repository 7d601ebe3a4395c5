import { roomGivens } from '#seeds/lessons.ts';
import { RoomState } from '#state/room/room.svelte.ts';

/** The room's experiment as it starts; what this device keeps is read once the page runs. */
export const makeRoom = () =>
	new RoomState({
		version: 'hang',
		seed: roomGivens.seed,
		shares: [...roomGivens.shares],
		blocks: [...roomGivens.blocks],
		tilt: roomGivens.tilt,
		people: roomGivens.people
	});
