import type { Caution } from '#core/trials/cautions.ts';
import { formatNumber } from '#core/units/format-number.ts';
import { massText, type MassUnit } from '#core/units/mass-text.ts';

/** A caution that raised itself, in words for people. */
export function cautionWords(caution: Caution, unit: MassUnit): string {
	switch (caution.kind) {
		case 'no-trials':
			return 'No trials yet: nothing has been learned.';
		case 'pain':
			return 'Pain was noted with this grip. Nothing is suggested: stop, and see a clinician if it stays.';
		case 'few-trials': {
			const { trials, stuck, slipped } = caution;
			const count = trials === 1 ? 'One trial' : `${trials} trials`;
			return `${count} (${slipped} slipped, ${stuck} did not) cannot tell these stories apart. Even a perfect split of 3 and 3 happens by luck 1 time in 10.`;
		}
		case 'all-alike': {
			const load = massText(caution.load, unit);
			if (caution.stage === 'slip')
				return caution.outcome === 'yes'
					? `Nothing slipped up to ${load}: nothing is known yet about slipping.`
					: `Everything slipped, down to ${load}: make the hold easier before asking about load.`;
			return caution.outcome === 'yes'
				? `The fingers never opened up to ${load}: you have only learned that their limit is likely above it.`
				: `The fingers opened every time, down to ${load}: you have only learned that their limit is likely below it.`;
		}
		case 'clean-split':
			return `Clean split so far (${caution.stage === 'slip' ? 'slipping' : 'opening'}): the spread shown comes mostly from the starting guess.`;
		case 'loads-too-alike':
			return `Loads are too alike to show a trend: the heaviest is ${formatNumber(caution.ratio)} times the lightest. Spread them by half or more.`;
		case 'rope-never-moved':
			return 'The rope was never moved. A rope off to one side looks just like better grip under load: swap sides.';
		case 'tangled':
			return `${caution.measure === 'load' ? 'Load' : 'Rope side'} and order are tangled (r = ${formatNumber(caution.correlation, { digits: 2 })}): tiring or warming up could look like a ${caution.measure === 'load' ? 'load' : 'rope'} effect.`;
		case 'several-sessions':
			return `${caution.sessions} sessions are mixed: skin, air and day differ. A shift from session to session is allowed for.`;
		case 'causes-unseen':
			return `The cause was not seen in ${formatNumber(100 * caution.share, { digits: 2 })} % of the trials: ask someone to watch the fingertips, or film them.`;
		case 'stopped-counted-both-ways':
			return `${caution.stopped} stopped: the opening limit is computed with them left out and counted as opened; caps use the lower.`;
	}
}

/** What always holds, whatever the trials. */
export const alwaysTrue =
	'One person, one surface, these days: the answer goes no further. If slipping and opening hang together, both limits move. Times past the target are unknown, not equal to it. Look at many grips and stories, and some will look clear by luck.';
