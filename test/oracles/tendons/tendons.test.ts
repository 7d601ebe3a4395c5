import { describe, expect, test } from 'vitest';
import { tendonForces } from '#core/index.ts';
import { within } from '#test/within.ts';
import cases from './cases.json';

const degree = Math.PI / 180;
const { ketchum } = cases.index;
const arms = {
	fdpDip: ketchum.fdpDip_mm / 1000,
	fdpPip: ketchum.fdpPip_mm / 1000,
	fdsPip: ketchum.fdsPip_mm / 1000
};

describe('outside checks: tendon forces', () => {
	test('the default lengths are the published ones (Buryanov and Kotiuk 2010)', () => {
		const straight = tendonForces({
			contactDistance: 0.012,
			pitch: 0,
			dipFlexion: 0,
			pipFlexion: 0,
			arms
		});
		const { dipMoment, pipMoment, mcpMoment } = straight;
		within((pipMoment - dipMoment) * 1000, cases.index.middle_mm, { absolute: 1e-9 });
		within((mcpMoment - pipMoment) * 1000, cases.index.proximal_mm, { absolute: 1e-9 });
	});

	test('crimp: the moment ratio that the published FDP:FDS needs (Vigouroux and others 2006)', () => {
		const { fdpToFds, passiveDipShare, pipToDipMoment, tolerance } = cases.crimpRatio;
		// Flat end segment, 12 mm: bend the last joint until the moments have the wanted ratio.
		const contactDistance = 0.012;
		const middle = cases.index.middle_mm / 1000;
		const dipFlexion = Math.acos(((pipToDipMoment - 1) * contactDistance) / middle);
		const { fdp, fds, dipMoment, pipMoment } = tendonForces({
			contactDistance,
			pitch: 0,
			dipFlexion,
			pipFlexion: 90 * degree,
			arms,
			passiveDipShare
		});
		within(pipMoment / dipMoment, pipToDipMoment, { relative: 1e-12 });
		within(fdp / fds, fdpToFds, { absolute: tolerance });
	});

	test.each(cases.cadaver)(
		'$grip: FDP per tip force within the stated factor (Schöffl 2009)',
		(grip) => {
			const { fdp } = tendonForces({
				contactDistance: 0.012,
				pitch: grip.pitch_deg * degree,
				dipFlexion: grip.dip_deg * degree,
				pipFlexion: grip.pip_deg * degree,
				arms,
				passiveDipShare: grip.passive
			});
			expect(fdp).toBeGreaterThan(grip.fdpToTip / cases.cadaverFactor);
			expect(fdp).toBeLessThan(grip.fdpToTip * cases.cadaverFactor);
		}
	);
});
