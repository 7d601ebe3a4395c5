import type { Hang } from '../types.ts';
import { requireAllowed } from '../units/allowed-range.ts';
import { emptyMovingContact, loadPath, moveAlong } from './along-load.ts';
import { checkHang } from './check-hang.ts';
import { prepareHang } from './prepare-hang.ts';

/**
 * Says how strongly the slip margin moves with load: percent of margin per percent of net mass.
 * d ln(slip margin)/d ln m, taken towards heavier at a kink
 * @param hang the hang, all but its load
 * @param netMass where to look, kg, above 0
 * @returns 0 when load cancels, positive when heavier is easier, negative when heavier is harder;
 * NaN where the slip margin is 0 or Infinity
 * Valid for: along the protocol of loadAtNetMass.
 * @throws RangeError for a field outside its range
 * Source: derived.
 * Example: constant ratio, plumb rope, no push: 0 at every load.
 */
export function loadElasticity(hang: Hang, netMass: number): number {
	checkHang(hang);
	requireAllowed('netMass', netMass, { above: 0, unit: 'kg' });
	const prepared = prepareHang(hang);
	const path = loadPath(prepared, netMass < hang.hangingMass);
	const at = moveAlong(prepared, path, netMass, emptyMovingContact());
	if (at.leadsOff || at.tangential <= 0 || at.frictionLimit <= 0) return NaN;
	return netMass * (at.frictionRate / at.frictionLimit - at.tangentialRate / at.tangential);
}
