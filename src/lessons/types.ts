import type { HangResult } from '#core/strength/evaluate-hang.ts';
import type { Hang, Interval, Load } from '#core/types.ts';
import type { MassUnit } from '#core/units/mass-text.ts';
import type { Person } from '#figures/forces/types.ts';
import type { MarginSeries } from '#figures/margin/types.ts';
import type { Region, RegionAxisView, RegionOverlay } from '#figures/region/types.ts';

/** A number in running text: given, or computed by the core and then named after its field. */
export type Shown = { text: string; value: number; quantity: string | undefined };
/** Running text with its numbers; no digit stands in the words themselves. */
export type Says = readonly (string | Shown)[];

/** One formula: its TeX, what its letters mean, and the core function that computes it. */
export type LessonFormula = { tex: string; says: string; of: string };

export type Option = { key: string; says: Says };

/** What the room is asked to place besides its vote. Values in kg, or as a share. */
export type Mark =
	| { kind: 'load'; says: Says; from: number; to: number; truth: number | undefined }
	| { kind: 'share'; says: Says; from: number; to: number; truth: number }
	/** Slip margins at some net loads, kg. */
	| { kind: 'curve'; says: Says; loads: readonly number[]; truth: readonly number[] };

/** Everything that is said in one lesson, about its own set-up. */
export type LessonText = {
	aim: Says;
	situation: readonly Says[];
	question: Says;
	options: readonly Option[];
	/** Keys of the option that computation bears out, and of the popular wrong one. */
	right: string;
	popular: string;
	mark?: Mark;
	reveal: readonly Says[];
	tempting: Says;
	tryIt: { kit: readonly string[]; steps: readonly Says[]; expect: Says; hang: boolean };
	notes: readonly Says[];
	unknown: readonly Says[];
	formulas: readonly LessonFormula[];
	exercises: readonly { ask: Says; answer: Says }[];
};

/** The lesson's set-up as it stands while sliders move it: what the pictures draw. */
export type Bench = {
	hang: Hang;
	load: Load;
	contact: HangResult;
	person: Person;
	netMass: number;
	range: { from: number; to: number };
	window: readonly Interval[];
	region: Region;
	across: { value: number; view: RegionAxisView };
	mass: MassUnit;
};

export type Picture =
	| { kind: 'forces' }
	| {
			kind: 'margin';
			series: readonly MarginSeries[];
			window: readonly Interval[];
			point?: { netMass: number; slipMargin: number; strengthMargin: number };
	  }
	| { kind: 'region'; overlays: readonly RegionOverlay[] }
	| { kind: 'split'; more: number; fewer: number };

/** What a picture is drawn from, and what may be done in it. */
export type PictureProps = {
	picture: Picture;
	bench: Bench;
	stale?: boolean;
	/** Height for the force diagram, px; the others take theirs from CSS. */
	height?: number | undefined;
	onslope?: ((slope: number) => void) | undefined;
	onrope?: ((angle: number) => void) | undefined;
	onmove?: ((to: { value?: number; netMass?: number }) => void) | undefined;
};

export type PictureName = { key: string; label: string };

/** What a lesson is written for: its given set-up as hangs, the unit of mass, and its load range. */
export type Writing = {
	hang: Hang;
	/** The same set-up with some fields changed, in the units of the page. */
	hangWith: (fields: Record<string, number | string>) => Hang;
	netMass: number;
	range: { from: number; to: number };
	mass: MassUnit;
};

export type Lesson = {
	key: string;
	letter: string;
	title: string;
	minutes: number;
	/** Key of its row in the reference's misconceptions. */
	misconception: string;
	/** Its set-up, as fields of a set-up in the units of the page. */
	fields: Record<string, number | string>;
	/** Fields as they stand before the question's change: the first picture must not give the answer away. */
	before: Record<string, number | string>;
	/** Fields that a slider moves in the live figure. */
	controls: readonly string[];
	pictures: readonly PictureName[];
	/** The picture that carries the reveal. */
	shown: string;
	picture: (key: string, bench: Bench) => Picture;
	write: (o: Writing) => LessonText;
};
