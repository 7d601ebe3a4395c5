// The folded parts of the set-up, fetched together when the first of them is opened.
export { default as Friction } from './Friction.svelte';
export { default as Grip } from './Grip.svelte';
export { default as HoldAndTime } from './HoldAndTime.svelte';
export { default as Pull } from './Pull.svelte';
export { default as Reach } from './Reach.svelte';
export { default as StartFrom } from './StartFrom.svelte';
export { default as Strength } from './Strength.svelte';
