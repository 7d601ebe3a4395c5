import type { MassUnit } from '#core/units/mass-text.ts';
import type { Bench, Lesson } from '#lessons/types.ts';
import { VoteState } from '#state/lesson/votes.svelte.ts';
import { lessonHangs, lessonSetup, lessonState } from '#state/lesson/lesson-setup.ts';
import { preferences } from '#state/preferences.svelte.ts';
import { computeResults, type Results } from '#state/setup/results.ts';
import type { SetupState } from '#state/setup/setup.svelte.ts';
import { axes } from '../../explore/set-up/axes.ts';

/** One lesson on a page: its words, its set-up as the sliders have left it, and the room's votes. */
export class LessonView {
	readonly setup: SetupState;
	readonly votes: VoteState;
	readonly lesson: Lesson;

	constructor(lesson: Lesson) {
		this.lesson = lesson;
		this.setup = lessonState(lesson.fields);
		this.votes = new VoteState(lesson.key);
	}

	/** What is said is about the lesson's own set-up, wherever the sliders are. */
	readonly text = $derived.by(() =>
		this.lesson.write({ ...lessonHangs(this.lesson.fields), mass: preferences.massUnit })
	);

	/** The set-up while the question is asked. */
	readonly asked = $derived.by(() =>
		benchOf(
			computeResults(lessonSetup({ ...this.lesson.fields, ...this.lesson.before })),
			preferences.massUnit
		)
	);

	readonly bench = $derived.by(() => benchOf(this.setup.results, preferences.massUnit));
}

/** Results as a lesson's pictures take them. */
export function benchOf(results: Results, mass: MassUnit): Bench {
	const { perUnit, ...axis } = axes[results.setup.axis];
	const { hang, load, contact, person, netMass, range, window, region } = results;
	return {
		...{ hang, load, contact, person, netMass, range, window, region, mass },
		across: {
			value: results.across.value,
			view: {
				...axis,
				toScreen: (value) => value * perUnit,
				fromScreen: (value) => value / perUnit
			}
		}
	};
}
