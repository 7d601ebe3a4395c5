import { describe, expect, test } from 'vitest';
import { pulleyForce } from '#core/strength/pulley-force.ts';
import { bodyMeasures } from '#reference/anthropometry.ts';
import { publishedRatios } from '#reference/published-ratios.ts';
import { sharing } from '#reference/sharing.ts';
import { within } from '#test/within.ts';
import { publishedRows } from '../../../src/routes/finger/published.ts';
import cases from './cases.json' with { type: 'json' };

const rows = publishedRows();
const row = (key: string) => rows.find((candidate) => candidate.key === key)!;

describe('published finger loads', () => {
	test.each(cases.ratios)(
		'$key over fingertip force is $expected',
		({ key, expected, absolute }) => {
			within(row(key).published, expected, { absolute });
		}
	);

	test('the forces behind the ratios are those of the work', () => {
		for (const grip of ['crimp', 'slope'] as const)
			for (const part of ['a2', 'a4', 'tip', 'fdp'] as const) {
				const fact = publishedRatios.find(({ key }) => key === `${part}-${grip}`)!;
				expect(fact.value).toBe(cases.schoffl2009[grip][part]);
			}
	});

	test.each(cases.pulleyRule)('the pulley rule in the $grip lies within its band', (rule) => {
		const { a2, fdp } = cases.schoffl2009[rule.grip as 'crimp' | 'slope'];
		const estimate = pulleyForce(1, (rule.pip * Math.PI) / 180);
		within(estimate, a2 / fdp, { relative: rule.relative });
	});

	test('the planar chain does not reach the published flexor ratio, with either set of arms', () => {
		const { published, model } = row('flexors-crimp');
		expect(published).toBe(cases.vigouroux2006.crimp);
		expect(model.ketchum).toBeLessThan(published);
		expect(model.an).toBeLessThan(published);
		// The slope grip lies the other way: the chain gives more than the remembered 0.88.
		expect(row('flexors-slope').fact.status).toBe('memory');
		expect(row('flexors-slope').model.ketchum).toBeGreaterThan(row('flexors-slope').published);
		const passive = publishedRatios.find(({ key }) => key === 'passive-dip-share')!;
		expect(passive.value).toBe(cases.vigouroux2006.passiveShare);
	});

	test('A2 over fingertip force in living people, and shares in a cylinder grip', () => {
		within(row('a2-living').published, cases.schweizer2001.a2OverTip, {
			absolute: cases.schweizer2001.about
		});
		const { shares } = sharing.find(({ key }) => key === 'cylinder-grip')!;
		for (const finger of ['index', 'middle', 'ring', 'little'] as const)
			within(100 * shares![finger], cases.li2002[finger], { absolute: 0.1 });
	});

	test('hand sizes of the survey', () => {
		for (const [key, name] of [
			['hand-length-men', 'handLengthMen'],
			['hand-breadth-women', 'handBreadthWomen']
		] as const) {
			const measured = bodyMeasures.find((candidate) => candidate.key === key)!;
			for (const point of ['p5', 'p50', 'p95'] as const)
				within(1000 * measured[point], cases.ansur2[name][point], { absolute: 1e-9 });
		}
	});
});
