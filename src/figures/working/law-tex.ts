import type { FrictionLaw } from '#core/types.ts';
import { quantityTex } from './quantity-tex.ts';

const kilopascals = (pascals: number) => quantityTex(pascals / 1e3, 'kPa');

/** A friction law in TeX: in symbols, and with its numbers and a pressure (Pa) put in. */
export function lawTex(law: FrictionLaw, pressure: number): { formula: string; numbers: string } {
	const p = kilopascals(pressure);
	const mu = quantityTex(law.coefficient);
	switch (law.kind) {
		case 'constant':
			return { formula: '\\mu_0', numbers: mu };
		case 'adhesion':
			return {
				formula: '\\mu_0+\\frac{\\tau_0}{p}',
				numbers: `${mu}+\\frac{${kilopascals(law.shearStrength)}}{${p}}`
			};
		case 'power':
			return {
				formula: '\\mu_0\\left(\\frac{p}{p_0}\\right)^{n-1}',
				numbers: `${mu}\\left(\\frac{${p}}{${kilopascals(law.referencePressure)}}\\right)^{${quantityTex(law.exponent - 1)}}`
			};
		case 'deformation':
			return {
				formula: '\\mu_0+\\frac{\\tau_0}{p}+\\mu_d\\left(\\frac{p}{p_0}\\right)^{1/3}',
				numbers: `${mu}+\\frac{${kilopascals(law.shearStrength)}}{${p}}+${quantityTex(law.deformation)}\\left(\\frac{${p}}{${kilopascals(law.referencePressure)}}\\right)^{1/3}`
			};
		case 'film':
			return {
				formula: '\\mu_f+(\\mu_0-\\mu_f)\\left(1-e^{-(p/p_b)^{k}}\\right)',
				numbers: `${quantityTex(law.filmCoefficient)}+(${mu}-${quantityTex(law.filmCoefficient)})\\left(1-e^{-(${p}/${kilopascals(law.breakthroughPressure)})^{${quantityTex(law.sharpness)}}}\\right)`
			};
	}
}
