import type { MassUnit } from '#core/units/mass-text.ts';
import type { Interval } from '#core/types.ts';

/** What the core's `holdingRegion` returns: the window at each axis value (SI), and where it changes. */
export type Region = {
	columns: { value: number; intervals: Interval[] }[];
	breaks: number[];
	crossings: { value: number; netMass: number }[];
};

/** The quantity across the region, SI, with its way to the screen's unit and back. */
export type RegionAxisView = {
	/** For example "contact area per finger". */
	label: string;
	unit: string;
	/** To the screen's unit, rising or falling all the way, and evenly (an affine map). */
	toScreen: (si: number) => number;
	fromScreen: (shown: number) => number;
	/** One arrow key and one page key, SI, above 0. */
	step: number;
	bigStep: number;
};

/** Where the set-up stands: axis value (SI) and net mass (kg). */
export type RegionPoint = { value: number; netMass: number };

export type RegionOverlay = { label: string; region: Region };

/** A range of net mass, kg, drawn beside the point: for example what trials say of a limit. */
export type RegionBand = { label: string; from: number; to: number };

export type { MassUnit };
