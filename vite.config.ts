import { sveltekit } from '@sveltejs/kit/vite';
import { defineConfig } from 'vitest/config';

export default defineConfig({
	plugins: [sveltekit()],
	build: { assetsInlineLimit: 0 },
	test: {
		include: ['test/{gates,oracles,own,properties,unit}/**/*.test.ts'],
		setupFiles: ['test/within.ts'],
		environment: 'node',
		testTimeout: 240_000
	}
});
