// Runs a TypeScript file through Vite, so that benches need no loader of their own on Node 20.
import { resolve } from 'node:path';
import { runnerImport } from 'vite';

const [file, ...rest] = process.argv.slice(2);
if (!file) {
	console.error('Usage: node scripts/run-ts.mjs FILE [arguments]');
	process.exit(2);
}
process.argv = [process.argv[0], resolve(file), ...rest];
await runnerImport(resolve(file), { configFile: false, logLevel: 'error' });
