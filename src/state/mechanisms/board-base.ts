import { plainHang } from '#core/mechanisms/plain-hang.ts';
import { evaluateHang, type HangResult } from '#core/strength/evaluate-hang.ts';
import type { Hang } from '#core/types.ts';
import { lightestNet, type Setup } from '#storage/codecs/setup.ts';
import { hangOf, loadOf, netMassOf } from '../setup/to-hang.ts';

/** What every curve of the board is drawn on. */
export type BoardBase = {
	/** The person's own hang, as Explore has it. */
	hang: Hang;
	/** The same with everything taken away that makes load matter. */
	plain: Hang;
	/** kg */
	netMass: number;
	contact: HangResult;
	/** Loads shown, kg: the same for every mechanism. */
	range: { from: number; to: number };
	/** False where no friction is needed or the pull leads off: no curve can pass through the point. */
	drawable: boolean;
};

/** Part of the hanging mass at which the load axis starts, and how far it reaches past it. */
const shown = { from: 0.4, to: 1.5 };

/**
 * Computes what the board's curves start from.
 * Throws the core's RangeError where the set-up cannot be computed.
 */
export function boardBase(setup: Setup): BoardBase {
	const hang = hangOf(setup);
	const netMass = netMassOf(setup);
	const contact = evaluateHang(hang, loadOf(setup));
	const { slipMargin } = contact;
	return {
		hang,
		plain: plainHang(hang, netMass),
		netMass,
		contact,
		range: {
			from: Math.max(lightestNet, Math.min(shown.from * setup.body, netMass)),
			to: Math.max(shown.to * setup.body, netMass)
		},
		drawable: slipMargin > 0 && slipMargin < Infinity
	};
}
