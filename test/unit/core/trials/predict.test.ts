import { describe, expect, test } from 'vitest';
import { openRows } from '#core/trials/open-rows.ts';
import { predictPairs } from '#core/trials/predict-pairs.ts';
import { predictTogether } from '#core/trials/predict-together.ts';
import { settingsOf } from '#core/trials/settings.ts';
import { fitOpen, fitSlip } from '#core/trials/stage-fit.ts';
import type { Trial } from '#core/trials/trial.ts';
import { rowsFor } from '#core/trials/two-stages.ts';
import { unseenPlaces } from '#core/trials/unseen-cause.ts';
import { within } from '#test/within.ts';

const settings = settingsOf({ referenceLoad: 50, bestGuess: 70, lapse: 0.02 });
const version = { story: 'rises', withOrder: false } as const;
const seen = [40, 45, 50, 55, 60, 64].map((load, k): Trial => ({
	load,
	outcome: load < 48 ? 'slipped' : load > 62 ? 'opened' : 'held',
	order: k / 10,
	ropeTerm: 0
}));
const unseenAt = (loads: number[]) =>
	loads.map((load): Trial => ({ load, outcome: 'unknown', order: 0, ropeTerm: 0 }));

describe('predictions with causes that were not seen', () => {
	// Own second way, not outside: both ways add up the same belief.
	test.each([[[52]], [[52, 52, 52]], [[44, 52, 60, 52]]])(
		'at %j kg: term by term and pair by pair agree',
		(loads) => {
			const trials = [...seen, ...unseenAt(loads)];
			const slip = fitSlip(rowsFor(trials, version, 50), version, settings);
			const open = fitOpen(openRows(trials, 50, 'left-out'), settings);
			const unseen = unseenPlaces(trials, 50);
			const places = [45, 58, 66].map((load) => ({
				lnLoad: Math.log(load / 50),
				ropeTerm: 0,
				order: 0
			}));
			const terms = predictTogether(slip, open, unseen, places);
			const pairs = predictPairs({
				...{ slip, open },
				slips: places.map((place) => slip.chances(place)),
				opens: places.map((place) => open.chances(place)),
				unseenSlips: unseen.map((place) => slip.chances(place)),
				unseenOpens: unseen.map((place) => open.chances(place))
			});
			terms.forEach((one, k) => {
				for (const field of ['information', 'chanceHeld', 'chanceSlipped', 'chanceOpened'] as const)
					within(one[field], pairs[k]![field], { absolute: 1e-10 });
				expect(one.chanceHeld).toBeGreaterThan(0);
			});
		}
	);
});
