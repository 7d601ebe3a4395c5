import { loadElasticity } from '#core/strength/load-elasticity.ts';
import { evaluateHang } from '#core/strength/evaluate-hang.ts';
import { holdingRegion } from '#core/region/holding-region.ts';
import { holdingWindow } from '#core/region/holding-window.ts';
import type { Hang } from '#core/types.ts';
import { lightestNet, numberSpecs, type Setup } from '#storage/codecs/setup.ts';
import { axisRange, hangOf, loadOf, netMassOf, personOf, referenceForceOf } from './to-hang.ts';

/** How far a laid-over rope leans, degrees: small enough to go unnoticed at a board. */
export const leanLaidOver = 5;

/** Columns of the region on screen: straight lines between them leave its edges by less than a pixel. */
const columnsShown = 120;

/** Everything that the page shows of a set-up; results are derived, never stored. */
export type Results = ReturnType<typeof computeResults>;

/** Load axis of a set-up, kg: from nearly nothing to the most that can be added. */
export function loadRange(setup: Setup) {
	return { from: lightestNet, to: setup.body + numberSpecs.change.max };
}

/**
 * Computes the hang of a set-up, its window and its region.
 * Throws the core's RangeError where the set-up cannot be computed.
 */
export function computeResults(setup: Setup) {
	const hang = hangOf(setup);
	const netMass = netMassOf(setup);
	const load = loadOf(setup);
	const contact = evaluateHang(hang, load);
	const range = loadRange(setup);
	const swept = { ...range, present: netMass };
	const across = axisRange(setup, contact.padArea);
	const heavier = evaluateHang(hang, loadOf(setup, netMass + 1));
	const window = holdingWindow(hang, range);
	return {
		setup,
		hang,
		netMass,
		load,
		contact,
		heavier,
		heavierLoad: loadOf(setup, netMass + 1),
		elasticity: loadElasticity(hang, netMass),
		range,
		window,
		slipWindow: window.length === 0 ? holdingWindow(tireless(hang), range) : undefined,
		across,
		region: regionOf(hang, across, swept),
		overlays: overlaysOf(setup, hang, contact.ratio).map((overlay) => ({
			...overlay,
			region: regionOf(overlay.hang, across, swept)
		})),
		person: personOf(setup),
		estimated: referenceForceOf(setup).estimated
	};
}

/** The region and what is laid over it in as many columns as a file should have. */
export function regionsIn(columns: number, { hang, across, range, netMass, overlays }: Results) {
	const swept = { ...range, present: netMass };
	return [{ label: 'this set-up', hang }, ...overlays].map(({ label, hang }) => ({
		label,
		region: regionOf(hang, across, swept, columns)
	}));
}

/** The same hang with more finger strength than any load here needs: what friction alone allows. */
function tireless(hang: Hang): Hang {
	return { ...hang, strength: { ...hang.strength, referenceForce: 1e6 } };
}

function regionOf(
	hang: Hang,
	across: ReturnType<typeof axisRange>,
	load: { from: number; to: number; present: number },
	columns = columnsShown
) {
	const { axis, from, to } = across;
	return holdingRegion(hang, { axis, from, to, columns, load });
}

/** Other explanations laid over the region: the same hang but for one thing. */
function overlaysOf(setup: Setup, hang: Hang, ratio: number) {
	const overlays: { label: string; hang: Hang }[] = [];
	if (setup.overConstant && setup.law !== 'constant') {
		const coefficient = ratio > 0 ? ratio : setup.mu;
		overlays.push({
			label: 'constant ratio',
			hang: { ...hang, friction: { kind: 'constant', coefficient } }
		});
	}
	if (setup.overRope && setup.axis !== 'ropeAngle') {
		const ropeAngle = hang.ropeAngle + (leanLaidOver * Math.PI) / 180;
		overlays.push({ label: `rope ${leanLaidOver}° further out`, hang: { ...hang, ropeAngle } });
	}
	return overlays;
}
