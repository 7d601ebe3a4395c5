import { afterEach, describe, expect, test, vi } from 'vitest';
import { BandState, type TrialsBand } from '#state/limits/band.svelte.ts';

const band: TrialsBand = {
	...{ kind: 'opening', above: false, grip: 'Open grip', from: 61, to: 72, middle: 66 }
};

function tab() {
	const kept = new Map<string, string>();
	vi.stubGlobal('sessionStorage', {
		getItem: (key: string) => kept.get(key) ?? null,
		setItem: (key: string, text: string) => void kept.set(key, text),
		removeItem: (key: string) => void kept.delete(key)
	});
	return kept;
}
afterEach(() => vi.unstubAllGlobals());

describe('the band on its way to Explore', () => {
	test('outlives a reload of the tab, and is gone when taken away', () => {
		tab();
		new BandState().current = band;
		const after = new BandState();
		expect(after.current).toBeUndefined();
		after.recall();
		expect(after.current).toEqual(band);
		after.current = undefined;
		const last = new BandState();
		last.recall();
		expect(last.current).toBeUndefined();
	});

	test.each([
		'',
		'null',
		'{}',
		'{"kind":"opening","above":false,"grip":"x","from":-1,"to":2,"middle":1}'
	])('kept text %j that is not a band is nothing', (text) => {
		tab().set('holding-window.trials-band', text);
		const state = new BandState();
		state.recall();
		expect(state.current).toBeUndefined();
	});

	test('where storage is blocked it lasts as long as the page', () => {
		vi.stubGlobal('sessionStorage', undefined);
		const state = new BandState();
		state.current = band;
		state.recall();
		expect(state.current).toEqual(band);
	});
});
