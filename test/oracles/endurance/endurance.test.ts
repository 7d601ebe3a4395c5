import { describe, test } from 'vitest';
import { enduranceFraction, enduranceTime } from '#core/index.ts';
import { within } from '#test/within.ts';
import cases from './cases.json';

describe('outside checks: endurance (Rohmert, printed by Bernard)', () => {
	test.each(cases.rohmert)('$fraction of the maximum: $seconds s', (point) => {
		within(enduranceTime(point.fraction), point.seconds, { absolute: point.tolerance });
		within(enduranceFraction(point.seconds), point.fraction, { absolute: 5e-5 });
	});

	test.each(cases.otherFit.percents)(
		'another published fit agrees at %i % within 5 %',
		(percent) => {
			const { scale, threshold_percent, power, offset, relativeTolerance } = cases.otherFit;
			const published = scale / Math.pow(percent - threshold_percent, power) - offset;
			within(enduranceTime(percent / 100), published, { relative: relativeTolerance });
		}
	);
});
