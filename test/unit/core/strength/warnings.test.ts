import { describe, expect, test } from 'vitest';
import { evaluateHang, loadAtNetMass, tendonForces, type Hang } from '#core/index.ts';
import { warningText, type WarningCode } from '#core/strength/warning-text.ts';
import { within } from '#test/within.ts';
import { baseHang } from '#test/own/mechanics/hangs.ts';

function warningsOf(hang: Hang, netMass = 70): WarningCode[] {
	const texts = evaluateHang(hang, loadAtNetMass(netMass, hang)).warnings;
	const codes = Object.keys(warningText) as WarningCode[];
	return texts.map((text) => codes.find((code) => warningText[code] === text)!);
}

function withContact(contact: Hang['grip']['contact']): Hang {
	return baseHang({ contact });
}

describe('warnings of a hang', () => {
	test('none for a plumb hang on a slope', () => {
		expect(warningsOf(baseHang())).toEqual([]);
		expect(warningsOf(baseHang({ slope: -10 }))).toEqual([]);
		expect(warningsOf(baseHang(), 30)).toEqual([]);
	});

	test('the pull leads off', () => {
		expect(warningsOf(baseHang({ slope: 60, ropeAngle: 30 }), 20)).toContain('leadsOff');
		expect(warningsOf(baseHang({ slope: 90 }))).toEqual(['leadsOff']);
	});

	test('no friction needed on a slope or a shelf, but an incut edge needs no word', () => {
		expect(warningsOf(baseHang({ slope: 0 }))).toEqual(['noFrictionNeeded']);
		expect(warningsOf(baseHang({ slope: 5, push: -200 }))).toEqual(['noFrictionNeeded']);
		expect(warningsOf(baseHang({ slope: -5, push: -200 }))).toEqual([]);
	});

	test('a patch larger than the pad is clamped to it', () => {
		const fixed = withContact({ kind: 'fixed', padArea: 500e-6 });
		expect(warningsOf(fixed)).toEqual(['patchLargerThanPad']);
		within(evaluateHang(fixed, loadAtNetMass(70, fixed)).padArea, 0.016 * 0.021, {
			relative: 1e-12
		});
		const growing = {
			kind: 'growing',
			padCoefficient: 90e-6,
			exponent: 0.32,
			padLimit: 1
		} as const;
		expect(warningsOf(withContact(growing))).toEqual(['patchLargerThanPad']);
		expect(warningsOf(withContact(growing), 20)).toEqual([]);
	});

	test('a force that presses the end of the finger shut sets no strength limit', () => {
		const hang = baseHang({ slope: -80 });
		expect(warningsOf(hang)).toEqual(['fingersPressedShut']);
		expect(evaluateHang(hang, loadAtNetMass(70, hang))).toMatchObject({
			strengthLimit: Infinity,
			strengthMargin: Infinity,
			slipMargin: Infinity,
			limiting: 'strength',
			holds: true
		});
	});

	test('a leaning rope at much assist, and an inward one', () => {
		const outward = baseHang({ ropeAngle: 10 });
		expect(warningsOf(outward, 43)).toEqual([]);
		expect(warningsOf(outward, 41)).toEqual(['ropeAngleAtHighAssist']);
		const inward = baseHang({ ropeAngle: -10 });
		expect(warningsOf(inward, 60)).toEqual(['inwardRope']);
		expect(warningsOf(inward, 80)).toEqual([]);
	});

	test('a tightly rounded hold', () => {
		expect(warningsOf(baseHang({ slope: 10, radius: 0.015 }))).toEqual(['tightRadius']);
	});

	test('each is a sentence that stands by itself', () => {
		for (const text of Object.values(warningText)) expect(text).toMatch(/^[A-Z][^\n]+\.$/);
	});
});

describe('warnings of the finger chain', () => {
	const arms = { fdpDip: 0.0065, fdpPip: 0.0098, fdsPip: 0.0083 };
	const straight = { contactDistance: 0.018, pitch: 0, dipFlexion: 1.3, pipFlexion: 0.3, arms };

	test('the deep flexor over-supplies the middle joint', () => {
		const { fdp, fds, warnings } = tendonForces(straight);
		expect(fdp).toBeGreaterThan(0);
		expect(fds).toBe(0);
		expect(warnings).toHaveLength(1);
		expect(warnings[0]).toMatch(/over-supplies the middle joint/);
	});

	test('a force that bends the joints', () => {
		const { fdp, fds, warnings } = tendonForces({ ...straight, force: { x: 0, y: -1 } });
		expect([fdp, fds]).toEqual([0, 0]);
		expect(warnings).toHaveLength(2);
	});
});
