import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
	counterweightForce,
	enduranceFraction,
	enduranceTime,
	evaluateHang,
	frictionRatio,
	hangLoad,
	loadAtNetMass,
	loadElasticity
} from '#core/index.ts';
import type { Hang } from '#core/types.ts';
import { lawFormula } from '#core/friction/laws.ts';
import { within } from '#test/within.ts';
import { anyHang, anyLaw, between, plumb } from './hangs.ts';

const netMass = between(5, 200);

describe('loads', () => {
	test('mirrored rope angles mirror the tilt and nothing else', () => {
		const rope = fc.record({ angle: between(-1.4, 1.4), force: between(0, 300) });
		fc.assert(
			fc.property(rope, ({ angle, force }) => {
				const load = hangLoad({ bodyMass: 70, assistForce: force, assistAngle: angle });
				const mirror = hangLoad({ bodyMass: 70, assistForce: force, assistAngle: -angle });
				within(mirror.tilt, -load.tilt, { absolute: 1e-15 });
				within(mirror.vertical, load.vertical, { relative: 1e-15 });
				within(mirror.magnitude, load.magnitude, { relative: 1e-15 });
			})
		);
	});

	test('hangLoad and loadAtNetMass agree where the rope gives the net mass', () => {
		fc.assert(
			fc.property(between(40, 150), between(0.3, 1), between(-0.5, 0.5), (mass, share, angle) => {
				const wanted = loadAtNetMass(mass * share, { hangingMass: mass, ropeAngle: angle });
				const assistForce = (mass * (1 - share) * 9.80665) / Math.cos(angle);
				const load = hangLoad({ bodyMass: mass, assistForce, assistAngle: angle });
				within(load.vertical, wanted.vertical, { relative: 1e-12 });
				within(load.horizontal, wanted.horizontal, { absolute: 1e-9 });
				within(load.netMass, wanted.netMass, { relative: 1e-12 });
			})
		);
	});

	test('a counterweight’s band holds its ideal force, and its ends multiply to the square', () => {
		fc.assert(
			fc.property(between(0.1, 100), between(0.01, 1), (mass, efficiency) => {
				const { low, ideal, high } = counterweightForce(mass, efficiency);
				expect(low <= ideal && ideal <= high).toBe(true);
				within(low * high, ideal * ideal, { relative: 1e-12 });
			})
		);
	});
});

