import { expect, test } from 'vitest';
import { practiceReport } from '#core/search/practice-report.ts';
import { findStories } from '#core/search/search-stories.ts';
import type { FoundSetup } from '#core/search/types.ts';
import { evaluateHang } from '#core/index.ts';
import { radiansToDegrees } from '#core/units/angle.ts';
import { squareMetresToSquareMillimetres } from '#core/units/area.ts';
import { newtonsToKilograms } from '#core/units/force.ts';
import { setupOfLaw } from '#state/setup/of-law.ts';
import { hangOf, loadOf } from '#state/setup/to-hang.ts';
import { readLink, writeLink } from '#storage/codecs/link.ts';
import { firstSight, type Setup } from '#storage/codecs/setup.ts';
import { unmetGoes } from '../../../properties/search/outcomes.ts';

/** One go of a found set-up as Explore would open it, numbers cut to four digits. */
function setupOf(found: FoundSetup, go: FoundSetup['trials'][number]): Setup {
	const grip = found.grips.find(({ id }) => id === go.grip)!;
	const short = (value: number) => Number(value.toPrecision(4));
	return {
		...firstSight,
		...setupOfLaw(go.hang.friction),
		body: found.bodyMass,
		change: short(go.netMass - found.bodyMass),
		slope: short(radiansToDegrees(found.slope)),
		rope: short(radiansToDegrees(found.ropeAngle)),
		push: short(found.push),
		area: short(squareMetresToSquareMillimetres(grip.padArea)),
		fingers: grip.fingers,
		best: short(2 * newtonsToKilograms(grip.referenceForce)),
		bestFingers: grip.fingers
	};
}

test('every example opens in Explore from a link, and shows the seven outcomes there', () => {
	const can = findStories({ ...practiceReport, seed: 1 }).filter((r) => r.verdict === 'can');
	expect(can).toHaveLength(15);
	for (const { example } of can) {
		const trials = example.trials.map((go) => {
			const { setup, notes } = readLink(writeLink(setupOf(example, go)));
			expect(notes).toEqual([]);
			expect(evaluateHang(hangOf(setup), loadOf(setup)).warnings).toEqual([]);
			return { ...go, hang: hangOf(setup), load: loadOf(setup) };
		});
		expect(unmetGoes({ ...example, trials }, practiceReport.observations)).toEqual([]);
	}
});
