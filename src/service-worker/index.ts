/// <reference types="@sveltejs/kit" />
/// <reference no-default-lib="true"/>
/// <reference lib="esnext" />
/// <reference lib="webworker" />

// Keeps the whole site for use without a network: everything is fetched once, at the first visit.
// A newer site is fetched beside the one in use and waits until it is asked for, or until no page is open.
import { base, build, files, prerendered, version } from '$service-worker';

const self = globalThis.self as unknown as ServiceWorkerGlobalScope;
const prefix = 'holding-window-';
// The version is a digest of the site's sources: a changed site never shares a cache with an older one.
const cacheName = prefix + version;

// Every browser that runs this reads woff2; KaTeX's .woff and .ttf copies are 800 kB nobody loads.
const assets = [...build, ...files].filter((path) => !/\.(woff|ttf)$|\/explore\.png$/.test(path));
const pages = prerendered.map((path) => (path.startsWith(base) ? path : base + path));
const kept = new Set([...assets, ...pages]);
const immutable = new Set(build);

self.addEventListener('install', (event) => {
	// What may change under the same name is asked of the server itself, not of the browser's memory.
	const requests = [...kept].map(
		(path) => new Request(path, { cache: immutable.has(path) ? 'default' : 'reload' })
	);
	event.waitUntil(caches.open(cacheName).then((cache) => cache.addAll(requests)));
});

self.addEventListener('activate', (event) => {
	event.waitUntil(
		(async () => {
			// The last version stays: a page still open in another tab may yet ask for a part of it.
			const older = (await caches.keys()).filter(
				(key) => key.startsWith(prefix) && key !== cacheName
			);
			await Promise.all(older.slice(0, -1).map((key) => caches.delete(key)));
			await self.clients.claim();
		})()
	);
});

self.addEventListener('message', (event) => {
	if (event.data === 'update-now') void self.skipWaiting();
});

self.addEventListener('fetch', (event) => {
	const { request } = event;
	const url = new URL(request.url);
	if (request.method !== 'GET' || url.origin !== self.location.origin) return;
	if (kept.has(url.pathname)) event.respondWith(keptOrFetched(request, url.pathname));
	else if (request.mode === 'navigate' && kept.has(url.pathname + '/')) {
		event.respondWith(Response.redirect(url.pathname + '/' + url.search, 301));
	} else if (url.pathname.includes('/immutable/')) event.respondWith(olderOrFetched(request));
});

/** The set-up is in the query; the page is the same. */
async function keptOrFetched(request: Request, path: string): Promise<Response> {
	const cache = await caches.open(cacheName);
	return (await cache.match(path)) ?? fetch(request);
}

/** A part of an older version, for a page that was opened with it. */
async function olderOrFetched(request: Request): Promise<Response> {
	return (await caches.match(request)) ?? fetch(request);
}
