import { kilogramsToNewtons } from '#core/units/force.ts';
import { degrees, digits, force } from '../forces/text.ts';
import type { RopeShown } from './rope-geometry.ts';

/** Everything the drawing shows, for those who do not see it. */
export function ropeWords({ rest, rig, hangingMass }: RopeShown): string {
	const side = rig.outward < 0 ? 'toward the wall' : 'away from the wall';
	const plumb = Math.abs(rest.ropeAngle) < 1e-6;
	return [
		`A body hangs by the hands from a hold; a rope runs from it up to a pulley ${digits(rig.height)} m above the hold and ${digits(Math.abs(rig.outward))} m ${rig.outward < 0 ? 'behind' : 'out from'} it.`,
		plumb
			? 'At rest rope and body are plumb.'
			: `At rest the rope stands ${degrees(Math.abs(rest.ropeAngle))} from plumb ${side}, and the body leans ${degrees(rest.bodyLean)} the same way.`,
		`Weight ${force(kilogramsToNewtons(hangingMass), 'N')} down, rope ${force(rest.assistForce, 'N')}, and the hold gives ${force(rest.load.magnitude, 'N')}; the lines of the three forces meet in one point.`
	].join(' ');
}
