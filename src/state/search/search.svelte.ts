import type { SearchProgress, SearchRequest, StoryResult } from '#core/search/types.ts';
import { startSearchWorker } from '#workers/start-search.ts';
import type { SearchCommand, SearchReport } from '#workers/search-messages.ts';
import {
	exampleStatement,
	isExample,
	problemsOf,
	requestOf,
	type GoLine,
	type GripLine,
	type Statement
} from './statement.ts';
import type { Setup } from '#storage/codecs/setup.ts';

/** What the answers on screen answer. */
export type Asked = { request: SearchRequest; statement: Statement };

/** A search for stories: what was stated, how far the worker is, and what it found. */
export class SearchState {
	statement = $state.raw<Statement>(exampleStatement());
	/** One message for each field whose text cannot be used. */
	fieldProblems = $state.raw<Readonly<Record<string, string>>>({});
	status = $state<'idle' | 'running' | 'done' | 'cancelled' | 'failed'>('idle');
	progress = $state.raw<SearchProgress | undefined>();
	results = $state.raw<readonly StoryResult[]>([]);
	asked = $state.raw<Asked | undefined>();
	failure = $state<string | undefined>();

	readonly isExample = $derived(isExample(this.statement));

	#worker: Worker | undefined;
	#id = 0;
	#named = 100;

	problems(setup: Setup): string[] {
		return [...problemsOf(this.statement, setup), ...Object.values(this.fieldProblems)];
	}

	/** True where the answers on screen are to another statement than the one that stands there now. */
	outdated(setup: Setup): boolean {
		if (!this.asked) return false;
		return JSON.stringify(this.asked.request) !== JSON.stringify(requestOf(this.statement, setup));
	}

	change(patch: Partial<Statement>): void {
		this.statement = { ...this.statement, ...patch };
	}

	changeGo(id: string, patch: Partial<GoLine>): void {
		this.change({
			goes: this.statement.goes.map((go) => (go.id === id ? { ...go, ...patch } : go))
		});
	}

	/** Moves a go one place earlier or later. */
	moveGo(id: string, by: 1 | -1): void {
		const goes = [...this.statement.goes];
		const at = goes.findIndex((go) => go.id === id);
		const other = goes[at + by];
		if (!other) return;
		[goes[at], goes[at + by]] = [other, goes[at]!];
		this.change({ goes });
	}

	addGo(): void {
		const { goes, grips } = this.statement;
		const grip = goes.at(-1)?.grip ?? grips[0]!.id;
		const id = this.#name('go');
		this.change({ goes: [...goes, { id, grip, load: 1, outcome: 'held', than: '' }] });
	}

	removeGo(id: string): void {
		this.#forget(id);
		this.change({ goes: this.statement.goes.filter((go) => go.id !== id) });
	}

	changeGrip(id: string, patch: Partial<GripLine>): void {
		this.change({
			grips: this.statement.grips.map((grip) => (grip.id === id ? { ...grip, ...patch } : grip))
		});
	}

	addGrip(): void {
		const { grips } = this.statement;
		const id = this.#name('grip');
		const name = `Grip ${grips.length + 1}`;
		this.change({ grips: [...grips, { id, name, fingers: 4, areaFrom: 150, areaTo: 250 }] });
	}

	removeGrip(id: string): void {
		this.#forget(id);
		this.change({ grips: this.statement.grips.filter((grip) => grip.id !== id) });
	}

	example(): void {
		const { grips, goes } = exampleStatement();
		this.fieldProblems = {};
		this.change({ grips, goes });
	}

	fieldProblem(field: string, message: string | undefined): void {
		if (this.fieldProblems[field] === message) return;
		const rest = Object.entries(this.fieldProblems).filter(([key]) => key !== field);
		if (message !== undefined) rest.push([field, message]);
		this.fieldProblems = Object.fromEntries(rest);
	}

	start(setup: Setup): void {
		const { statement } = this;
		const request = requestOf(statement, setup);
		this.asked = { request, statement };
		this.results = [];
		this.progress = undefined;
		this.failure = undefined;
		this.status = 'running';
		this.#send({ type: 'start', id: ++this.#id, request });
	}

	cancel(): void {
		if (this.status === 'running') this.#send({ type: 'cancel', id: this.#id });
	}

	/** Stops the worker when its page is left; answers stay. */
	leave(): void {
		this.#worker?.terminate();
		this.#worker = undefined;
		if (this.status === 'running') this.status = 'cancelled';
	}

	/** Takes a report of the worker; those of earlier searches are late and left aside. */
	hear(report: SearchReport): void {
		if (report.id !== this.#id) return;
		switch (report.type) {
			case 'progress':
				this.progress = report.progress;
				if (report.progress.finished) this.results = [...this.results, report.progress.finished];
				break;
			case 'done':
				this.results = report.results;
				this.status = 'done';
				break;
			case 'cancelled':
				this.status = 'cancelled';
				break;
			case 'failed':
				this.failure = report.message;
				this.status = 'failed';
				break;
		}
	}

	#send(command: SearchCommand): void {
		if (!this.#worker) {
			this.#worker = startSearchWorker();
			this.#worker.onmessage = ({ data }: MessageEvent<SearchReport>) => this.hear(data);
			this.#worker.onerror = () =>
				this.hear({
					type: 'failed',
					id: this.#id,
					message: 'The search could not be loaded. Reload the page and try again.'
				});
		}
		this.#worker.postMessage(command);
	}

	#name(kind: string): string {
		return `${kind}${this.#named++}`;
	}

	/** Messages about fields that are taken away. */
	#forget(id: string): void {
		const rest = Object.entries(this.fieldProblems).filter(([key]) => !key.startsWith(`${id}-`));
		this.fieldProblems = Object.fromEntries(rest);
	}
}

export const sharedSearch = new SearchState();
