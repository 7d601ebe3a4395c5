import { native, type Native } from '../algebra/expression.ts';
import { frictionRatio } from '../../friction/friction-ratio.ts';
import { loadAtNetMass } from '../../mechanics/load-at-net-mass.ts';
import { evaluateHang } from '../../strength/evaluate-hang.ts';
import type { FrictionLaw, Hang } from '../../types.ts';

/** The value, or NaN where the mechanics refuses the numbers. */
function orNothing(value: () => number): number {
	try {
		return value();
	} catch (error) {
		if (error instanceof RangeError) return NaN;
		throw error;
	}
}

/** Gravity behind a mass: its letter behind a letter, its number behind a number. */
const g = (mass: string) => (/\d/.test(mass) ? '\\cdot 9.807\\,\\mathrm{m/s^2}' : '\\,g');

/** Downward and outward load on both hands, from the mechanics. */
export const verticalLoad: Native = native(
	['netMass', 'hangingMass', 'ropeAngle', 'push'],
	(netMass, hangingMass, ropeAngle, push) =>
		orNothing(
			() =>
				loadAtNetMass(netMass!, { hangingMass: hangingMass!, ropeAngle: ropeAngle!, push: push! })
					.vertical
		),
	(netMass) => `${netMass}${g(netMass!)}`
);
export const horizontalLoad: Native = native(
	['netMass', 'hangingMass', 'ropeAngle', 'push'],
	(netMass, hangingMass, ropeAngle, push) =>
		orNothing(
			() =>
				loadAtNetMass(netMass!, { hangingMass: hangingMass!, ropeAngle: ropeAngle!, push: push! })
					.horizontal
		),
	(netMass, hangingMass, ropeAngle, push) =>
		`\\max\\left(0,\\,${hangingMass}${g(hangingMass!)}-${netMass}${g(netMass!)}\\right)\\tan\\left(${ropeAngle}\\right)+${push}`
);

/** A friction law of the core as a formula of pressure and its own numbers. */
export function ratioFormula(
	names: string[],
	law: (...numbers: number[]) => FrictionLaw,
	write: (...texts: string[]) => string
): Native {
	return native(
		['pressure', ...names],
		(pressure, ...numbers) => orNothing(() => frictionRatio(law(...numbers), pressure!)),
		write
	);
}

/** Pads and edge that the strength side takes as given, m. */
export const pads = { padWidth: 0.016, padLength: 0.021, padDepth: 0.005, edgeDepth: 0.02 };

/** A hang of the core from the workbook's numbers. */
export function hangFrom(v: Record<string, number>, friction: FrictionLaw): Hang {
	const { padWidth, padLength, padDepth, edgeDepth } = pads;
	return {
		...{ hangingMass: v.hangingMass!, ropeAngle: v.ropeAngle!, push: v.push!, slope: v.slope! },
		...{ hands: v.hands === 1 ? 1 : 2, friction },
		grip: {
			...{ fingers: v.fingers!, padWidth, padLength, padDepth },
			contact: { kind: 'fixed', padArea: v.padArea! }
		},
		strength: { referenceForce: v.referenceForce!, referenceEdgeDepth: edgeDepth, holdTime: 5 }
	};
}

const strengthNames = [
	...['netMass', 'hangingMass', 'ropeAngle', 'push', 'hands', 'slope', 'fingers', 'padArea'],
	'referenceForce'
];

/** Largest force that the fingers of one hand hold, from the mechanics; it does not ask for the friction law. */
export const strengthLimit: Native = native(
	strengthNames,
	(...numbers) => {
		const v = Object.fromEntries(strengthNames.map((name, index) => [name, numbers[index]!]));
		return orNothing(() => {
			const load = loadAtNetMass(v.netMass!, {
				hangingMass: v.hangingMass!,
				ropeAngle: v.ropeAngle!,
				push: v.push!
			});
			return evaluateHang(hangFrom(v, { kind: 'constant', coefficient: 1 }), load).strengthLimit;
		});
	},
	(...texts) => `${texts.at(-1)}\\cdot\\frac{\\ell_{flat}}{\\ell}`
);

/** Slip margin with the mechanics' rule that a hold that needs no friction cannot slip. */
export const slipMargin: Native = native(
	['frictionLimit', 'tangential'],
	(limit, tangential) => (tangential! > 0 ? limit! / tangential! : Infinity),
	(limit, tangential) => `\\frac{${limit}}{${tangential}}`
);
