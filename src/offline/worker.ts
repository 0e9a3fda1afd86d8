/**
 * The site without a network: all files are fetched when the first page is opened, and served from the device from then
 * on. A new version waits until the reader lets it in. Nothing from elsewhere is kept but map pictures, where the reader
 * asked for it.
 */
import { cacheNames, clientsClaim } from 'workbox-core';
import { matchPrecache, type PrecacheEntry, precacheAndRoute } from 'workbox-precaching';
import { registerRoute } from 'workbox-routing';
import { mapPictures } from './map-pictures.ts';

/** What the build left, filled in by scripts/site/worker.ts. */
declare const SITE_FILES: (PrecacheEntry | string)[];

interface Lasting extends Event {
  waitUntil(work: Promise<unknown>): void;
}

const worker = self as unknown as EventTarget & { skipWaiting(): Promise<void> };
/** Parts of the version before: a page that is still open asks for them by their old names. */
const EARLIER = 'homeleg-earlier';
const PARTS = '/_astro/';

worker.addEventListener('install', (event) => (event as Lasting).waitUntil(keepEarlier()));
worker.addEventListener('message', (event) => {
  if ((event as MessageEvent<{ type?: string }>).data?.type === 'SKIP_WAITING') void worker.skipWaiting();
});
clientsClaim();

// A page is the same whatever stands behind the question mark.
precacheAndRoute(SITE_FILES, { ignoreURLParametersMatching: [/./], cleanURLs: false });

registerRoute(
  ({ url, sameOrigin }) => sameOrigin && url.pathname.startsWith(PARTS),
  async ({ request }) => (await (await caches.open(EARLIER)).match(request)) ?? fetch(request),
);

registerRoute(
  ({ request }) => request.mode === 'navigate',
  async ({ request, url }) => {
    try {
      return await fetch(request);
    } catch {
      if (await matchPrecache(`${url.pathname}/index.html`)) {
        return Response.redirect(`${url.pathname}/${url.search}`, 302);
      }
      return (await matchPrecache('/404.html')) ?? Response.error();
    }
  },
);

mapPictures(worker);

async function keepEarlier(): Promise<void> {
  const current = await caches.open(cacheNames.precache);
  const requests = (await current.keys()).filter(({ url }) => new URL(url).pathname.startsWith(PARTS));
  if (requests.length === 0) return;
  await caches.delete(EARLIER);
  const earlier = await caches.open(EARLIER);
  for (const request of requests) {
    const part = await current.match(request);
    if (part) await earlier.put(request, part);
  }
}
