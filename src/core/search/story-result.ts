import { foundSetup } from './found-setup.ts';
import { trendOf } from './law-of.ts';
import { movementsOf } from './movements.ts';
import { usualDeformation } from './ranges.ts';
import { fewFinds, type StoryRun } from './story-run.ts';
import { shownFits } from './thresholds.ts';
import { typicalFit } from './typical-fit.ts';
import type { StoryResult } from './types.ts';
import { noteText, reasonText, type NoteKey, type ReasonKey } from './words.ts';

/**
 * Says what a finished run has found: a fitting set-up, or what stands in the way.
 * @param run a run of one law with one addition
 * @returns 'can' with set-ups and how finely they are tuned, or 'cannot' with the go missed most often
 * and the reason; the share of fitting set-ups is no probability
 * Valid for: the ranges of the request. 'cannot' is proven only where `proven` says so.
 * Source: derived.
 * Example: see practiceReport: constant alone is 'cannot' with ratioNotRising.
 */
export function storyResult(run: StoryRun): StoryResult {
	const { plan, drawn, solved, fitting, top, refined, conflict } = run;
	const { law, addition, parameters } = plan;
	const share = solved > 0 ? fitting / solved : 0;
	const common = { law, addition, drawn, solved, fitting, share };
	const fits = refined ? [...run.kept, refined] : run.kept;
	if (fits.length > 0) {
		const shown = typicalFit(fits, parameters);
		return {
			...common,
			verdict: 'can',
			example: foundSetup(plan, shown.values),
			others: fits
				.filter((fit) => fit !== shown)
				.slice(0, shownFits)
				.map(({ values }) => foundSetup(plan, values)),
			movements: movementsOf(plan, shown.values, run.found),
			notes: notesOf(run).map((key) => ({ key, sentence: noteText[key] }))
		};
	}
	const reason: ReasonKey = conflict ?? (solved === 0 ? 'noSlope' : 'noneFound');
	const closest = top && foundSetup(plan, top.values);
	return {
		...common,
		verdict: 'cannot',
		unmet: mostMissed(run),
		missed: run.missed.map((count) => (solved > 0 ? count / solved : 0)),
		closest: closest && {
			setup: closest,
			unmet: closest.trials.filter(({ met }) => !met).map(({ order }) => order)
		},
		reason,
		sentence: reasonText[reason],
		proven: conflict !== undefined
	};
}

/** The go that most candidates miss; among equals one that was easier, for it tells most. */
function mostMissed({ plan, missed, solved }: StoryRun) {
	if (solved === 0) return undefined;
	const most = Math.max(...missed);
	const goes = plan.trials.filter((_, index) => missed[index] === most);
	const go = goes.find(({ observation }) => observation.outcome.kind === 'easier') ?? goes[0]!;
	return { order: go.observation.order, share: most / solved };
}

function notesOf({ plan, found, fitting }: StoryRun): NoteKey[] {
	const notes: NoteKey[] = ['notProbable'];
	const { law, addition, parameters } = plan;
	if (!(trendOf[law] <= 0)) notes.push('risingUnpublished');
	const part = parameters.findIndex(({ key }) => key === 'deformation');
	if (part >= 0 && found[part]!.from > usualDeformation) notes.push('deformationTooLarge');
	if (addition === 'push') notes.push('pushFromOutside');
	if (addition === 'drift') notes.push('driftInOrder');
	if (fitting === 0) notes.push('foundByRefining');
	else if (fitting < fewFinds) notes.push('fewFound');
	return notes;
}
