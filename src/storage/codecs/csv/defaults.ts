import type { Value } from './cells.ts';
import type { Part } from './columns.ts';

/** What stands in for a cell that is absent, and what is then said once about the file. */
type StandIn = { value: Value; said: string | null };

const silent = (value: Value): StandIn => ({ value, said: null });
const said = (value: Value, text: string): StandIn => ({ value, said: text });

/** Stand-ins by record and field; fields not listed must be in the file. */
export function defaults(today: string): Record<Part, Record<string, StandIn>> {
	return {
		person: {
			label: said('Not named', 'Rows without a person go to “Not named”.'),
			bodyMassKg: silent(null),
			adult: said(false, 'Where the file does not say adult, the person is not marked adult.')
		},
		hold: {
			label: said('Not named', 'Rows without a hold go to “Not named”.'),
			slopeDegrees: silent(null),
			slopeMethod: silent(''),
			radiusMm: silent(null),
			surface: silent(''),
			condition: silent('')
		},
		grip: {
			label: said('Not named', 'Rows without a grip go to “Not named”.'),
			fingers: said(4, 'Where the file does not say how many fingers, 4 are taken.'),
			hands: said(2, 'Where the file does not say how many hands, 2 are taken.'),
			patchMm2: silent(null)
		},
		session: {
			day: said(today, `Rows without a day are taken as of ${today}.`),
			bodyMassKg: silent(null),
			targetSeconds: silent(null),
			restSeconds: silent(null),
			brushing: silent(''),
			chalk: silent(''),
			skin: silent(''),
			airCelsius: silent(null),
			humidityPercent: silent(null),
			checkLoadKg: silent(null),
			planId: silent(null),
			plannedTrials: silent(null),
			meanRopeTerm: silent(null),
			note: silent('')
		},
		trial: {
			kind: silent('test'),
			reached: silent('unknown'),
			addedKg: silent(null),
			counterweightKg: silent(null),
			ropeDegrees: silent(null),
			ropeSide: silent(null),
			seconds: silent(null),
			stopReason: silent(null),
			brushed: silent(null),
			note: silent(''),
			leftOut: silent(null),
			loggedAt: silent(null)
		}
	};
}
