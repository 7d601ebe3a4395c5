// `npm start`: installs what is missing, builds, serves the static build, prints the address.
import { execFileSync } from 'node:child_process';
import { ensureInstalled } from './install.mjs';
import { serveNear } from './serve.mjs';

ensureInstalled();
console.log('Building …');
execFileSync(process.execPath, ['node_modules/vite/bin/vite.js', 'build', '--logLevel', 'warn'], {
	stdio: 'inherit'
});
const { url } = await serveNear({ folder: 'build', port: Number(process.env.PORT ?? 4321) });
console.log(`\nHolding Window is at ${url}\nPress Ctrl+C to stop.`);
