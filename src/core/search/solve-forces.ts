import type { Plan } from './plan.ts';
import { thresholds } from './thresholds.ts';

/**
 * Solves each grip's reference force from what was seen, instead of drawing it.
 * The strength margin is proportional to the force: the goes that held give its least value
 * (margin 1), the goes that opened the fingers its largest (margin 0.98); between the two the
 * middle in the sense of ratios is taken. Where nothing opened it is a tenth stronger than the
 * largest slip margin of the goes that held asks for, so that strength explains nothing there.
 * @param plan the law with its addition
 * @param values the candidate's numbers; the forces are written into it, N per hand
 * @param margins slip margins, and strength margins for each newton of reference force
 * Valid for: one strength a grip for the whole session.
 * Source: derived.
 * Example: held at 1.12 and opened at 1.18 of body mass leave 5 percent for the force.
 */
export function solveForces(
	plan: Plan,
	values: number[],
	{ slip, strength }: { slip: readonly number[]; strength: readonly number[] }
): void {
	plan.request.grips.forEach(({ referenceForce }, grip) => {
		let least = referenceForce.from;
		let largest = referenceForce.to;
		let spare = least;
		let opened = false;
		plan.trials.forEach((trial, index) => {
			const perNewton = strength[index]!;
			if (trial.grip !== grip || perNewton === Infinity) return;
			const { kind } = trial.observation.outcome;
			if (kind === 'opened') {
				opened = true;
				largest = Math.min(largest, thresholds.openedBelow / perNewton);
			} else if (kind !== 'slipped') {
				least = Math.max(least, thresholds.heldFrom / perNewton);
				spare = Math.max(spare, least, (1.1 * slip[index]!) / perNewton);
			}
		});
		values[plan.forcesAt + grip] = opened
			? Math.sqrt(least * largest)
			: Math.min(largest, Number.isFinite(spare) ? spare : largest);
	});
}
