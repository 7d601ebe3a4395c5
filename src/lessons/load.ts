import type { ListedLesson } from './list.ts';
import type { Component } from 'svelte';
import type { Lesson, Picture, PictureProps } from './types.ts';

// Each lesson is a file of its own for the browser: a page loads the one it shows.
const loaders: Record<ListedLesson['key'], () => Promise<Lesson>> = {
	cancels: async () => (await import('./cancels/lesson.ts')).cancels,
	rope: async () => (await import('./rope/lesson.ts')).rope,
	pressure: async () => (await import('./pressure/lesson.ts')).pressure,
	window: async () => (await import('./window/lesson.ts')).holding,
	fair: async () => (await import('./fair/lesson.ts')).fair
};

/** The lesson of that key, if there is one. */
export async function loadLesson(key: string): Promise<Lesson | undefined> {
	return Object.hasOwn(loaders, key) ? loaders[key as ListedLesson['key']]() : undefined;
}

// A page that shows one picture loads what draws that one.
const drawers: Record<Picture['kind'], () => Promise<{ default: Component<PictureProps> }>> = {
	forces: () => import('./pictures/Forces.svelte'),
	margin: () => import('./pictures/Margin.svelte'),
	region: () => import('./pictures/Region.svelte'),
	split: () => import('./pictures/Split.svelte')
};

/** The component that draws a picture of that kind. */
export const loadDrawer = async (kind: Picture['kind']) => (await drawers[kind]()).default;
