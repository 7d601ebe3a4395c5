import { hangLoad } from '#core/mechanics/hang-load.ts';
import { loadFromForces } from '#core/mechanics/load-from-forces.ts';
import { evaluateHang } from '#core/strength/evaluate-hang.ts';
import type { ForcesShown } from '#figures/forces/types.ts';

export const degree = Math.PI / 180;

/** An invented 70 kg person on a 32° slope, with what a test changes. */
export function scene(change: {
	assistForce?: number;
	ropeAngle?: number;
	push?: number;
	slope?: number;
	radius?: number;
	fingers?: number;
	hands?: 1 | 2;
	padArea?: number;
	coefficient?: number;
	forceUnit?: ForcesShown['forceUnit'];
}): ForcesShown {
	const { assistForce = 0, ropeAngle = 0, push = 0, slope = 32 * degree } = change;
	const { fingers = 4, hands = 2, padArea = 250e-6, coefficient = 0.64 } = change;
	const pulled = hangLoad({ bodyMass: 70, assistForce, assistAngle: ropeAngle });
	const load = loadFromForces(pulled.vertical, pulled.horizontal + push);
	const hang: ForcesShown['hang'] = {
		...{ hangingMass: 70, ropeAngle, push, hands, slope },
		...(change.radius === undefined ? {} : { radius: change.radius }),
		friction: { kind: 'constant', coefficient },
		grip: {
			...{ fingers, padWidth: 0.016, padLength: 0.021, padDepth: 0.005 },
			contact: { kind: 'fixed', padArea }
		},
		strength: { referenceForce: 392.266, referenceEdgeDepth: 0.02, holdTime: 5 }
	};
	return {
		...{ hang, load, contact: evaluateHang(hang, load) },
		person: { bodyMass: 70, addedMass: 0, assistForce, ropeAngle, push },
		forceUnit: change.forceUnit ?? 'N'
	};
}
