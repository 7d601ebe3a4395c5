import adapter from '@sveltejs/adapter-static';
import { readFileSync } from 'node:fs';

const { version } = JSON.parse(readFileSync(new URL('./package.json', import.meta.url), 'utf8'));

/** @type {import('@sveltejs/kit').Config} */
export default {
	compilerOptions: { runes: true },
	kit: {
		adapter: adapter({ strict: true }),
		paths: { relative: true },
		// A fixed name makes two builds of the same source byte-identical.
		version: { name: version, pollInterval: 0 },
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
