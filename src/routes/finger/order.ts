import type { Finger } from '#reference/finger-lengths.ts';

/** Which fingers a count stands for, as everywhere on the site: the middle one, then its neighbours. */
export const order: readonly Finger[] = ['middle', 'index', 'ring', 'little'];
