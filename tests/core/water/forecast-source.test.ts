import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { readForecastTable } from '../../../src/core/files/forecast-table.ts';
import { secondsOf } from '../../../src/core/water/clock.ts';
import { webForecast } from '../../../src/core/water/forecast-source.ts';

/** Answers as an open forecast service does: lists side by side, by the hour. */
let server: Server;
let host = '';
const asked: string[] = [];

beforeAll(async () => {
  server = createServer((request, response) => {
    asked.push(request.url!);
    if (request.url!.startsWith('/broken')) {
      response.statusCode = 503;
      response.end('down for repair');
    } else if (request.url!.startsWith('/text')) {
      response.end('<html>hello</html>');
    } else if (!request.url!.startsWith('/slow')) {
      response.setHeader('content-type', 'application/json');
      const time = ['2026-07-15T09:00', '2026-07-15T10:00'];
      response.end(JSON.stringify({ hourly: { time, speed: [5.5, 6], from: [240, 250], gust: [8, 9] } }));
    }
  });
  await new Promise<void>((ready) => server.listen(0, '127.0.0.1', ready));
  host = `http://127.0.0.1:${(server.address() as AddressInfo).port}`;
});

afterAll(async () => {
  server.closeAllConnections();
  await new Promise((closed) => server.close(closed));
});

const place = { lat: 46.012345, lon: -32.056789 };
const span = { from: secondsOf('2026-07-15T09:00:00Z'), to: secondsOf('2026-07-15T15:00:00Z') };
const read = (text: string) =>
  readForecastTable(text, {
    time: 'time',
    direction: 'from',
    speed: 'speed',
    gust: 'gust',
    speedUnit: 'm/s',
    offset: 'Z',
  });
const source = (address: string) => webForecast({ address, request: fetch, read });
const code = async (address: string, signal?: AbortSignal) => {
  const found = await source(address)(place, span, signal);
  return found.ok ? 'ok' : found.problems[0]!.code;
};

describe('webForecast', () => {
  it('asks the address it was given for the place and span, and reads the answer', async () => {
    const found = await source(`${host}/v1?lat={lat}&lon={lon}&from={from}&to={to}`)(place, span);
    expect(found).toEqual({
      ok: true,
      value: [
        { time: '2026-07-15T09:00Z', fromDeg: 240, speed: 5.5, gust: 8 },
        { time: '2026-07-15T10:00Z', fromDeg: 250, speed: 6, gust: 9 },
      ],
    });
    expect(asked.at(-1)).toBe('/v1?lat=46.01&lon=-32.06&from=2026-07-15T09%3A00%3A00Z&to=2026-07-15T15%3A00%3A00Z');
  });

  it('passes on what is wrong with the answer', async () => {
    expect(await code(`${host}/text?{lat}{lon}`)).toBe('no-column');
  });

  it('says that the service refuses, cannot be reached, or was not waited for', async () => {
    expect(await code(`${host}/broken?{lat}{lon}`)).toBe('forecast-refused');
    expect(await code('http://127.0.0.1:9/?{lat}{lon}')).toBe('forecast-unreachable');
    expect(await code(`${host}/slow?{lat}{lon}`, AbortSignal.timeout(50))).toBe('forecast-cancelled');
  });

  it('asks nothing of an address that is none', async () => {
    const before = asked.length;
    expect(await code('')).toBe('forecast-address');
    expect(await code('javascript:alert({lat},{lon})')).toBe('forecast-address');
    expect(await code(`${host}/without-place`)).toBe('forecast-address');
    expect(asked.length).toBe(before);
  });
});
