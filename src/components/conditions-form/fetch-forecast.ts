import type { LatLon } from '../../core/route/shapes.ts';
import { HOUR } from '../../core/units/convert.ts';
import type { Result } from '../../core/units/result.ts';
import { DAY, secondsOf } from '../../core/water/clock.ts';
import { webForecast } from '../../core/water/forecast-source.ts';

/** Longer than this nobody waits, ms. */
const PATIENCE = 20_000;
/** Most characters of an answer. */
const MOST_TEXT = 5e6;

/** Where a forecast is fetched from, to be told before it is. */
export function forecastHost(source: string): string {
  try {
    return new URL(whole(source).replace(/[{}]/g, '')).host;
  } catch {
    return source;
  }
}

/**
 * The answer of the host's forecast service for a place, as text: what its columns mean is for the user to see. Asked from
 * some hours before the departure, so that waves have a wind to grow under.
 */
export async function fetchForecast(
  source: string,
  place: LatLon,
  { departure, duration = DAY / 2 }: { readonly departure: string | undefined; readonly duration: number | undefined },
  signal: AbortSignal,
): Promise<Result<string>> {
  let answer = '';
  const ask = webForecast({
    address: whole(source),
    request: (address, options) => fetch(address, options),
    read: (text) => {
      answer = text;
      return { ok: true, value: [] };
    },
  });
  const start = departure === undefined ? Date.now() / 1000 : secondsOf(departure);
  const long = Number.isFinite(duration) ? duration : DAY / 2;
  const span = { from: start - 3 * HOUR, to: start + Math.max(long, DAY / 2) };
  const found = await ask(place, span, AbortSignal.any([signal, AbortSignal.timeout(PATIENCE)]));
  if (!found.ok) return found;
  if (answer.length <= MOST_TEXT) return { ok: true, value: answer };
  const message = 'The answer of the forecast service is too large';
  return { ok: false, problems: [{ code: 'too-big', path: '', message, limit: MOST_TEXT }] };
}

/** A host may name a path of its own site. */
function whole(source: string): string {
  return source.startsWith('/') ? location.origin + source : source;
}
