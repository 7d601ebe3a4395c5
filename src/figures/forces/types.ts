import type { HangResult } from '#core/strength/evaluate-hang.ts';
import type { Hang, Load } from '#core/types.ts';
import type { Box, Point, Segment } from './geometry.ts';
import type { Lines } from './text.ts';

export type ForceUnit = 'N' | 'kgf' | 'lbf';

/** What the drawing shows of the core's `evaluateHang`; SI, for one hand. */
export type Contact = Pick<
	HangResult,
	'force' | 'normal' | 'tangential' | 'meanSlope' | 'padArea' | 'ratio' | 'demand' | 'frictionLimit'
>;

/** How the load came about: kg, kg, N, rad and N. */
export type Person = {
	bodyMass: number;
	addedMass: number;
	assistForce: number;
	ropeAngle: number;
	push: number;
};

export type ForcesShown = {
	hang: Hang;
	load: Load;
	contact: Contact;
	person: Person;
	forceUnit: ForceUnit;
};

/** Each kind has its own colour, line and head. */
export type ArrowKind = 'weight' | 'rope' | 'push' | 'hold' | 'normal' | 'friction';

export type Arrow = {
	id: string;
	kind: ArrowKind;
	/** N, x away from the wall, y up. */
	force: Point;
	/** Tail and tip, px. */
	segment: Segment;
	/** Where the line ends and the head begins. */
	neck: Point;
	/** Corners of the head: tip, one barb, other barb. */
	head: [Point, Point, Point];
};

export type Label = {
	id: string;
	kind: ArrowKind | 'angle';
	lines: Lines;
	box: Box;
	leader?: Segment;
};

/** A line of text at a fixed place. */
export type Note = { lines: Lines; box: Box };

export type ScaleBar = { segment: Segment; text: string; newtons: number; box: Box };

/** What both parts of the figure have in common. */
export type Part = {
	frame: Box;
	fontSize: number;
	/** px per newton; every arrow of the part has it. */
	scale: number;
	title: Note;
	bar: ScaleBar;
	arrows: Arrow[];
	labels: Label[];
};

export type PersonPart = Part & {
	hold: Point;
	centre: Point;
	/** Outlines as SVG path data. */
	body: string[];
	arm: string[];
	wall: Box;
	holdPath: string;
	plumb: Segment;
	tiltArc?: string;
	ropeTip: Point;
};

export type HandPart = Part & {
	contact: Point;
	holdPath: string;
	/** Far side of the hold in the oblique view, and the edge between near and far lip. */
	backEdge: string;
	ridge: string;
	wallX: number;
	fingers: string[][];
	nails: string[];
	patch?: string;
	/** Apex, up-slope and down-slope corner of the friction cone. */
	cone?: [Point, Point, Point];
	limit?: { line: Segment; tick: Segment } | undefined;
	/** Lines that complete the parallelogram of N and Q. */
	splits: Segment[];
	inside: boolean;
	level: Segment;
	slopeArc?: string;
	tangent?: Segment;
	vertical?: Segment;
	tiltArc?: string;
	slopeEnd: Point;
	note: Note;
};

/** What the figure takes; SI. The callbacks report a dragged handle's new value. */
export type FreeBodyDiagramProps = Omit<ForcesShown, 'forceUnit'> & {
	forceUnit?: ForceUnit;
	/** The inputs cannot be used just now: this is the last good picture. */
	stale?: boolean;
	/** Height of the figure, px; by default what suits its width. */
	height?: number;
	/** The drawing's size until it is measured, px. */
	size?: { width: number; height?: number };
	/** New slope, rad. */
	onslope?: (slope: number) => void;
	/** New rope angle, rad. */
	onrope?: (angle: number) => void;
	/** New rope force, N. */
	onassist?: (force: number) => void;
};
