import { cancels } from './cancels/lesson.ts';
import { fair } from './fair/lesson.ts';
import { pressure } from './pressure/lesson.ts';
import { rope } from './rope/lesson.ts';
import type { Lesson } from './types.ts';
import { holding } from './window/lesson.ts';

/** The lessons in the order they are taught. */
export const lessons: readonly Lesson[] = [cancels, rope, pressure, holding, fair];

/** The lesson of that key, if there is one. */
export const lessonOf = (key: string) => lessons.find((lesson) => lesson.key === key);
