import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { frictionRatio } from '#core/friction/friction-ratio.ts';
import { ratioFromTilts } from '#core/measure/tilt-to-slip.ts';
import { realContactShare } from '#core/mechanisms/saturation.ts';
import { shearLossRatio } from '#core/mechanisms/shear-loss.ts';
import { settlingTimeConstant, sittingRatio } from '#core/mechanisms/sitting-time.ts';
import { coefficients } from '#reference/coefficients.ts';
import { contactFacts } from '#reference/contact-facts.ts';
import { powderFindings, rockRatios } from '#reference/powder.ts';
import { rowOf } from '#reference/read.ts';
import { strengthTotals } from '#reference/strength.ts';
import { surfacePresets } from '#reference/surface-presets.ts';
import { within, type Tolerance } from '#test/within.ts';

type Case = { id: string; expected: number; input?: number } & Tolerance;
const cases = JSON.parse(readFileSync('test/oracles/friction/cases.json', 'utf8')) as Case[];

const preset = (key: string) => rowOf(surfacePresets, key);
const ratioOf = (key: string, pressure = 245e3) => frictionRatio(preset(key).law, pressure);
const value = (key: string) => rowOf(coefficients, key).value!;
const fact = (key: string) => rowOf(contactFacts, key).value!;

/** Ratio of the measured-pad preset under a force on one pad of its own reference area. */
const pad = (force: number) => ratioOf('power-measured', force / 350e-6);

const sitting = preset('moist-smooth').sitting!;
const tilt = ({ input }: Case) =>
	ratioFromTilts([input!, input!].map((deg) => (deg * Math.PI) / 180));

const computed: Record<string, (c: Case) => number> = {
	'slip-angle-limestone': (c) => tilt(c).value,
	'slip-angle-sandstone': (c) => tilt(c).value,
	'sandstone-limestone-bare': () => ratioOf('sandstone-bare') / ratioOf('limestone-bare'),
	'sandstone-limestone-chalked': () => ratioOf('sandstone-chalked') / ratioOf('limestone-chalked'),
	'chalk-limestone': () => ratioOf('limestone-chalked') / ratioOf('limestone-bare'),
	'chalk-sandstone': () => ratioOf('sandstone-chalked') / ratioOf('sandstone-bare'),
	'pad-20-over-1': () => pad(20) / pad(1),
	'pad-mean': () => (pad(1) + pad(10) + pad(20)) / 3,
	'pad-exponent': () => 1 + Math.log(pad(20) / pad(1)) / Math.log(20),
	'pad-at-29': () => pad(29.4),
	'sitting-constant-99': () => settlingTimeConstant(20, 0.99),
	'sitting-constant-95': () => settlingTimeConstant(20, 0.95),
	'sitting-by-20': () =>
		(sittingRatio(20, { coefficient: 1, ...sitting }) - 1) / (sitting.rise - 1),
	'dry-skin': () => ratioOf('dry-generic'),
	'moist-skin': () => ratioOf('moist-smooth', 2000),
	'humid-factor': () => fact('humid-factor'),
	'fingerprint-loss': () => fact('fingerprint-loss'),
	'shear-loss': () =>
		1 - shearLossRatio(1, { coefficient: 1, loss: 0.3, referencePressure: 114e3 }),
	'pull-off': () => fact('pull-off') / 10,
	'real-contact': () => realContactShare(0.5, 40e3, fact('real-shear-dry')),
	'dynamic-static': () => value('body-sites-dynamic') / value('body-sites-static'),
	'soapy-dry': () => value('rail-soapy') / value('rail-dry'),
	breakaway: () =>
		rowOf(strengthTotals, 'breakaway-low').value! / rowOf(strengthTotals, 'breakaway-high').value!
};

describe('friction against published numbers', () => {
	test('each case has its computation and the other way round', () => {
		expect(cases.map(({ id }) => id).sort()).toEqual(Object.keys(computed).sort());
	});

	for (const one of cases) {
		test(one.id, () => within(computed[one.id]!(one), one.expected, one));
	}

	test('the rows of the abstract agree with the presets made from them', () => {
		for (const [rock, key] of [
			['sandstone-over-limestone-bare', 'bare'],
			['sandstone-over-limestone-chalked', 'chalked']
		] as const) {
			const quotient = value(`sandstone-${key}`) / value(`limestone-${key}`);
			within(quotient, rowOf(rockRatios, rock).value!, { absolute: 0.005 });
		}
		for (const rock of ['limestone', 'sandstone'] as const) {
			within(
				value(`${rock}-chalked`) / value(`${rock}-bare`),
				rowOf(powderFindings, `amca-${rock}`).factor!,
				{ absolute: 0.005 }
			);
		}
	});

	test('ranges of the sitting presets are those of the sources', () => {
		expect(sitting.riseRange[1]).toBeLessThanOrEqual(15);
		expect(sitting.timeRange[0]).toBeLessThanOrEqual(4.34);
		expect(sitting.timeRange[1]).toBeGreaterThanOrEqual(6.68);
		// On porous surfaces (paper) the ratio falls while one holds.
		const porous = sittingRatio(20, { coefficient: 0.5, rise: 0.7, timeConstant: 6 });
		expect(porous).toBeLessThan(0.5);
	});

	test('dry skin stays between 0.2 and 1 at every pressure of a hang', () => {
		for (const key of ['dry-generic', 'dry-rough']) {
			for (const pressure of [20e3, 100e3, 250e3, 540e3]) {
				expect(ratioOf(key, pressure)).toBeGreaterThan(0.2);
				expect(ratioOf(key, pressure)).toBeLessThan(1);
			}
		}
	});
});
