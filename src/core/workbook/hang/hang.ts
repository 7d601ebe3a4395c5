import { makeFamily } from '../statics/family.ts';
import * as q from '../statics/quantities.ts';
import { ratioFormula } from './hang-formulas.ts';
import { hangSetup } from './hang-setup.ts';

const mu = q.coefficient('coefficient', 'friction coefficient', '\\mu_0');
const shear = q.quantity('shearStrength', 'shear strength', '\\tau', 'Pa', { min: 0, max: 1e9 });
const reference = q.quantity('referencePressure', 'reference pressure', 'p_0', 'Pa', {
	...{ min: 0, open: true, max: 1e9 }
});
const muDraw: [number, number, number] = [0.4, 0.9, 0.02];

const constant = hangSetup({
	...{
		id: 'hang-constant',
		number: 1,
		title: 'Hang, constant friction ratio',
		law: [mu],
		notes: []
	},
	ratio: ratioFormula(
		['coefficient'],
		(coefficient) => ({ kind: 'constant', coefficient: coefficient! }),
		(_, coefficient) => coefficient!
	),
	practice: { coefficient: muDraw }
});

const adhesion = hangSetup({
	...{ id: 'hang-adhesion', number: 2, title: 'Hang, ratio that falls with pressure (adhesion)' },
	...{
		law: [mu, shear],
		notes: ['A heavier hang is harder: the adhesive part does not grow with load.']
	},
	ratio: ratioFormula(
		['coefficient', 'shearStrength'],
		(coefficient, shearStrength) => ({
			kind: 'adhesion',
			coefficient: coefficient!,
			shearStrength: shearStrength!
		}),
		(p, coefficient, tau) => `${coefficient}+\\frac{${tau}}{${p}}`
	),
	practice: { coefficient: [0.3, 0.6, 0.02], shearStrength: [2e4, 6e4, 1e3] }
});

const power = hangSetup({
	...{ id: 'hang-power', number: 3, title: 'Hang, ratio as a power of pressure' },
	law: [
		mu,
		reference,
		q.quantity('exponent', 'exponent', 'n', '1', { min: 0, open: true, max: 3 })
	],
	notes: [
		'An exponent below 1 makes heavier harder, above 1 easier; no published hang shows the latter.'
	],
	ratio: ratioFormula(
		['coefficient', 'referencePressure', 'exponent'],
		(coefficient, referencePressure, exponent) => ({
			...{ kind: 'power', coefficient: coefficient! },
			...{ referencePressure: referencePressure!, exponent: exponent! }
		}),
		(p, coefficient, p0, n) => `${coefficient}\\left(\\frac{${p}}{${p0}}\\right)^{${n}-1}`
	),
	practice: { coefficient: muDraw, referencePressure: [2e5, 3e5, 1e4], exponent: [0.75, 1.1, 0.05] }
});

const deformation = hangSetup({
	...{ id: 'hang-deformation', number: 4, title: 'Hang, ratio that falls and rises again' },
	law: [
		...[mu, shear, reference],
		q.quantity('deformation', 'deformation part', 'd', '1', { min: 0, max: 100 })
	],
	notes: ['Two loads may be at the edge. Least supported on slick holds.'],
	ratio: ratioFormula(
		['coefficient', 'shearStrength', 'deformation', 'referencePressure'],
		(coefficient, shearStrength, part, referencePressure) => ({
			...{ kind: 'deformation', coefficient: coefficient!, shearStrength: shearStrength! },
			...{ deformation: part!, referencePressure: referencePressure! }
		}),
		(p, coefficient, tau, d, p0) =>
			`${coefficient}+\\frac{${tau}}{${p}}+${d}\\left(\\frac{${p}}{${p0}}\\right)^{1/3}`
	),
	practice: {
		...{ coefficient: [0.25, 0.5, 0.01], shearStrength: [1e4, 3e4, 1e3] },
		...{ deformation: [0.05, 0.2, 0.01], referencePressure: [1e5, 1.2e5, 1e3] }
	}
});

const film = hangSetup({
	...{ id: 'hang-film', number: 5, title: 'Hang, ratio that rises through a film' },
	law: [
		q.coefficient('filmCoefficient', 'friction coefficient on the film', '\\mu_f'),
		mu,
		q.quantity('breakthroughPressure', 'pressure of breakthrough', 'p_b', 'Pa', {
			min: 0,
			open: true,
			max: 1e9
		}),
		q.quantity('sharpness', 'sharpness of breakthrough', 'b', '1', {
			min: 0,
			open: true,
			max: 20,
			default: 1
		})
	],
	notes: ['A heavier hang is easier until the film is through; no published hang shows it.'],
	ratio: ratioFormula(
		['filmCoefficient', 'coefficient', 'breakthroughPressure', 'sharpness'],
		(filmCoefficient, coefficient, breakthroughPressure, sharpness) => ({
			...{ kind: 'film', filmCoefficient: filmCoefficient!, coefficient: coefficient! },
			...{ breakthroughPressure: breakthroughPressure!, sharpness: sharpness! }
		}),
		(p, low, high, pb, b) =>
			`${low}+\\left(${high}-${low}\\right)\\left(1-e^{-\\left(${p}/${pb}\\right)^{${b}}}\\right)`
	),
	practice: {
		...{ filmCoefficient: [0.3, 0.45, 0.01], coefficient: [0.6, 0.9, 0.02] },
		...{ breakthroughPressure: [1e5, 2e5, 1e4], sharpness: [1, 2, 0.5] }
	}
});

/**
 * The hang itself: every load at which it is about to slip, "any load" where load cancels.
 * Source: derived
 * Example: hang.solve({ slope: 0.5585053606381855, hangingMass: 70, coefficient: 0.64,
 * arrangement: 1 }, 'netMass') gives the regime 'any load' and no solution: load cancels.
 */
export const hang = makeFamily('hang', 'The hang', [constant, adhesion, power, deformation, film]);
