// The three pictures, fetched together.
export { default as FreeBodyDiagram } from '#figures/forces/FreeBodyDiagram.svelte';
export { default as HoldingRegion } from '#figures/region/HoldingRegion.svelte';
export { default as MarginCurve } from '#figures/margin/MarginCurve.svelte';
export { marginSeries } from './margin-series.ts';
export { rehearse } from './rehearse.svelte.ts';
