import type { Quantity, Unit } from './types.ts';

/** Makes a quantity; name, symbol and unit as they stand on the page. */
export function quantity(
	id: string,
	name: string,
	symbol: string,
	unit: Unit,
	rest: Partial<Quantity> = {}
): Quantity {
	return { id, name, symbol, unit, min: -Infinity, max: Infinity, ...rest };
}

type More = Partial<Quantity>;
const positive: More = { min: 0, open: true };

export const mass = (id = 'mass', name = 'mass', symbol = 'm', more: More = {}) =>
	quantity(id, name, symbol, 'kg', { ...positive, max: 1e9, ...more });
export const weight = (id = 'weight', name = 'weight', symbol = 'W', more: More = {}) =>
	quantity(id, name, symbol, 'N', { ...positive, max: 1e10, ...more });
/** A force that the set-up lets act one way only. */
export const force = (id: string, name: string, symbol: string, more: More = {}) =>
	quantity(id, name, symbol, 'N', { min: 0, max: 1e10, ...more });
/** A force whose sign says which way it acts. */
export const signedForce = (id: string, name: string, symbol: string, more: More = {}) =>
	quantity(id, name, symbol, 'N', { min: -1e10, max: 1e10, ...more });
export const length = (id: string, name: string, symbol: string, more: More = {}) =>
	quantity(id, name, symbol, 'm', { ...positive, max: 1e6, ...more });
export const fraction = (id: string, name: string, symbol: string, more: More = {}) =>
	quantity(id, name, symbol, '1', { min: 0, max: 1, ...more });
/** A plain number, not negative. */
export const ratio = (id: string, name: string, symbol: string, more: More = {}) =>
	quantity(id, name, symbol, '1', { min: 0, max: 1e6, ...more });
export const coefficient = (id: string, name: string, symbol: string, more: More = {}) =>
	quantity(id, name, symbol, '1', { min: 0, max: 100, ...more });
/** An angle between 0 and 90°, both allowed. */
export const slope = (id = 'slope', name = 'slope', symbol = '\\theta', more: More = {}) =>
	quantity(id, name, symbol, 'rad', { min: 0, max: Math.PI / 2, ...more });
/** An angle within half a turn either way. */
export const direction = (id: string, name: string, symbol: string, more: More = {}) =>
	quantity(id, name, symbol, 'rad', { min: -Math.PI, max: Math.PI, ...more });
export const acceleration = (id: string, name: string, symbol: string, more: More = {}) =>
	quantity(id, name, symbol, 'm/s²', { min: -1e6, max: 1e6, ...more });
export const speed = (id = 'speed', name = 'speed', symbol = 'v', more: More = {}) =>
	quantity(id, name, symbol, 'm/s', { min: 0, max: 1e6, ...more });
export const time = (id = 'time', name = 'time', symbol = 't', more: More = {}) =>
	quantity(id, name, symbol, 's', { min: 0, max: 1e9, ...more });
export const torque = (id: string, name: string, symbol: string, more: More = {}) =>
	quantity(id, name, symbol, 'N·m', { min: 0, max: 1e12, ...more });

/** Standard gravity unless the student chooses 9.8, 9.81 or 10. */
export const gravity = quantity('gravity', 'gravitational field g', 'g', 'm/s²', {
	min: 0,
	open: true,
	max: 100,
	default: 9.80665
});
export const muStatic = (more: More = {}) =>
	coefficient('muStatic', 'static friction coefficient', '\\mu_s', {
		default: 'muKinetic',
		...more
	});
export const muKinetic = (more: More = {}) =>
	coefficient('muKinetic', 'kinetic friction coefficient', '\\mu_k', {
		default: 'muStatic',
		...more
	});
