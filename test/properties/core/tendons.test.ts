import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { tendonForces } from '#core/index.ts';
import { within } from '#test/within.ts';
import { between } from './hangs.ts';

const anyFinger = fc.record({
	contactDistance: between(0.004, 0.02),
	pitch: between(-1.2, 0.8),
	dipFlexion: between(-0.5, 1.2),
	pipFlexion: between(0, 1.8),
	boneDepth: between(0, 0.008),
	middleLength: between(0.015, 0.03),
	proximalLength: between(0.03, 0.05),
	arms: fc.record({
		fdpDip: between(0.003, 0.008),
		fdpPip: between(0.007, 0.012),
		fdsPip: between(0.006, 0.013)
	}),
	force: fc.record({ x: between(-50, 50), y: between(-100, 100) }),
	passiveDipShare: between(0, 0.5)
});

/**
 * The chain worked the other way round: joint by joint from the tip, each segment a free body that
 * hands on the force and the moment at its end, all in the segment's own axes.
 */
function freeBodies(o: typeof anyFinger extends fc.Arbitrary<infer T> ? T : never) {
	const inAxesOf = (angle: number) => ({
		along: o.force.x * Math.cos(angle) + o.force.y * Math.sin(angle),
		across: -o.force.x * Math.sin(angle) + o.force.y * Math.cos(angle)
	});
	const end = inAxesOf(o.pitch);
	const dip = o.contactDistance * end.across - o.boneDepth * end.along;
	const middle = inAxesOf(o.pitch - o.dipFlexion);
	const pip = dip + o.middleLength * middle.across;
	const proximal = inAxesOf(o.pitch - o.dipFlexion - o.pipFlexion);
	return { dip, pip, mcp: pip + o.proximalLength * proximal.across };
}

describe('the finger chain', () => {
	test('its moments are those of a free-body sum', () => {
		fc.assert(
			fc.property(anyFinger, (finger) => {
				const result = tendonForces(finger);
				const expected = freeBodies(finger);
				within(result.dipMoment, expected.dip, { absolute: 1e-12 });
				within(result.pipMoment, expected.pip, { absolute: 1e-12 });
				within(result.mcpMoment, expected.mcp, { absolute: 1e-12 });
			})
		);
	});

	test('tendons never push, and balance the joints wherever nothing is warned about', () => {
		fc.assert(
			fc.property(anyFinger, (finger) => {
				const { fdp, fds, dipMoment, pipMoment, warnings } = tendonForces(finger);
				expect(Math.min(fdp, fds)).toBeGreaterThanOrEqual(0);
				if (warnings.length > 0) return;
				const { fdpDip, fdpPip, fdsPip } = finger.arms;
				within(fdp * fdpDip, (1 - finger.passiveDipShare) * dipMoment, { absolute: 1e-12 });
				within(fdp * fdpPip + fds * fdsPip, pipMoment, { absolute: 1e-12 });
			})
		);
	});
});
