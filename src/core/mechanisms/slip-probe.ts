import { checkHang } from '../strength/check-hang.ts';
import { contactAt, emptyContact, type Contact } from '../strength/contact-at.ts';
import { prepareHang } from '../strength/prepare-hang.ts';
import type { Hang, Load } from '../types.ts';

/** What happens at one hand under a load. The record is filled anew by each call. */
export type SlipProbe = (load: Pick<Load, 'vertical' | 'horizontal'>) => Readonly<Contact>;

/**
 * Makes ready a hang to be weighed for slipping at many loads: the part of evaluateHang that a
 * curve of slip margin needs, with the checking done once.
 * @param hang the set-up
 * @returns a function from load to contact
 * Valid for: as evaluateHang.
 * @throws RangeError for a field outside its range
 * Source: derived.
 * Example: slipMarginOf(slipProbe(hang)(load)) is evaluateHang(hang, load).slipMargin.
 */
export function slipProbe(hang: Hang): SlipProbe {
	checkHang(hang);
	const prepared = prepareHang(hang);
	const contact = emptyContact();
	return ({ vertical, horizontal }) => contactAt(prepared, vertical, horizontal, contact);
}

/**
 * Finds the slip margin of a contact, with the law's own ratio or another.
 * μ N/Q; 0 where the pull leads off the hold, Infinity where no friction is needed
 * @param contact from a probe
 * @param ratio μ to use instead of the law's
 * @returns slip margin
 * Valid for: as evaluateHang.
 * Source: derived.
 * Example: N 2, Q 1 and ratio 0.6 give 1.2.
 */
export function slipMarginOf(contact: Readonly<Contact>, ratio = contact.ratio): number {
	if (contact.leadsOff) return 0;
	return contact.tangential > 0 ? (ratio * contact.normal) / contact.tangential : Infinity;
}
