import { describe, test } from 'vitest';
import { tendonForces } from '#core/index.ts';
import { pulleyForce } from '#core/strength/pulley-force.ts';
import { within } from '#test/within.ts';

// Own, not outside: worked by the same people from the same equations. The "An" arms and the
// slope-grip ratio 0.88 are from memory.

const degree = Math.PI / 180;
const ketchum = { fdpDip: 6.5, fdpPip: 9.8, fdsPip: 8.3 };
const an = { fdpDip: 4.1, fdpPip: 7.9, fdsPip: 6.2 };

/** Lengths in mm and a unit force: moments are then in mm and tensions in units of the force. */
const vectors = [
	['V1 open', 12, 0, 50, 25, 0, [0, 1], [12, 26.386, 36.681], [1.8462, 0.9992], [2.9268, 0.5264]],
	['V2 nearer', 8, 0, 50, 25, 0, [0, 1], [8, 22.386, 32.681], [1.2308, 1.2439], [1.9512, 1.1243]],
	[
		'V3 slope',
		12,
		-30,
		20,
		25,
		0,
		[0, 1],
		[12.892, 27.278, 37.574],
		[1.9834, 0.9446],
		[3.1445, 0.393]
	],
	[
		'V4 slope',
		8,
		-30,
		20,
		25,
		0,
		[0, 1],
		[9.428, 23.814, 34.11],
		[1.4505, 1.1565],
		[2.2996, 0.9108]
	],
	[
		'V5 half',
		12,
		20,
		0,
		70,
		0,
		[0, 1],
		[9.566, 30.597, 56.167],
		[1.4717, 1.9486],
		[2.3332, 1.9619]
	],
	[
		'V6 crimp',
		12,
		20,
		-20,
		95,
		0.25,
		[0, 1],
		[9.566, 26.71, 49.527],
		[1.1038, 1.9148],
		[1.7499, 2.0784]
	],
	[
		'V7 crimp, pull',
		12,
		20,
		-20,
		95,
		0.25,
		[-0.2, 1],
		[11.327, 31.348, 47.648],
		[1.3069, 2.2337],
		[2.072, 2.416]
	]
] as const;

function chain(
	o: { d: number; pitch: number; dip: number; pip: number; k: number; force: readonly number[] },
	arms: typeof ketchum
) {
	return tendonForces({
		contactDistance: o.d,
		pitch: o.pitch * degree,
		dipFlexion: o.dip * degree,
		pipFlexion: o.pip * degree,
		boneDepth: 5,
		middleLength: 22.38,
		proximalLength: 39.78,
		arms,
		passiveDipShare: o.k,
		force: { x: o.force[0]!, y: o.force[1]! }
	});
}

describe('own check values, not an outside source: index finger', () => {
	test.each(vectors)('%s', (_name, d, pitch, dip, pip, k, force, moments, byKetchum, byAn) => {
		const o = { d, pitch, dip, pip, k, force };
		const one = chain(o, ketchum);
		within(one.dipMoment, moments[0], { absolute: 6e-4 });
		within(one.pipMoment, moments[1], { absolute: 6e-4 });
		within(one.mcpMoment, moments[2], { absolute: 6e-4 });
		within(one.fdp, byKetchum[0], { absolute: 6e-5 });
		within(one.fds, byKetchum[1], { absolute: 6e-5 });
		const other = chain(o, an);
		within(other.fdp, byAn[0], { absolute: 6e-5 });
		within(other.fds, byAn[1], { absolute: 6e-5 });
	});

	test('a contact 4 mm nearer the joint takes a third off the deep flexor on a flat open grip', () => {
		const open = { pitch: 0, dip: 50, pip: 25, k: 0, force: [0, 1] };
		const ratio = chain({ ...open, d: 8 }, ketchum).fdp / chain({ ...open, d: 12 }, ketchum).fdp;
		within(ratio, 0.6667, { absolute: 1e-4 });
	});

	test('slope grip: FDP:FDS 0.88 (from memory) needs a moment ratio of 2.959', () => {
		const d = 10;
		const dip = Math.acos((1.959 * d) / 22.38) / degree;
		const { fdp, fds } = chain({ d, pitch: 0, dip, pip: 25, k: 0, force: [0, 1] }, ketchum);
		within(fdp / fds, 0.88, { absolute: 1e-3 });
	});

	test('pulley rule', () => {
		within(pulleyForce(1, 90 * degree), 0.7654, { absolute: 1e-4 });
		within(pulleyForce(1, 25 * degree), 0.2177, { absolute: 1e-4 });
	});
});
