// A small static server for the build: compressed, cached by name, and able to sit in any folder.
import { existsSync, readFileSync, statSync } from 'node:fs';
import { createServer } from 'node:http';
import { extname, join, normalize, resolve, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import { brotliCompressSync, constants, gzipSync } from 'node:zlib';

const types = {
	'.html': 'text/html; charset=utf-8',
	'.js': 'text/javascript; charset=utf-8',
	'.css': 'text/css; charset=utf-8',
	'.json': 'application/json; charset=utf-8',
	'.webmanifest': 'application/manifest+json; charset=utf-8',
	'.svg': 'image/svg+xml; charset=utf-8',
	'.txt': 'text/plain; charset=utf-8',
	'.png': 'image/png',
	'.woff2': 'font/woff2',
	'.woff': 'font/woff',
	'.ttf': 'font/ttf'
};
const compressible = new Set(['.html', '.js', '.css', '.json', '.webmanifest', '.svg', '.txt']);

/** The path asked for; undefined where it cannot be read, so that no request ends the server. */
function pathOf(url) {
	try {
		return decodeURIComponent(url.split(/[?#]/)[0]);
	} catch {
		return undefined;
	}
}

/** Whether a file is the folder or lies in it. */
const isIn = (root, file) => file !== undefined && (file + sep).startsWith(root + sep);

/**
 * Serves a folder at a path prefix.
 * @param {{ folder: string, port: number, prefix?: string, host?: string }} options
 * @returns {Promise<{ url: string, close: () => Promise<void> }>}
 */
export function serve({ folder, port, prefix = '/', host = '127.0.0.1' }) {
	const root = resolve(folder);
	const cache = new Map();
	const server = createServer((request, response) => {
		const path = pathOf(request.url ?? '/');
		const relative = path?.startsWith(prefix) ? path.slice(prefix.length) : undefined;
		let file = relative === undefined ? undefined : normalize(join(root, relative));
		if (path && isIn(root, file) && existsSync(file) && statSync(file).isDirectory()) {
			if (!path.endsWith('/')) {
				response.writeHead(301, { location: path + '/' }).end();
				return;
			}
			file = join(file, 'index.html');
		}
		if (!isIn(root, file) || !existsSync(file)) {
			response.writeHead(404, { 'content-type': 'text/plain; charset=utf-8' }).end('Not found');
			return;
		}
		const type = extname(file);
		const accepts = String(request.headers['accept-encoding'] ?? '');
		const coding = !compressible.has(type)
			? ''
			: /\bbr\b/.test(accepts)
				? 'br'
				: /\bgzip\b/.test(accepts)
					? 'gzip'
					: '';
		const key = `${file}|${coding}|${statSync(file).mtimeMs}`;
		if (!cache.has(key)) {
			const raw = readFileSync(file);
			cache.set(
				key,
				coding === 'br'
					? brotliCompressSync(raw, { params: { [constants.BROTLI_PARAM_QUALITY]: 5 } })
					: coding === 'gzip'
						? gzipSync(raw)
						: raw
			);
		}
		const body = cache.get(key);
		response.writeHead(200, {
			'content-type': types[type] ?? 'application/octet-stream',
			'content-length': body.length,
			'cache-control': file.includes('/immutable/') ? 'max-age=31536000, immutable' : 'no-cache',
			'x-content-type-options': 'nosniff',
			...(coding ? { 'content-encoding': coding, vary: 'accept-encoding' } : {})
		});
		response.end(request.method === 'HEAD' ? undefined : body);
	});
	return new Promise((done, fail) => {
		server.once('error', fail);
		server.listen(port, host, () =>
			done({
				url: `http://${host}:${server.address().port}${prefix}`,
				close: () => new Promise((closed) => server.close(() => closed()))
			})
		);
	});
}

/** Serves at the wanted port, or at the next free one. */
export async function serveNear(options) {
	for (let port = options.port; ; port++) {
		try {
			return await serve({ ...options, port });
		} catch (error) {
			if (error.code !== 'EADDRINUSE' || port > options.port + 50) throw error;
		}
	}
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
	const value = (name, fallback) => {
		const at = process.argv.indexOf(name);
		return at > 0 ? process.argv[at + 1] : fallback;
	};
	const { url } = await serve({
		folder: value('--folder', 'build'),
		port: Number(value('--port', '4173')),
		prefix: value('--prefix', '/')
	});
	console.log(`Serving ${url}`);
}
