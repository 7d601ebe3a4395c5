import { sveltekit } from '@sveltejs/kit/vite';
import type { Plugin } from 'vite';
import { defineConfig } from 'vitest/config';

/**
 * The small modules that nearly every page shares travel in one file: in a file each, they would cost
 * more in names and in lost compression than they save.
 */
const oneFileForSmallParts: Plugin = {
	name: 'one-file-for-small-parts',
	config({ build }) {
		const input = build?.rollupOptions?.input;
		const forPages = !build?.ssr && typeof input === 'object' && 'entry/app' in input;
		if (!forPages) return;
		const test =
			/\/src\/(core\/(units|mechanics\/load-)|ui\/(Quantity|Warning|Choice|Fold|LaterFold|NumberField|Slider)\.|state\/preferences|storage\/stores\/preferences)/;
		const groups = [{ name: 'small-parts', test, minShareCount: 4 }];
		return { build: { rollupOptions: { output: { codeSplitting: { groups } } } } };
	}
};

export default defineConfig({
	plugins: [sveltekit(), oneFileForSmallParts],
	build: { assetsInlineLimit: 0 },
	test: {
		include: ['test/{gates,oracles,own,properties,unit}/**/*.test.ts'],
		setupFiles: ['test/within.ts'],
		environment: 'node',
		testTimeout: 240_000
	}
});
