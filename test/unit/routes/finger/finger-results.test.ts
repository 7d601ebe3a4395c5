import { describe, expect, test } from 'vitest';
import { computeResults } from '#state/setup/results.ts';
import { firstSight, type Setup } from '#storage/codecs/setup.ts';
import { within } from '#test/within.ts';
import { fingerResults, sharesOf } from '../../../../src/routes/finger/finger-results.ts';
import {
	posed,
	readPose,
	startPose,
	writePose,
	type Pose
} from '../../../../src/routes/finger/pose.ts';

const resultsOf = (patch: Partial<Setup> = {}) => computeResults({ ...firstSight, ...patch });

describe('one finger at the load of a set-up', () => {
	test('the four shares carry the hand’s force between them', () => {
		for (const fingers of [1, 2, 3, 4]) {
			const { all, handForce } = fingerResults(resultsOf({ fingers }), startPose);
			const sum = all.reduce((total, { force }) => total + force, 0);
			within(sum, handForce, { relative: 1e-12 });
			expect(all.filter(({ share }) => share > 0)).toHaveLength(fingers);
		}
	});

	test('shares that do not make 100 are scaled; none at all are taken alike', () => {
		const shares = sharesOf(3, { ...startPose, index: 10, middle: 20, ring: 10 });
		expect(shares).toEqual({ index: 0.25, middle: 0.5, ring: 0.25, little: 0 });
		const none = sharesOf(2, { ...startPose, index: 0, middle: 0 });
		expect([none.middle, none.index, none.ring]).toEqual([0.5, 0.5, 0]);
	});

	test('the moments at this load balance: flexors against the hold’s force', () => {
		const { chosen } = fingerResults(resultsOf({ slope: 30 }), startPose);
		const { perNewton, arms } = chosen;
		within(perNewton.fdp * arms.fdpDip, perNewton.dipMoment, { relative: 1e-12 });
		within(perNewton.fdp * arms.fdpPip + perNewton.fds * arms.fdsPip, perNewton.pipMoment, {
			relative: 1e-12
		});
	});

	test('4 mm nearer the palm takes the same off all three moments', () => {
		const { chosen, moved } = fingerResults(resultsOf(), startPose);
		const off = (key: 'dipMoment' | 'pipMoment' | 'mcpMoment') =>
			chosen.perNewton[key] - moved.perNewton[key];
		const expected = 0.004 * Math.cos(chosen.chain.pitch);
		for (const key of ['dipMoment', 'pipMoment', 'mcpMoment'] as const)
			within(off(key), expected, { relative: 1e-9 });
		expect(moved.perNewton.fdp).toBeLessThan(chosen.perNewton.fdp);
		expect(moved.perNewton.fds).toBeGreaterThan(chosen.perNewton.fds);
	});

	test('An’s arms are known for the index finger only; others fall back on Ketchum’s', () => {
		const of = (pose: Partial<Pose>) => fingerResults(resultsOf(), { ...startPose, ...pose });
		expect(of({ arms: 'an' }).chosen.set).toBe('an');
		expect(of({ arms: 'an', finger: 'ring' }).chosen.set).toBe('ketchum');
		expect(of({ finger: 'ring' }).sets.an).toBeUndefined();
	});

	test('a finger that is not on the hold carries nothing, and its chain is still known', () => {
		const { chosen } = fingerResults(resultsOf({ fingers: 3 }), { ...startPose, finger: 'little' });
		expect(chosen.force).toBe(0);
		expect(chosen.perNewton.fdp).toBeGreaterThan(0);
	});

	test('every pose within its ranges gives finite numbers', () => {
		for (const pip of [-10, 0, 60, 120])
			for (const dip of [-30, 0, 80])
				for (const shift of [-6, 0, 10])
					for (const pitch of [-30, 60]) {
						const pose = posed(startPose, { pip, dip, shift, pitch, passive: 0.5 });
						const { chosen, moved } = fingerResults(resultsOf({ slope: 60 }), pose);
						for (const one of [chosen, moved])
							for (const value of [one.perNewton.fdp, one.perNewton.fds, one.mcp, one.pulley])
								expect(Number.isFinite(value)).toBe(true);
					}
	});
});

describe('a pose in the address', () => {
	test('the start is not written; anything else is read back', () => {
		expect(writePose(startPose)).toEqual([]);
		const pose = posed(startPose, {
			pip: 87,
			shift: 4,
			armDip: 5.5,
			ring: 31,
			finger: 'ring',
			arms: 'an'
		});
		const { pose: read, notes } = readPose(new URLSearchParams(writePose(pose)));
		expect(read).toEqual(pose);
		expect(notes).toEqual([]);
	});

	test('a damaged pose is mended and said', () => {
		const { pose, notes } = readPose(
			new URLSearchParams('pip=400&finger=thumb&arms=mine&armDip=0.5')
		);
		expect([pose.pip, pose.finger, pose.arms, pose.armDip]).toEqual([120, 'index', 'ketchum', 2]);
		expect(notes).toHaveLength(3);
	});
});
