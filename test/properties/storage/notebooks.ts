import fc from 'fast-check';
import { makePlan } from '#core/trials/plan/make-plan.ts';
import type { PlanChoice } from '#core/trials/plan/types.ts';
import type { Notebook, Trial } from '#storage/codecs/notebook/records.ts';

/** Text that has broken other people’s tables: formulas, quotes, markup, breaks, odd signs. */
const hostile = fc.constantFrom(
	...[
		'=1+1',
		"'=1+1",
		"''=A1",
		'@SUM(A1)',
		'+49',
		'-2',
		'\t=1',
		' =1',
		'a;=1+1',
		'a\t=1',
		'a\r\n=1'
	],
	...['"', '""', '"a",b', 'a\nb', 'a\rb', '\r', '\n', ',', ';', "'", "'tis", '＝1', '\u00a0=1'],
	...['<script>alert(1)</script>', '{{x}}', '\u0000', '\ufeff', '\ufeff=1', '𝄞', 'é', '\u202eabc'],
	...['null', 'undefined', '__proto__', 'constructor', 'NaN', '1e999', 'yes', '0', ' ', '  x  ']
);
const piece = fc.oneof(hostile, fc.string({ unit: 'binary', maxLength: 12 }));
const free = fc.oneof(
	fc.constant(''),
	piece,
	fc.array(piece, { maxLength: 4 }).map((parts) => parts.join(''))
);
const label = free.filter((text) => text.length > 0);
const orNull = <T>(value: fc.Arbitrary<T>) => fc.option(value, { nil: null });
const real = (min: number, max: number) =>
	fc.double({ min, max, noNaN: true }).map((value) => value + 0);
const above0 = (max: number) => fc.double({ min: 1e-6, max, noNaN: true });
const day = fc
	.date({ min: new Date('1990-01-01'), max: new Date('2090-01-01'), noInvalidDate: true })
	.map((date) => date.toISOString().slice(0, 10));

const choice: PlanChoice = {
	seed: 1,
	design: 'shuffled',
	grips: [
		{
			grip: 'g',
			loads: [40, 60],
			ownMaximum: 80,
			bestGuess: 70,
			history: [{ load: 20, outcome: 'stopped', reason: 'other', session: 0 }]
		}
	],
	ropeSides: ['away', 'toward'],
	repeats: 2,
	check: null,
	step: 0.06,
	increment: 0.5,
	targetSeconds: 5,
	restSeconds: 180,
	setupSeconds: 30,
	session: 1,
	adult: true
};
const plan = makePlan(choice);

const trial: fc.Arbitrary<Omit<Trial, 'id' | 'sessionId' | 'gripId'>> = fc.record({
	order: fc.oneof(fc.integer({ min: -3, max: 40 }), real(-1e6, 1e6)),
	kind: fc.constantFrom('warm-up', 'check', 'test'),
	loadKg: above0(500),
	reached: fc.constantFrom('scale', 'plates', 'counterweight', 'both', 'body', 'unknown'),
	addedKg: orNull(real(0, 500)),
	counterweightKg: orNull(real(0, 500)),
	ropeDegrees: orNull(real(0, 89)),
	ropeSide: orNull(fc.constantFrom('away', 'toward', 'plumb')),
	outcome: fc.constantFrom('held', 'slipped', 'opened', 'stopped', 'unknown'),
	seconds: orNull(real(-100, 1e9)),
	stopReason: orNull(fc.constantFrom('pain', 'opening', 'slipping', 'other')),
	brushed: orNull(fc.boolean()),
	note: free,
	leftOut: orNull(label),
	loggedAt: orNull(fc.integer({ min: -62_167_219_200_000, max: 253_402_300_799_999 }))
});

/** Notebooks that hold together, with hostile text in every text and mark. */
export const notebooks: fc.Arbitrary<Notebook> = fc
	.record({
		ids: fc.uniqueArray(label, { minLength: 12, maxLength: 12 }),
		people: fc.array(fc.record({ label, bodyMassKg: orNull(above0(400)), adult: fc.boolean() }), {
			minLength: 2,
			maxLength: 2
		}),
		holds: fc.array(
			fc.record({
				label,
				slopeDegrees: orNull(real(-90, 90)),
				slopeMethod: free,
				radiusMm: orNull(above0(10_000)),
				surface: free,
				condition: free
			}),
			{ minLength: 2, maxLength: 2 }
		),
		grips: fc.array(
			fc.record({
				label,
				fingers: fc.constantFrom<1 | 2 | 3 | 4 | 5>(1, 2, 3, 4, 5),
				hands: fc.constantFrom<1 | 2>(1, 2),
				patchMm2: orNull(above0(2000))
			}),
			{ minLength: 2, maxLength: 2 }
		),
		sessions: fc.array(
			fc.record({
				who: fc.nat(1),
				where: fc.nat(1),
				day,
				bodyMassKg: orNull(above0(400)),
				targetSeconds: orNull(above0(600)),
				restSeconds: orNull(real(0, 7200)),
				brushing: free,
				chalk: free,
				skin: free,
				airCelsius: orNull(real(-60, 60)),
				humidityPercent: orNull(real(0, 100)),
				checkLoadKg: orNull(above0(500)),
				planned: fc.boolean(),
				plannedTrials: orNull(fc.integer({ min: 1, max: 500 })),
				meanRopeTerm: orNull(real(-3, 3)),
				note: free
			}),
			{ minLength: 3, maxLength: 3 }
		),
		trials: fc.array(fc.record({ in: fc.nat(2), with: fc.nat(1), trial }), { maxLength: 12 })
	})
	.map(({ ids, people, holds, grips, sessions, trials }): Notebook => {
		const id = (n: number) => [...ids[n]!].slice(0, 30).join('');
		return {
			people: people.map((one, i) => ({ id: `0${id(i)}`, ...one })),
			holds: holds.map((one, i) => ({ id: id(2 + i), ...one })),
			grips: grips.map((one, i) => ({ id: id(4 + i), ...one })),
			plans: [{ id: id(6), label: ids[7]!, day: '2026-03-09', personId: `0${id(0)}`, plan }],
			sessions: sessions.map(({ who, where, planned, ...one }, i) => ({
				id: id(8 + i),
				personId: `0${id(who)}`,
				holdId: id(2 + where),
				planId: planned ? id(6) : null,
				...one
			})),
			trials: trials.map((one, i) => ({
				id: `${id(11)}${i}`,
				sessionId: id(8 + one.in),
				gripId: id(4 + one.with),
				...one.trial
			}))
		};
	})
	// Cutting ids short may make two of them alike.
	.filter((notebook) =>
		Object.values(notebook).every((list) => new Set(list.map((one) => one.id)).size === list.length)
	);
