import type { Problem, Result } from '../units/result.ts';
import { timeAt } from './clock.ts';
import type { Interval } from './depth-windows.ts';
import type { WindAt } from './shapes.ts';

/**
 * Where a forecast comes from: winds for a place, WGS 84 degrees, and a span of time, s since 1970. What it returns may end
 * before the span does: `windAt` then says that it is unknown. Never throws.
 */
export type ForecastSource = (
  place: { readonly lat: number; readonly lon: number },
  span: Interval,
  signal?: AbortSignal,
) => Promise<Result<readonly WindAt[]>>;

export interface WebForecast {
  /** Address of the service with {lat} and {lon}, and {from} and {to} if it wants them (UTC), given by the page's owner. */
  readonly address: string;
  /** The platform's `fetch`, or one that stands for it. */
  readonly request: (
    address: string,
    options: { credentials: 'omit'; referrerPolicy: 'no-referrer'; signal?: AbortSignal },
  ) => Promise<{ readonly ok: boolean; readonly status: number; text(): Promise<string> }>;
  /** How its answer is read, such as a forecast table with the columns of the service. */
  readonly read: (text: string) => Result<readonly WindAt[]>;
}

/**
 * A forecast over the web. There is no address in this program and nothing is asked for unless a page sets one. The place
 * goes out rounded to 0.01 degree, finer than forecasts are, without cookies or referrer; a time limit is the signal's.
 */
export function webForecast({ address, request, read }: WebForecast): ForecastSource {
  return async ({ lat, lon }, { from, to }, signal) => {
    const filled = address
      .replaceAll('{lat}', lat.toFixed(2))
      .replaceAll('{lon}', lon.toFixed(2))
      .replaceAll('{from}', encodeURIComponent(timeAt(from, 0)))
      .replaceAll('{to}', encodeURIComponent(timeAt(to, 0)));
    if (!/^https?:\/\//i.test(filled) || !address.includes('{lat}') || !address.includes('{lon}')) {
      return fault('forecast-address', 'The address of the forecast is not a web address with {lat} and {lon}');
    }
    let text: string;
    try {
      const answer = await request(filled, { credentials: 'omit', referrerPolicy: 'no-referrer', signal });
      if (!answer.ok) {
        const message = `The forecast service answered with the error ${answer.status}`;
        return fault('forecast-refused', message, answer.status);
      }
      text = await answer.text();
    } catch {
      return signal?.aborted
        ? fault('forecast-cancelled', 'The forecast was not waited for')
        : fault('forecast-unreachable', 'The forecast service cannot be reached');
    }
    return read(text);
  };
}

function fault(code: string, message: string, limit?: number): Result<never> {
  const problem: Problem = { code, path: '', message, limit };
  return { ok: false, problems: [problem] };
}