describe('hangs of every law', () => {
	test('the demand is tan(mean slope + tilt)', () => {
		fc.assert(
			fc.property(anyHang, netMass, (hang, mass) => {
				const load = loadAtNetMass(mass, hang);
				const { demand, meanSlope, normal, force } = evaluateHang(hang, load);
				if (normal > 1e-3 * force)
					within(demand, Math.tan(meanSlope + load.tilt), { absolute: 1e-9 * (1 + demand ** 2) });
			}),
			{ numRuns: 1000 }
		);
	});

	test('constant ratio, plumb rope, no push: load does not move the slip margin', () => {
		const flatOrFixed = anyHang.filter(
			({ radius, grip }) => radius === undefined || grip.contact.kind === 'fixed'
		);
		fc.assert(
			fc.property(flatOrFixed, between(0.1, 1.5), netMass, netMass, (hang, coefficient, a, b) => {
				const plain: Hang = { ...plumb(hang), friction: { kind: 'constant', coefficient } };
				const [one, other] = [a, b].map(
					(mass) => evaluateHang(plain, loadAtNetMass(mass, plain)).slipMargin
				);
				if (one === Infinity) expect(other).toBe(Infinity);
				else within(one!, other!, { relative: 1e-12 });
				const elasticity = loadElasticity(plain, a);
				if (!Number.isNaN(elasticity)) within(elasticity, 0, { absolute: 1e-9 });
			}),
			{ numRuns: 1000 }
		);
	});

	test('normal and tangential force make up the force', () => {
		fc.assert(
			fc.property(anyHang, netMass, (hang, mass) => {
				const load = loadAtNetMass(mass, hang);
				const { force, normal, tangential } = evaluateHang(hang, load);
				within(Math.hypot(normal, tangential), load.magnitude / hang.hands, { relative: 1e-12 });
				within(force, load.magnitude / hang.hands, { relative: 1e-12 });
			})
		);
	});

	test('a patch exceeds neither its limit nor the pad, and settles with its slope', () => {
		fc.assert(
			fc.property(anyHang, netMass, (hang, mass) => {
				const { contact, padWidth, padLength, fingers } = hang.grip;
				const { padArea, normal, meanSlope } = evaluateHang(hang, loadAtNetMass(mass, hang));
				const limit = contact.kind === 'fixed' ? contact.padArea : contact.padLimit;
				expect(padArea).toBeLessThanOrEqual(Math.min(limit, padWidth * padLength));
				if (contact.kind === 'fixed' || !(normal > 0) || padArea === 0) return;
				const grown = contact.padCoefficient * Math.pow(normal / fingers, contact.exponent);
				within(padArea, Math.min(grown, limit, padWidth * padLength), { relative: 1e-10 });
				const turned = hang.radius === undefined ? 0 : padArea / padWidth / (2 * hang.radius);
				within(meanSlope, hang.slope + turned, { absolute: 1e-12 });
			}),
			{ numRuns: 1000 }
		);
	});

	test('the elasticity is the slope of the logarithm, found by small steps', () => {
		fc.assert(
			fc.property(anyHang, netMass, (hang, mass) => {
				const margin = (at: number) => evaluateHang(hang, loadAtNetMass(at, hang)).slipMargin;
				const step = 1e-5 * mass;
				const [low, here, high] = [margin(mass - step), margin(mass), margin(mass + step)];
				const elasticity = loadElasticity(hang, mass);
				if (!(here > 0 && here < Infinity)) expect(elasticity).toBeNaN();
				else {
					// One-sided slopes that differ much mean a kink or a pole within the step.
					const left = Math.log(here / low) / Math.log(mass / (mass - step));
					const right = Math.log(high / here) / Math.log((mass + step) / mass);
					if (Math.abs(left - right) < 1e-3 * (1 + Math.abs(right)))
						within(elasticity, right, { absolute: 1e-2 * (1 + Math.abs(right)) });
				}
			}),
			{ numRuns: 1000 }
		);
	});

	test('the limits follow from the margins, ties go to strength', () => {
		fc.assert(
			fc.property(anyHang, netMass, (hang, mass) => {
				const r = evaluateHang(hang, loadAtNetMass(mass, hang));
				expect(r.limiting).toBe(r.slipMargin < r.strengthMargin ? 'slip' : 'strength');
				expect(r.holds).toBe(Math.min(r.slipMargin, r.strengthMargin) >= 1 - 1e-12);
				if (r.strengthMargin < Infinity)
					within(r.strengthLimit, r.strengthMargin * r.force, { relative: 1e-12 });
				if (r.tangential > 0)
					within(r.slipMargin * r.tangential, r.frictionLimit, { relative: 1e-12 });
			})
		);
	});
});

describe('laws', () => {
	const pressure = between(1e3, 1e6);

	test('the slope of the ratio is its change with the logarithm of pressure', () => {
		fc.assert(
			fc.property(anyLaw, pressure, (law, p) => {
				const step = 1e-5;
				const [low, high] = [p * Math.exp(-step), p * Math.exp(step)];
				const found = (frictionRatio(law, high) - frictionRatio(law, low)) / (2 * step);
				within(lawFormula(law).ratioSlope(law, p), found, { absolute: 1e-5 });
			}),
			{ numRuns: 500 }
		);
	});

	test('the friction limit changes its bend at the law’s bend pressure and nowhere else', () => {
		fc.assert(
			fc.property(anyLaw, between(0.4, 1), between(0.05, 20), (law, share, times) => {
				const bend = lawFormula(law).bendPressure(law, share);
				const middle = Number.isFinite(bend) && bend > 0 ? bend : 2e5;
				// On a patch whose pressure grows as N^share the limit is μ(N^share) N, in free units.
				const limit = (normal: number) => frictionRatio(law, Math.pow(normal, share)) * normal;
				const curvature = (p: number) => {
					const n = Math.pow(p, 1 / share);
					const h = 0.01 * n;
					return (limit(n + h) - 2 * limit(n) + limit(n - h)) / limit(n);
				};
				const p = middle * times;
				if (Math.abs(Math.log(times)) < 0.2 || p > 5e6) return;
				const [here, further] = [curvature(p), curvature(middle * times ** 1.5)];
				if (Math.abs(here) < 1e-9 || Math.abs(further) < 1e-9) return;
				expect(Math.sign(here)).toBe(Math.sign(further));
				const across = curvature(middle / times);
				if (middle === bend && Math.abs(across) > 1e-9)
					expect(Math.sign(across)).toBe(-Math.sign(here));
			}),
			{ numRuns: 1000 }
		);
	});
});

test('endurance there and back', () => {
	fc.assert(
		fc.property(between(6, 390), (seconds) => {
			within(enduranceTime(enduranceFraction(seconds)), seconds, { relative: 1e-12 });
		})
	);
});
