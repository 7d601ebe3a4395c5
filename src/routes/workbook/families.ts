import type { Family } from '#core/workbook/statics/family.ts';

/** Each family is fetched on its own: a page needs one. */
const loaders = {
	'level-floor': async () => (await import('#core/workbook/level-floor/level-floor.ts')).levelFloor,
	incline: async () => (await import('#core/workbook/incline/incline.ts')).incline,
	'connected-blocks': async () =>
		(await import('#core/workbook/connected-blocks/connected-blocks.ts')).connectedBlocks,
	ladder: async () => (await import('#core/workbook/ladder/ladder.ts')).ladder,
	tipping: async () => (await import('#core/workbook/tipping/tipping.ts')).tipping,
	wedge: async () => (await import('#core/workbook/wedge/wedge.ts')).wedge,
	belt: async () => (await import('#core/workbook/belt/belt.ts')).belt,
	pressing: async () => (await import('#core/workbook/pressing/pressing.ts')).pressing,
	hang: async () => (await import('#core/workbook/hang/hang.ts')).hang
} satisfies Record<string, () => Promise<Family>>;

export type FamilyId = keyof typeof loaders;

/** The families in the workbook's order, with a line on what they hold. */
export const familyList: { id: FamilyId; title: string; holds: string }[] = [
	{
		id: 'level-floor',
		title: 'Block on a level floor',
		holds: 'push or pull at an angle, coasting, carried along'
	},
	{
		id: 'incline',
		title: 'Block on an incline',
		holds: 'hold, push up, slide down, tilt test, vehicles'
	},
	{
		id: 'connected-blocks',
		title: 'Stacked and connected blocks',
		holds: 'stacks, rows, ropes over pulleys'
	},
	{ id: 'ladder', title: 'Ladder or leaning bar', holds: 'smooth or rough wall, plank, strut' },
	{ id: 'tipping', title: 'Tipping or slipping', holds: 'which comes first, on boards and curves' },
	{ id: 'wedge', title: 'Wedge', holds: 'raising, splitting, a bracket that grips' },
	{
		id: 'belt',
		title: 'Belt or rope on a drum',
		holds: 'rope round a bar, belt drive, band brake'
	},
	{
		id: 'pressing',
		title: 'Pressing, gripping and climbing moves',
		holds: 'walls, stemming, layback, chimney'
	},
	{ id: 'hang', title: 'The hang', holds: 'one hand on a sloping hold, five friction laws' }
];

export function isFamilyId(id: string): id is FamilyId {
	return Object.hasOwn(loaders, id);
}

/** Fetches a family; a RangeError that names the ids there are. */
export function loadFamily(id: string): Promise<Family> {
	if (!isFamilyId(id))
		throw new RangeError(`family "${id}" is none of ${Object.keys(loaders).join(', ')}`);
	return loaders[id]();
}
