import type { Grip, Hold, Person, Session, Trial } from './records.ts';

/** Gives a mark that no other record bears; the pages pass `randomId`, tests a counter. */
export type NewId = () => string;

/** New records with everything unknown but what is said. */
export const newPerson = (newId: NewId, said: Pick<Person, 'label'> & Partial<Person>): Person => ({
	id: newId(),
	bodyMassKg: null,
	adult: false,
	...said
});

export const newHold = (newId: NewId, said: Pick<Hold, 'label'> & Partial<Hold>): Hold => ({
	id: newId(),
	slopeDegrees: null,
	slopeMethod: '',
	radiusMm: null,
	surface: '',
	condition: '',
	...said
});

export const newGrip = (newId: NewId, said: Pick<Grip, 'label'> & Partial<Grip>): Grip => ({
	id: newId(),
	fingers: 4,
	hands: 2,
	patchMm2: null,
	...said
});

export const newSession = (
	newId: NewId,
	said: Pick<Session, 'personId' | 'holdId' | 'day'> & Partial<Session>
): Session => ({
	id: newId(),
	bodyMassKg: null,
	targetSeconds: null,
	restSeconds: null,
	brushing: '',
	chalk: '',
	skin: '',
	airCelsius: null,
	humidityPercent: null,
	checkLoadKg: null,
	planId: null,
	plannedTrials: null,
	meanRopeTerm: null,
	note: '',
	...said
});

export const newTrial = (
	newId: NewId,
	said: Pick<Trial, 'sessionId' | 'gripId' | 'order' | 'loadKg' | 'outcome'> & Partial<Trial>
): Trial => ({
	id: newId(),
	kind: 'test',
	reached: 'unknown',
	addedKg: null,
	counterweightKg: null,
	ropeDegrees: null,
	ropeSide: null,
	seconds: null,
	stopReason: null,
	brushed: null,
	note: '',
	leftOut: null,
	loggedAt: null,
	...said
});
