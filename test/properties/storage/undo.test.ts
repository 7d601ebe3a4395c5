import fc from 'fast-check';
import { expect, test } from 'vitest';
import { memoryNotebook } from '#storage/stores/open-store.ts';
import { StorageFault } from '#storage/stores/fault.ts';
import { put, remove } from '#storage/stores/store.ts';
import type { Person } from '#storage/codecs/notebook/records.ts';

type Step = { do: 'put' | 'remove' | 'undo' | 'redo'; id: string; adult: boolean };

const steps = fc.array(
	fc.record<Step>({
		do: fc.constantFrom('put', 'put', 'remove', 'undo', 'undo', 'redo'),
		id: fc.constantFrom('a', 'b', 'c'),
		adult: fc.boolean()
	}),
	{ maxLength: 40 }
);

/** A model that keeps every past state whole, instead of changes and their ways back. */
class Model {
	past: Map<string, Person>[] = [];
	now = new Map<string, Person>();
	future: Map<string, Person>[] = [];

	change(next: Map<string, Person>): void {
		this.past.push(this.now);
		this.now = next;
		this.future = [];
	}
}

test('any walk of changes, undo and redo ends where a model of whole states ends', async () => {
	await fc.assert(
		fc.asyncProperty(steps, async (list) => {
			const store = memoryNotebook(() => 0);
			const model = new Model();
			for (const step of list) {
				if (step.do === 'put') {
					const person = { id: step.id, label: step.id, bodyMassKg: null, adult: step.adult };
					const done = await store.apply('put', [put('people', person)]);
					const same = model.now.get(step.id)?.adult === step.adult;
					expect(done === null).toBe(same);
					if (!same) model.change(new Map(model.now).set(step.id, person));
				} else if (step.do === 'remove') {
					const done = await store.apply('remove', [remove('people', step.id)]);
					expect(done === null).toBe(!model.now.has(step.id));
					if (done) {
						const next = new Map(model.now);
						next.delete(step.id);
						model.change(next);
					}
				} else {
					const [from, to] =
						step.do === 'undo' ? [model.past, model.future] : [model.future, model.past];
					const walk = store[step.do]().catch((error: unknown) => error);
					const next = from.pop();
					if (!next) expect(await walk).toBeInstanceOf(StorageFault);
					else {
						expect(await walk).not.toBeInstanceOf(Error);
						to.push(model.now);
						model.now = next;
					}
				}
				const found = await store.list('people');
				expect(found).toEqual([...model.now.values()].sort((a, b) => (a.id < b.id ? -1 : 1)));
			}
		}),
		{ numRuns: 300 }
	);
});
