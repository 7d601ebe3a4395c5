import { describe, expect, test } from 'vitest';
import { describeForces } from '#figures/forces/describe-forces.ts';
import { degree, scene } from './scene.ts';

// Expected numbers: 70 kg · 9.80665 m/s² = 686.47 N, halved per hand, times cos and sin of the
// slope; the rope row by the same hand calculation.
describe('the free-body diagram in words', () => {
	test('a plumb hang that does not slip', () => {
		expect(describeForces(scene({}))).toBe(
			'Whole person, seen from the side, with the wall on the left. ' +
				'The weight of 686 N (70 kg) pulls straight down at the centre of mass. ' +
				'The hold gives 686 N (70 kg), straight up; the body hangs plumb. ' +
				'One of two hands: 4 fingers lie on a flat surface that slopes 32° down toward the person, ' +
				'touching it each over 250 mm². ' +
				'The contact force of 343 N (35 kg) splits into a normal force of 291 N (29.7 kg) ' +
				'and 182 N (18.5 kg) of friction needed. ' +
				'The friction limit is 186 N (19 kg), at a friction ratio of 0.64: ' +
				'the force lies inside the friction cone, and the hand does not slip.'
		);
	});

	test('a rope that leads away from the wall leans the body away, and the hand slips', () => {
		// V = 686.47 − 200 cos 15° = 493.28 N, H = 200 sin 15° = 51.76 N: 495.99 N at 5.99°.
		const words = describeForces(scene({ assistForce: 200, ropeAngle: 15 * degree }));
		expect(words).toContain('The rope pulls with 200 N (20.4 kg) up, 15° away from the wall.');
		expect(words).toContain(
			'The hold gives 496 N (50.6 kg), 5.99° from straight up toward the wall; ' +
				'the body leans 5.99° away from the wall.'
		);
		expect(words).toContain('outside the friction cone, and the hand slips.');
	});

	test('rope and push toward the wall', () => {
		const words = describeForces(
			scene({ assistForce: 100, ropeAngle: -10 * degree, push: -20, hands: 1, fingers: 1 })
		);
		expect(words).toContain('up, 10° toward the wall.');
		expect(words).toContain('A steady push of 20 N (2.04 kg) acts toward the wall.');
		expect(words).toContain('from straight up away from the wall; the body leans');
		expect(words).toContain('The one hand: 1 finger lies on a flat surface');
		expect(words).toContain('touching it over 250 mm².');
	});

	test('a plumb rope, a level and an incut surface, a rounded hold', () => {
		expect(describeForces(scene({ assistForce: 50 }))).toContain('(5.1 kg) straight up.');
		const level = describeForces(scene({ slope: 0 }));
		expect(level).toContain('on a level surface');
		expect(level).toContain('and nothing along the surface: no friction is needed.');
		// 343.23 N · sin 10° = 59.6 N against the stop.
		const incut = describeForces(scene({ slope: -10 * degree }));
		expect(incut).toContain('on an incut edge that rises 10° toward the person');
		expect(incut).toContain(
			'59.6 N (6.08 kg) along the surface, against a stop behind the fingers'
		);
		// Patch 15.625 mm on 60 mm: the mean slope is 24° + 7.46°.
		expect(describeForces(scene({ slope: 24 * degree, radius: 0.06 }))).toContain(
			'rounded to a radius of 60 mm, with a slope of 24° at the fingertips and 31.5° on average'
		);
	});

	test('a pull that leads off the hold', () => {
		const words = describeForces(
			scene({ slope: 60 * degree, assistForce: 540, ropeAngle: 30 * degree })
		);
		expect(words).toContain('but the pull leads off the hold: no normal force');
		expect(words).not.toContain('touching');
		expect(words).not.toContain('friction limit');
	});

	test('kilogram-force and pound-force stand alone', () => {
		expect(describeForces(scene({ forceUnit: 'kgf' }))).toContain('The weight of 70 kgf pulls');
		expect(describeForces(scene({ forceUnit: 'lbf' }))).toContain('The weight of 154 lbf pulls');
	});
});
