/**
 * Gives the order term of a trial: how far it stands from the middle of the session.
 *
 * order = (trial number − (planned number + 1)/2)/10, fixed when the plan is made, so that trials
 * added or left out later do not move the others.
 *
 * @param number trial number, counted from 1 after the warm-up
 * @param plannedNumber how many trials the plan has after the warm-up, whole, 1 or more
 * @returns tens of trials from the middle; negative before it
 * @throws RangeError when the planned number is not a whole number of 1 or more
 * Source: derived
 * Example: orderTerm(1, 21) → -1
 */
export function orderTerm(number: number, plannedNumber: number): number {
	if (!Number.isInteger(plannedNumber) || plannedNumber < 1) {
		throw new RangeError(`plannedNumber is ${plannedNumber}; it must be a whole number from 1`);
	}
	return (number - (plannedNumber + 1) / 2) / 10;
}
