import type { Diagram } from '#core/workbook/statics/diagram.ts';
import type { Family } from '#core/workbook/statics/family.ts';
import type { Answer, Setup } from '#core/workbook/statics/types.ts';
import { readProblem, writeProblem } from './link.ts';
import { plainWords } from './plain-words.ts';
import { readTyped, textOf, type TypedReading } from './typed.ts';

/** Middling numbers of an arrangement's practice ranges, as fields show them. */
export function exampleTexts(setup: Setup): Record<string, string> {
	const texts: Record<string, string> = {};
	for (const [id, [low, high, step]] of Object.entries(setup.practice.given)) {
		const { unit } = setup.quantities.find((each) => each.id === id)!;
		const middle = low + step * Math.round((high - low) / step / 2);
		texts[id] = textOf(Number(middle.toPrecision(12)), unit);
	}
	return texts;
}

/** One problem on a family's page: what was typed, and everything that follows from it. */
export class ProblemState {
	readonly family: Family;
	/** Number of the arrangement. */
	arrangement = $state(1);
	ask = $state('');
	texts = $state.raw<Record<string, string>>({});
	/** True until something is typed or a link is opened. */
	isExample = $state(true);
	notes = $state.raw<string[]>([]);
	#last: { setup: string; diagram: Diagram } | undefined;

	constructor(family: Family) {
		this.family = family;
		this.choose(1);
	}

	setup = $derived.by(() => this.family.setups.find((each) => each.number === this.arrangement)!);

	readings = $derived.by(() => {
		const found: Record<string, TypedReading> = {};
		for (const of of this.setup.quantities) found[of.id] = readTyped(this.texts[of.id] ?? '', of);
		return found;
	});

	/** The givens that can be read, SI and radians; the asked quantity is never one of them. */
	given = $derived.by(() => {
		const given: Record<string, number> = { arrangement: this.arrangement };
		for (const [id, { value }] of Object.entries(this.readings))
			if (value !== undefined && id !== this.ask) given[id] = value;
		return given;
	});

	answer: Answer = $derived.by(() => this.family.solve(this.given, this.ask));

	warnings = $derived.by(() => {
		const said = this.answer.warnings.filter((each) => each !== this.answer.because);
		return said.map((each) => plainWords(each, this.setup.quantities));
	});

	because = $derived.by(() => plainWords(this.answer.because, this.setup.quantities));

	hasFault = $derived.by(() =>
		Object.entries(this.readings).some(([id, { fault }]) => fault && id !== this.ask)
	);

	/** The drawing of these numbers, or the last good one of this arrangement, marked stale. */
	drawing = $derived.by((): { diagram: Diagram | undefined; stale: boolean } => {
		const diagram = this.family.diagram(this.given, this.ask);
		if (diagram) this.#last = { setup: this.setup.id, diagram };
		if (diagram || this.#last?.setup !== this.setup.id) return { diagram, stale: false };
		return { diagram: this.#last.diagram, stale: true };
	});

	query = $derived.by(() =>
		writeProblem({ arrangement: this.arrangement, ask: this.ask, texts: this.texts })
	);

	/** Takes an arrangement with its example numbers, keeping what was typed where it fits. */
	choose(number: number): void {
		const kept = this.isExample ? {} : this.texts;
		this.arrangement = number;
		const { setup } = this;
		const own = Object.entries(kept).filter(([id]) =>
			setup.quantities.some((each) => each.id === id)
		);
		this.texts = { ...exampleTexts(setup), ...Object.fromEntries(own) };
		this.ask = setup.practice.ask[0]!;
		this.notes = [];
	}

	type(id: string, text: string): void {
		this.texts = { ...this.texts, [id]: text };
		this.isExample = false;
	}

	clear(): void {
		this.texts = {};
		this.isExample = false;
	}

	/** Opens a link's query; an empty one leaves the problem as it is. */
	open(query: string): void {
		const { link, notes } = readProblem(query);
		if (!link) return;
		const number = link.arrangement ?? 1;
		const known = this.family.setups.some((each) => each.number === number);
		if (!known) notes.push(`The link’s arrangement ${number} is none of this family’s.`);
		this.arrangement = known ? number : 1;
		const ids = this.setup.quantities.map((each) => each.id);
		const strange = Object.keys(link.texts).filter((id) => !ids.includes(id));
		if (strange.length)
			notes.push(`The link gives ${strange.join(', ')}, unknown to this arrangement: left out.`);
		this.texts = Object.fromEntries(Object.entries(link.texts).filter(([id]) => ids.includes(id)));
		const asked = link.ask !== undefined && ids.includes(link.ask);
		if (link.ask !== undefined && !asked)
			notes.push(`The link asks for “${link.ask}”, which this arrangement does not have.`);
		this.ask = asked ? link.ask! : this.setup.practice.ask[0]!;
		this.isExample = false;
		this.notes = notes;
	}
}
