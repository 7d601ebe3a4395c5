import { practiceReport, usualReferenceForce } from '#core/search/practice-report.ts';
import type { SearchRequest } from '#core/search/types.ts';
import { squareMillimetresToSquareMetres } from '#core/units/area.ts';
import { millimetresToMetres } from '#core/units/length.ts';
import type { Setup } from '#storage/codecs/setup.ts';

/** A grip as it is typed: patch of one finger from and to, mm². */
export type GripLine = {
	id: string;
	name: string;
	fingers: number;
	areaFrom: number;
	areaTo: number;
};

export const outcomeKinds = ['slipped', 'barely', 'held', 'easier', 'opened'] as const;
export type OutcomeKind = (typeof outcomeKinds)[number];

/** A go as it is typed; goes stand in the order in which they were done. */
export type GoLine = {
	id: string;
	grip: string;
	/** Net load as a multiple of body mass. */
	load: number;
	outcome: OutcomeKind;
	/** The id of the go it was easier than. */
	than: string;
};

/** What a person says they saw, and how the search is to draw. */
export type Statement = {
	grips: readonly GripLine[];
	goes: readonly GoLine[];
	seed: number;
	candidates: number;
};

const names: Record<string, string> = {
	halfCrimp: 'Half crimp',
	threeOpen: 'Three fingers open'
};

/** The report from practice, as lines. */
export function exampleStatement(): Statement {
	return {
		grips: practiceReport.grips.map(({ id, fingers, padArea }) => ({
			id,
			name: names[id] ?? id,
			fingers,
			areaFrom: Math.round(padArea.from * 1e6),
			areaTo: Math.round(padArea.to * 1e6)
		})),
		goes: practiceReport.observations.map(({ grip, load, order, outcome }) => ({
			id: `go${order}`,
			grip,
			load,
			outcome: outcome.kind,
			than: 'than' in outcome ? `go${outcome.than}` : ''
		})),
		seed: 1,
		candidates: 20_000
	};
}

/** True where the lines are those of the example, whatever seed and number are asked for. */
export function isExample({ grips, goes }: Statement): boolean {
	const example = exampleStatement();
	return (
		JSON.stringify(grips) === JSON.stringify(example.grips) &&
		JSON.stringify(goes) === JSON.stringify(example.goes)
	);
}

/** Why a statement cannot be searched, in words; none where it can. */
export function problemsOf({ grips, goes }: Statement, setup: Setup): string[] {
	const pad = setup.padWidth * setup.padLength;
	const problems: string[] = [];
	if (goes.length === 0) problems.push('Add at least one go.');
	for (const { name, areaFrom, areaTo } of grips) {
		if (areaFrom > areaTo) {
			problems.push(
				`${name}: the patch runs from ${areaFrom} down to ${areaTo} mm². Swap the two.`
			);
		} else if (areaTo > pad + 1e-9) {
			problems.push(
				`${name}: a patch of ${areaTo} mm² is larger than the pad of your set-up, ${Math.round(pad)} mm². Make it smaller, or the pad larger in Explore.`
			);
		}
	}
	goes.forEach(({ outcome, than, id }, index) => {
		if (outcome !== 'easier') return;
		if (than === id || goes.every((other) => other.id !== than)) {
			problems.push(`Go ${index + 1}: choose the go that it was easier than.`);
		}
	});
	return problems;
}

/**
 * What the search is asked, SI: the goes in their order, body, hands, pad and strength test from the
 * shared set-up.
 */
export function requestOf(
	{ grips, goes, seed, candidates }: Statement,
	setup: Setup
): SearchRequest {
	const orderOf = (id: string) => goes.findIndex((go) => go.id === id) + 1;
	const used = grips.filter(({ id }) => goes.some(({ grip }) => grip === id));
	return {
		seed,
		candidates,
		bodyMass: setup.body,
		hands: setup.hands === 1 ? 1 : 2,
		pad: {
			padWidth: millimetresToMetres(setup.padWidth),
			padLength: millimetresToMetres(setup.padLength),
			padDepth: millimetresToMetres(setup.padDepth)
		},
		strengthTest: {
			referenceEdgeDepth: millimetresToMetres(setup.edge),
			referenceHoldTime: setup.bestTime,
			holdTime: setup.hold
		},
		grips: used.map(({ id, fingers, areaFrom, areaTo }) => ({
			id,
			fingers,
			padArea: {
				from: squareMillimetresToSquareMetres(areaFrom),
				to: squareMillimetresToSquareMetres(areaTo)
			},
			referenceForce: usualReferenceForce
		})),
		observations: goes.map(({ grip, load, outcome, than }, index) => ({
			grip,
			load,
			order: index + 1,
			outcome: outcome === 'easier' ? { kind: 'easier', than: orderOf(than) } : { kind: outcome }
		}))
	};
}
