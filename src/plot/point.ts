/** A place on the drawing or in the plotted quantities: across, then along the upright axis. */
export type Point = readonly [x: number, y: number];
