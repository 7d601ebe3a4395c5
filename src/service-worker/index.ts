/// <reference types="@sveltejs/kit" />
/// <reference no-default-lib="true"/>
/// <reference lib="esnext" />
/// <reference lib="webworker" />

// Keeps the whole site for use without a network: everything is fetched once, at the first visit.
import { base, build, files, prerendered, version } from '$service-worker';

const self = globalThis.self as unknown as ServiceWorkerGlobalScope;
const cacheName = `holding-window-${version}`;

// Every browser that runs this reads woff2; KaTeX's .woff and .ttf copies are 800 kB nobody loads.
const assets = [...build, ...files].filter((path) => !/\.(woff|ttf)$|\/explore\.png$/.test(path));
const pages = prerendered.map((path) => (path.startsWith(base) ? path : base + path));
const kept = new Set([...assets, ...pages]);

self.addEventListener('install', (event) => {
	event.waitUntil(caches.open(cacheName).then((cache) => cache.addAll([...kept])));
});

self.addEventListener('activate', (event) => {
	event.waitUntil(
		(async () => {
			for (const key of await caches.keys()) {
				if (key.startsWith('holding-window-') && key !== cacheName) await caches.delete(key);
			}
			await self.clients.claim();
		})()
	);
});

self.addEventListener('message', (event) => {
	if (event.data === 'update-now') void self.skipWaiting();
});

self.addEventListener('fetch', (event) => {
	const url = new URL(event.request.url);
	if (event.request.method !== 'GET' || url.origin !== self.location.origin) return;
	if (!kept.has(url.pathname)) return;
	event.respondWith(
		(async () => {
			const cache = await caches.open(cacheName);
			// The set-up is in the query; the page is the same.
			return (await cache.match(url.pathname)) ?? fetch(event.request);
		})()
	);
});
