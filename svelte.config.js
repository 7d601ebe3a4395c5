import adapter from '@sveltejs/adapter-static';
import { sourceVersion } from './scripts/source-version.mjs';

/** @type {import('@sveltejs/kit').Config} */
export default {
	compilerOptions: { runes: true },
	kit: {
		adapter: adapter({ strict: true }),
		paths: { relative: true },
		// A digest of the sources: two builds of the same source are byte-identical, and two builds of
		// different sources never share a cache on anyone's device.
		version: { name: sourceVersion(), pollInterval: 0 },
		csp: {
			mode: 'hash',
			directives: {
				'default-src': ['none'],
				'script-src': ['self'],
				'style-src': ['self'],
				// KaTeX's HTML and Kit's route announcer carry style attributes; scripts stay hash-only.
				'style-src-attr': ['unsafe-inline'],
				'font-src': ['self'],
				'connect-src': ['self'],
				'worker-src': ['self'],
				'manifest-src': ['self'],
				'img-src': ['self', 'data:', 'blob:'],
				'base-uri': ['none'],
				'form-action': ['none'],
				'object-src': ['none']
			}
		}
	}
};
