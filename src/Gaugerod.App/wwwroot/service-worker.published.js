// Keeps one whole version of the app. A new one waits until it is asked for.
self.importScripts("./service-worker-assets.js");
const name = "gaugerod-" + self.assetsManifest.version;
const kept = /\.(dll|dat|wasm|html|js|json|css|svg|png|webp|webmanifest|ttf|woff2|txt|md|blat)$/;
const base = new URL(self.registration.scope).pathname;

self.addEventListener("install", event => event.waitUntil((async () => {
  const requests = self.assetsManifest.assets
    .filter(asset => kept.test(asset.url) && !/^service-worker/.test(asset.url))
    .map(asset => new Request(asset.url, { integrity: asset.hash, cache: "no-cache" }));
  await (await caches.open(name)).addAll(requests);
})()));

self.addEventListener("activate", event => event.waitUntil((async () => {
  for (const key of await caches.keys()) if (key.startsWith("gaugerod-") && key !== name) await caches.delete(key);
})()));

self.addEventListener("message", event => { if (event.data === "now") self.skipWaiting(); });

self.addEventListener("fetch", event => {
  const url = new URL(event.request.url);
  if (event.request.method !== "GET" || url.origin !== location.origin) return;
  event.respondWith((async () => {
    const cache = await caches.open(name);
    const page = event.request.mode === "navigate" && !url.pathname.includes("service-worker");
    const found = await cache.match(page ? base + "index.html" : event.request, { ignoreSearch: true });
    return found ?? fetch(event.request);
  })());
});
