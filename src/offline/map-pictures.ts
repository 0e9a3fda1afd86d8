import { ExpirationPlugin } from 'workbox-expiration';
import { registerRoute } from 'workbox-routing';
import { NetworkFirst } from 'workbox-strategies';

/** The reader's choice and the pictures in one: while it exists they are kept (components/route-map/kept-pictures.ts). */
const KEPT = 'homeleg-map-pictures';
/** Some 10 MB: what was looked at on a few outings. Days after which a coast may have been drawn anew. */
const limits = new ExpirationPlugin({ maxEntries: 600, maxAgeSeconds: 30 * 24 * 3600, purgeOnQuotaError: true });

/**
 * Keeps map pictures that were looked at, where the reader asked for it; never fetches ahead, which makers of street maps
 * forbid. The network comes first, with the browser's own cache as the server's headers allow; what is kept here is shown
 * only without it. The map marks such requests by asking for them across origins (`cors`).
 */
export function mapPictures(worker: EventTarget): void {
  const strategy = new NetworkFirst({
    cacheName: KEPT,
    plugins: [
      {
        cacheWillUpdate: async ({ response }) => {
          const refused = response.headers.get('Cache-Control')?.includes('no-store') ?? false;
          return response.status === 200 && !refused && (await caches.has(KEPT)) ? response : null;
        },
      },
      limits,
    ],
  });
  registerRoute(
    ({ request, sameOrigin }) => !sameOrigin && request.destination === 'image' && request.mode === 'cors',
    strategy,
  );
  worker.addEventListener('message', (event) => {
    const { data, ports } = event as MessageEvent<{ type?: string }>;
    if (data?.type === 'MAY_KEEP_PICTURES') ports[0]?.postMessage(true);
    if (data?.type === 'FORGET_PICTURES') {
      (event as unknown as { waitUntil(work: Promise<unknown>): void }).waitUntil(limits.deleteCacheAndMetadata());
    }
  });
}
