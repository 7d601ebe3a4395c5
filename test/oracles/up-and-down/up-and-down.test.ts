import { expect, test } from 'vitest';
import { nextUpAndDown } from '#core/trials/plan/up-and-down.ts';
import cases from './cases.json' with { type: 'json' };

for (const [name, { load, failed }] of Object.entries(cases)) {
	test(`${name}: each step goes the way the published series went`, () => {
		let steps = 0;
		for (let i = 0; i + 1 < load.length; i++) {
			const outcome = failed[i] ? 'opened' : 'held';
			const next = nextUpAndDown({ load: load[i]!, outcome }, 0.05, Infinity);
			expect(Math.sign(next - load[i]!)).toBe(Math.sign(load[i + 1]! - load[i]!));
			steps++;
		}
		expect(steps).toBe(load.length - 1);
	});
}
