import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { imbalance, momentImbalance } from '#core/workbook/statics/diagram.ts';
import { everySetup, givensOf } from './samples.ts';

describe('the drawn forces on every body sum to mass times acceleration, to 1e-9', () => {
	test.each(everySetup)('%s', (_, family, setup) => {
		let drawn = 0;
		fc.assert(
			fc.property(givensOf(setup), (given) => {
				const diagram = family.diagram(
					{ ...given, arrangement: setup.number },
					setup.practice.ask[0]
				);
				if (!diagram) return;
				drawn += 1;
				expect(diagram.forces.length).toBeGreaterThan(1);
				for (const { id } of diagram.bodies) {
					expect(imbalance(diagram, id)).toBeLessThan(1e-9);
					if (diagram.rigid) expect(momentImbalance(diagram, id)).toBeLessThan(1e-9);
				}
			}),
			{ numRuns: 100, seed: 6 }
		);
		expect(drawn).toBeGreaterThan(20);
	});
});
