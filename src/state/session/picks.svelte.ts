import type { NotebookState } from '../notebook/notebook.svelte.ts';
import type { Start } from './start-session.ts';

/** Who hangs, from what, and how: picked from the notebook or new. Shared by quick start and planner. */
export class Picks {
	person = $state.raw<{
		id: string | null;
		label: string;
		bodyMassKg: number | null;
		adult: boolean;
	}>({ id: null, label: '', bodyMassKg: null, adult: false });
	hold = $state.raw<{ id: string | null; label: string; slopeDegrees: number | null }>({
		id: null,
		label: '',
		slopeDegrees: null
	});
	grip = $state.raw<{ id: string | null; label: string; fingers: 1 | 2 | 3 | 4 | 5; hands: 1 | 2 }>(
		{
			id: null,
			label: '',
			fingers: 4,
			hands: 2
		}
	);
	#notebook: NotebookState;

	constructor(notebook: NotebookState) {
		this.#notebook = notebook;
	}

	/** Takes what is in the notebook: who hung last, on what, with what grip. */
	preset(): void {
		const { sessions, people, holds, grips } = this.#notebook;
		const latest = [...sessions].sort((one, other) => (one.day < other.day ? 1 : -1))[0];
		this.person = { ...this.person, id: latest?.personId ?? people[0]?.id ?? null };
		this.hold = { ...this.hold, id: latest?.holdId ?? holds[0]?.id ?? null };
		this.grip = { ...this.grip, id: grips[0]?.id ?? null };
	}

	get known() {
		const { people, holds, grips } = this.#notebook;
		return {
			person: people.find(({ id }) => id === this.person.id),
			hold: holds.find(({ id }) => id === this.hold.id),
			grip: grips.find(({ id }) => id === this.grip.id)
		};
	}

	get adult(): boolean {
		return this.known.person?.adult ?? this.person.adult;
	}

	get bodyMassKg(): number | null {
		return this.known.person ? this.known.person.bodyMassKg : this.person.bodyMassKg;
	}

	get slopeDegrees(): number | null {
		return this.known.hold ? this.known.hold.slopeDegrees : this.hold.slopeDegrees;
	}

	/** What is still missing, in words; null: nothing. */
	get missing(): string | null {
		const lost = [
			!this.known.person && this.person.label.trim() === '' && 'a name for the person',
			!this.known.hold && this.hold.label.trim() === '' && 'a name for the hold',
			!this.known.grip && this.grip.label.trim() === '' && 'a name for the grip'
		].filter(Boolean);
		return lost.length > 0 ? `Still missing: ${lost.join(', ')}.` : null;
	}

	/** As the parts of a session. */
	get parts(): Omit<Start, 'session'> {
		const { person, hold, grip } = this.known;
		return {
			person: person ? { id: person.id } : withoutId(this.person),
			hold: hold
				? { id: hold.id }
				: {
						...withoutId(this.hold),
						slopeMethod: this.hold.slopeDegrees === null ? '' : 'typed in, method not said'
					},
			grip: grip ? { id: grip.id } : withoutId(this.grip)
		};
	}
}

function withoutId<T extends { id: string | null; label: string }>(draft: T): Omit<T, 'id'> {
	const copy: Partial<T> & { label: string } = { ...draft, label: draft.label.trim() };
	delete copy.id;
	return copy as Omit<T, 'id'> & { label: string };
}
