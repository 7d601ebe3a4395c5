import { sessionGivens } from '#seeds/lessons.ts';
import { lessonList } from './list.ts';

/** One stretch of the session: what, for how long, and where it stands. */
export type Stretch = { what: string; minutes: number; lesson?: string; path?: 'room' };

/** A session of all lessons and the room's experiment, in order. */
export const session: readonly Stretch[] = [
	{
		what: 'Welcome, and the one question: might a heavier hang be easier?',
		minutes: sessionGivens.opening
	},
	...lessonList.map(({ title, minutes, key }) => ({ what: title, minutes, lesson: key })),
	{
		what: 'The room’s experiment, hanging or at tables',
		minutes: sessionGivens.experiment,
		path: 'room'
	},
	{ what: 'What was found, what was not; handouts', minutes: sessionGivens.close }
];

export const sessionMinutes = session.reduce((sum, { minutes }) => sum + minutes, 0);

/** What has to be on the table before the room fills. */
export const kit: readonly { what: string; why: string }[] = [
	{ what: 'this page, opened once with a network', why: 'afterwards it needs none' },
	{
		what: 'a projector, and a clicker if there is one',
		why: 'page up and page down turn the screens'
	},
	{ what: 'one smooth board for each table, about an arm long', why: 'tilt tests' },
	{ what: 'a block with a flat base, and two loads for its top', why: 'light, plain and heavy' },
	{ what: 'phones or folding rules', why: 'the angle of the board' },
	{ what: 'string and a nut', why: 'a plumb line beside the rope' },
	{ what: 'a clean tile, a kitchen scale, a dry cloth', why: 'a fingertip’s friction' },
	{ what: 'an ink pad and squared paper', why: 'prints of the patch' },
	{ what: 'coins', why: 'what luck alone does' },
	{ what: 'printed handouts and the blank session sheet', why: 'in case the projector fails' },
	{
		what: 'for hanging: a hold, a backed-up anchor and a rope, a scale, plates',
		why: 'put there and looked over by a competent person'
	}
];
