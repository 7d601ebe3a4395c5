import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { capstanRatio } from '#core/measure/pulley-efficiency.ts';
import { enduranceTime } from '#core/strength/endurance.ts';
import { pulleyForce } from '#core/strength/pulley-force.ts';
import { fatigueRates, rohmertCurve, smoothCurve } from '#reference/endurance.ts';
import { fingerLengths, fingers, type Finger } from '#reference/finger-lengths.ts';
import { jointAngles } from '#reference/joint-angles.ts';
import { momentArms } from '#reference/moment-arms.ts';
import { publishedRatios } from '#reference/published-ratios.ts';
import { pulleys } from '#reference/pulleys.ts';
import { rowOf } from '#reference/read.ts';
import { reliability } from '#reference/reliability.ts';
import { sharing } from '#reference/sharing.ts';
import { strengthTotals } from '#reference/strength.ts';
import { within, type Tolerance } from '#test/within.ts';

type Case = { id: string; expected: number } & Tolerance;
const cases = JSON.parse(readFileSync('test/oracles/biomechanics/cases.json', 'utf8')) as Case[];

const rohmert = (f: number) =>
	60 * rohmertCurve.terms.reduce<number>((sum, term, power) => sum + term / f ** power, 0);
const smooth = (percent: number) =>
	smoothCurve.scale / (percent - smoothCurve.offset) ** smoothCurve.power - smoothCurve.shift;
const sustained = (key: string) => {
	const { tiring, recovering } = rowOf(fatigueRates, key);
	return recovering / (tiring + recovering);
};
const bones = (finger: Finger) => rowOf(fingerLengths, finger);
const arms = rowOf(momentArms, 'ketchum-index');
const published = (key: string) => rowOf(publishedRatios, key).value!;
const quotient = (over: string, under: string) => published(over) / published(under);
const shares = rowOf(sharing, 'cylinder-grip').shares!;
const total = (key: string) => rowOf(strengthTotals, key).value!;

/** Moment of the middle joint over that of the last at which the planar balance gives this FDP/FDS. */
const momentRatio = (flexors: number, passive: number) =>
	((1 - passive) / arms.fdpAtDip) * (arms.fdsAtPip / flexors + arms.fdpAtPip);

const allOut = rowOf(reliability, 'all-out-peak');
const smallestChange = 100 * 1.96 * Math.SQRT2 * allOut.cv![0];

const computed: Record<string, () => number> = {
	'rohmert-1': () => rohmert(1),
	'rohmert-0.75': () => rohmert(0.75),
	'rohmert-0.5': () => rohmert(0.5),
	'rohmert-0.3': () => rohmert(0.3),
	'rohmert-0.2': () => rohmert(0.2),
	'smooth-50': () => smooth(50),
	'sustained-men': () => sustained('hand-men'),
	'sustained-women': () => sustained('hand-women'),
	'bone-index-proximal': () => bones('index').proximal * 1000,
	'bone-index-middle': () => bones('index').middle * 1000,
	'bone-index-distal': () => bones('index').distal * 1000,
	'bone-index-tip': () => bones('index').softTip * 1000,
	'bone-middle-sum': () => {
		const { proximal, middle, distal, softTip } = bones('middle');
		return 1000 * (proximal + middle + distal + softTip);
	},
	'arm-fdp-dip': () => arms.fdpAtDip * 1000,
	'arm-fdp-pip': () => arms.fdpAtPip * 1000,
	'arm-fdp-mcp': () => arms.fdpAtMcp * 1000,
	'arm-fds-pip': () => arms.fdsAtPip * 1000,
	'arm-fds-mcp': () => arms.fdsAtMcp * 1000,
	'moments-crimp': () => momentRatio(published('flexors-crimp'), published('passive-dip-share')),
	'moments-slope': () => momentRatio(published('flexors-slope'), 0),
	'flexors-crimp': () => published('flexors-crimp'),
	'flexors-slope': () => published('flexors-slope'),
	'passive-share': () => published('passive-dip-share'),
	'a2-crimp': () => quotient('a2-crimp', 'tip-crimp'),
	'a2-slope': () => quotient('a2-slope', 'tip-slope'),
	'a4-crimp': () => quotient('a4-crimp', 'tip-crimp'),
	'a4-slope': () => quotient('a4-slope', 'tip-slope'),
	'fdp-crimp': () => quotient('fdp-crimp', 'tip-crimp'),
	'fdp-slope': () => quotient('fdp-slope', 'tip-slope'),
	'rule-crimp': () => pulleyForce(published('fdp-crimp'), rowOf(jointAngles, 'crimp').pip!),
	'rule-slope': () => pulleyForce(published('fdp-slope'), rowOf(jointAngles, 'slope').pip!),
	'a2-living': () => published('a2-to-tip-living'),
	'share-index': () => 100 * shares.index,
	'share-middle': () => 100 * shares.middle,
	'share-ring': () => 100 * shares.ring,
	'share-little': () => 100 * shares.little,
	'share-sum': () => 100 * fingers.reduce((sum, finger) => sum + shares[finger], 0),
	climbers: () => total('climbers-four-fingers') / total('untrained-four-fingers'),
	capstan: () => capstanRatio(rowOf(pulleys, 'carabiner').value!, Math.PI),
	'smallest-change': () => smallestChange,
	'smallest-change-agreement': () => smallestChange
};

describe('fingers against published numbers', () => {
	test('each case has its computation and the other way round', () => {
		expect(cases.map(({ id }) => id).sort()).toEqual(Object.keys(computed).sort());
	});

	for (const one of cases) {
		test(one.id, () => within(computed[one.id]!(), one.expected, one));
	}

	test('the core’s endurance curve is the one of the row', () => {
		for (const f of [1, 0.75, 0.5, 0.3, 0.2])
			within(enduranceTime(f), rohmert(f), { relative: 1e-12 });
	});

	test('the two endurance curves agree within 5 % at half of maximum', () => {
		within(smooth(50), rohmert(0.5), { relative: 0.05 });
	});

	test('open-hand order: middle, then index and ring about alike, little last', () => {
		expect(rowOf(sharing, 'half-crimp-and-open').order).toBe('middle > index ≈ ring > little');
		const own = rowOf(sharing, 'default-open').shares!;
		expect(own.middle).toBeGreaterThan(Math.max(own.index, own.ring));
		within(own.index, own.ring, { absolute: 0.02 });
		expect(own.little).toBeLessThan(Math.min(own.index, own.ring));
		within(own.index + own.middle + own.ring + own.little, 1, { absolute: 1e-9 });
	});
});
