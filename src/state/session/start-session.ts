import type { Grip, Hold, Person, Session } from '#storage/codecs/notebook/records.ts';
import { newGrip, newHold, newPerson, newSession } from '#storage/codecs/notebook/new-records.ts';
import { put } from '#storage/stores/store.ts';
import type { Change } from '#storage/stores/store.ts';

/** One of what is there, or a new one with what is said of it. */
export type Picked<T extends { label: string }> = { id: string } | (Pick<T, 'label'> & Partial<T>);

/** A session's parts, each picked or new. */
export type Start = {
	person: Picked<Person>;
	hold: Picked<Hold>;
	grip: Picked<Grip>;
	session: Omit<Partial<Session>, 'personId' | 'holdId' | 'day' | 'id'> & { day: string };
};

const isNew = <T extends { label: string }>(
	pick: Picked<T>
): pick is Pick<T, 'label'> & Partial<T> => 'label' in pick;

/** The records that begin a session: one change, so that one undo takes it all back. */
export function startSession(
	start: Start,
	newId: () => string
): { changes: Change[]; sessionId: string; gripId: string } {
	const changes: Change[] = [];
	const person = isNew<Person>(start.person) ? newPerson(newId, start.person) : null;
	const hold = isNew<Hold>(start.hold) ? newHold(newId, start.hold) : null;
	const grip = isNew<Grip>(start.grip) ? newGrip(newId, start.grip) : null;
	if (person) changes.push(put('people', person));
	if (hold) changes.push(put('holds', hold));
	if (grip) changes.push(put('grips', grip));
	const session = newSession(newId, {
		...start.session,
		personId: person?.id ?? (start.person as { id: string }).id,
		holdId: hold?.id ?? (start.hold as { id: string }).id
	});
	changes.push(put('sessions', session));
	return {
		changes,
		sessionId: session.id,
		gripId: grip?.id ?? (start.grip as { id: string }).id
	};
}
