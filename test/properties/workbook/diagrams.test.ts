import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { imbalance, momentImbalance } from '#core/workbook/statics/diagram.ts';
import { everySetup, givensOf } from './samples.ts';

describe('the drawn forces on every body sum to mass times acceleration, to 1e-9', () => {
	test.each(everySetup)('%s', (_, family, setup) => {
		let drawn = 0;
		fc.assert(
			fc.property(givensOf(setup), (given) => {
				const all = { ...given, arrangement: setup.number };
				for (const ask of [undefined, ...setup.practice.ask]) {
					const diagram = family.diagram(all, ask);
					if (!diagram) continue;
					drawn += 1;
					expect(diagram.forces.length).toBeGreaterThan(1);
					for (const { id } of diagram.bodies) {
						expect(imbalance(diagram, id)).toBeLessThan(1e-9);
						if (diagram.rigid) expect(momentImbalance(diagram, id)).toBeLessThan(1e-9);
					}
				}
			}),
			{ numRuns: 40, seed: 6 }
		);
		expect(drawn).toBeGreaterThan(20);
	});
});
