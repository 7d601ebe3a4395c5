import type { Draft } from '../notebook/draft.ts';
import type { Kind, Records } from '../notebook/records.ts';
import { validate } from '../notebook/validate.ts';
import type { Value } from './cells.ts';
import { readCell } from './cells.ts';
import type { Part } from './columns.ts';
import { columns } from './columns.ts';
import { defaults } from './defaults.ts';
import type { Found } from './match-header.ts';
import { markFrom } from './row-ids.ts';

type Fields = Record<string, Value>;
const kindOf: Record<Exclude<Part, 'trial'>, Kind> = {
	person: 'people',
	hold: 'holds',
	grip: 'grips',
	session: 'sessions'
};

/** Turns rows into records one by one, and remembers those that many rows share. */
export class RowReader {
	readonly #found: Found[];
	readonly #standIns: ReturnType<typeof defaults>;
	readonly #draft: Draft;
	/** What a shared record's cells said, and in which row first: by kind and id. */
	readonly #seen = new Map<string, { said: string; row: number }>();
	/** Shared records by their cells, so that equal rows are checked once. */
	readonly #known = new Map<string, string>();
	/** In which row each trial stands, by its id. */
	readonly rows = new Map<string, number>();
	readonly #times = new Map<string, number>();
	readonly #assumed = new Set<string>();

	constructor(found: Found[], today: string, draft: Draft) {
		this.#found = found;
		this.#standIns = defaults(today);
		this.#draft = draft;
	}

	/** What had to be assumed because the file does not say it. */
	assumed(): string[] {
		return [...this.#assumed];
	}

	/** Reads one row into the draft; false when it stays out. */
	read(cells: readonly string[], row: number): boolean {
		const parts: Record<Part, Fields> = { person: {}, hold: {}, grip: {}, session: {}, trial: {} };
		let good = true;
		for (const { column, at, convert } of this.#found) {
			const read = readCell(column.cell, column.field, cells[at] ?? '', convert);
			if ('value' in read) parts[column.part][column.field] = read.value;
			else {
				this.#refuse(row, column.header, read.fault);
				good = false;
			}
		}
		if (!good) return false;
		for (const part of ['person', 'hold', 'grip', 'session'] as const) {
			if (part === 'session') {
				parts.session.personId = parts.person.id!;
				parts.session.holdId = parts.hold.id!;
			}
			if (!this.#share(part, parts[part], row)) return false;
		}
		return this.#trial(parts, row);
	}

	/** Settles a record that rows share; its id is left in `fields.id`. */
	#share(part: Exclude<Part, 'trial'>, fields: Fields, row: number): boolean {
		const said = part + JSON.stringify(fields);
		const known = this.#known.get(said);
		if (known !== undefined) {
			fields.id = known;
			return true;
		}
		const completed = this.#complete(part, fields);
		completed.id ??=
			part === 'session'
				? // The day as the file gives it: the day that stands in for none differs each time.
					markFrom(part, [completed.personId, completed.holdId, fields.day ?? ''])
				: markFrom(part, [completed.label]);
		const kind = kindOf[part];
		const result = validate(kind, completed);
		if ('faults' in result) return this.#faults(part, result.faults, row);
		fields.id = result.record.id;
		this.#known.set(said, result.record.id);
		const earlier = this.#seen.get(kind + result.record.id);
		if (!earlier) {
			this.#seen.set(kind + result.record.id, { said, row });
			(this.#draft.notebook[kind] as Records[Kind][]).push(result.record);
		} else {
			this.#draft.problems.push({
				severity: 'flagged',
				row,
				field: part,
				reason: `says something else about this ${part} than row ${earlier.row}; row ${earlier.row} counts`
			});
		}
		return true;
	}

	#trial(parts: Record<Part, Fields>, row: number): boolean {
		const sessionId = parts.session.id as string;
		const completed = this.#complete('trial', parts.trial);
		completed.sessionId = sessionId;
		completed.gripId = parts.grip.id!;
		if (completed.order === null || completed.order === undefined) {
			completed.order = this.#count(`next ${sessionId}`) + 1;
		}
		completed.id ??= this.#markOfTrial(sessionId, completed.order);
		const result = validate('trials', completed);
		if ('faults' in result) return this.#faults('trial', result.faults, row);
		if (this.rows.has(result.record.id)) {
			this.#refuse(row, 'trial id', 'stands on an earlier row too; the first is kept');
			return false;
		}
		this.rows.set(result.record.id, row);
		this.#draft.notebook.trials.push(result.record);
		return true;
	}

	/** Two trials with one number stay two: the second gets another mark. */
	#markOfTrial(sessionId: string, order: Value): string {
		const time = this.#count(`${sessionId} ${order}`);
		return markFrom('trial', [sessionId, order, time]);
	}

	#count(key: string): number {
		const count = this.#times.get(key) ?? 0;
		this.#times.set(key, count + 1);
		return count;
	}

	#complete(part: Part, fields: Fields): Fields {
		const result = { ...fields };
		for (const [field, standIn] of Object.entries(this.#standIns[part])) {
			const value = result[field];
			const absent = value === undefined || (value === null && standIn.value !== null);
			if (absent || (value === '' && standIn.said !== null)) {
				result[field] = standIn.value;
				if (standIn.said) this.#assumed.add(standIn.said);
			}
		}
		return result;
	}

	#faults(part: Part, faults: { field: string; reason: string }[], row: number): boolean {
		for (const { field, reason } of faults) {
			const column = columns.find((one) => one.part === part && one.field === field);
			this.#refuse(row, column?.header ?? field, reason);
		}
		return false;
	}

	#refuse(row: number, field: string, reason: string): void {
		this.#draft.problems.push({ severity: 'refused', row, field, reason });
	}
}
