import type { LatLon } from '../../core/route/shapes.ts';

export type Fixed =
  | { readonly ok: true; readonly at: LatLon /** Radius within which it lies, m. */; readonly within: number }
  | { readonly ok: false; readonly why: 'none' | 'refused' | 'lost' };

/** ms; a position under open sky takes a while. */
const PATIENCE = 30_000;

/** Where this device is; never throws, whatever the page is not allowed. */
export function whereIAm(): Promise<Fixed> {
  return new Promise((resolve) => {
    try {
      const source = globalThis.navigator.geolocation;
      if (!source || !globalThis.isSecureContext) return resolve({ ok: false, why: 'none' });
      source.getCurrentPosition(
        ({ coords }) =>
          resolve({ ok: true, at: { lat: coords.latitude, lon: coords.longitude }, within: coords.accuracy }),
        ({ code, PERMISSION_DENIED }) => resolve({ ok: false, why: code === PERMISSION_DENIED ? 'refused' : 'lost' }),
        { enableHighAccuracy: true, maximumAge: 15_000, timeout: PATIENCE },
      );
    } catch {
      resolve({ ok: false, why: 'none' });
    }
  });
}
