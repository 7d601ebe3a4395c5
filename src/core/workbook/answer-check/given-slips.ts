import type { Values } from '../algebra/evaluate.ts';
import type { Setup } from '../statics/types.ts';

/** Wrong givens: what was done, to which quantity, and the values it leads to. */
export type GivenSlip = { slip: string; words: string; step: string; rank: number; start: Values };

const perDegree = 180 / Math.PI;

/**
 * Slips made with the givens before any formula: angles, g, diameters, two numbers swapped.
 * @param setup the arrangement
 * @param start the givens with what was assumed
 * @param used ids that the way to the answer touches
 * @returns each slip with the givens it amounts to
 * Source: derived
 */
export function givenSlips(setup: Setup, start: Values, used: ReadonlySet<string>): GivenSlip[] {
	const given = setup.quantities.filter(
		(each) => start[each.id] !== undefined && used.has(each.id)
	);
	const slips: GivenSlip[] = [];
	const add = (slip: string, words: string, step: string, rank: number, changed: Values) =>
		slips.push({ slip, words, step, rank, start: { ...start, ...changed } });
	const angles = given.filter((each) => each.unit === 'rad' && start[each.id] !== 0);
	const turned = (ids: string[]) =>
		Object.fromEntries(ids.map((id) => [id, start[id]! * perDegree]));
	const word = 'an angle in degrees was used as if it were in radians';
	if (angles.length > 1)
		add('degrees-as-radians', word, angles[0]!.id, 1, turned(angles.map(({ id }) => id)));
	for (const { id, name } of angles) {
		add('degrees-as-radians', word, id, 1, turned([id]));
		add('angle-from-normal', `the ${name} was measured from the other side (90° minus it)`, id, 1, {
			[id]: Math.PI / 2 - start[id]!
		});
		if (start[id]! !== 0 && setup.quantities.find((each) => each.id === id)!.min < 0)
			add('sign', `the ${name} was taken to the other side`, id, 2, { [id]: -start[id]! });
	}
	if (start.gravity !== undefined && used.has('gravity'))
		for (const g of [10, 9.8, 9.81, 9.80665])
			if (g !== start.gravity)
				add('g-rounded', `g was taken as ${g} m/s²`, 'gravity', 2, { gravity: g });
	for (const { id, name, round } of given) {
		if (round === 'diameter')
			add('diameter-for-radius', `the ${name} was doubled or a radius taken for it`, id, 1, {
				[id]: start[id]! * 2
			});
		if (round === 'radius') {
			add('diameter-for-radius', `the diameter was taken for the ${name}`, id, 1, {
				[id]: start[id]! * 2
			});
			add('radius-for-diameter', `the ${name} was halved once too often`, id, 2, {
				[id]: start[id]! / 2
			});
		}
	}
	given.forEach((a, index) => {
		for (const b of given.slice(index + 1))
			if (a.unit === b.unit && a.id !== 'gravity' && b.id !== 'gravity')
				add('swapped-givens', `the ${a.name} and the ${b.name} were swapped`, a.id, 2, {
					...{ [a.id]: start[b.id]!, [b.id]: start[a.id]! }
				});
	});
	if (start.weight !== undefined && used.has('weight'))
		add('weight-times-g', 'the weight was multiplied by g again', 'weight', 2, {
			weight: start.weight * 9.80665
		});
	return slips;
}
