import { createHash } from 'node:crypto';
import { deflateSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { base64UrlOf } from '../../../src/core/files/base64-url.ts';
import { crc32 } from '../../../src/core/files/crc32.ts';
import { SHARE_DICTIONARY } from '../../../src/core/files/share-dictionary.ts';
import { readShareLink, type SharedWith, writeShareLink } from '../../../src/core/files/share-link.ts';
import type { Trip } from '../../../src/core/trip/shapes.ts';
import { planOf, shipped } from '../../trips.ts';
import { electricTrip, petrolTrip } from './full-trips.ts';

const PAGE = 'https://club.example/plan/';

function link(trip: Trip, shared?: SharedWith): string {
  const written = writeShareLink(trip, PAGE, shared);
  if (!written.ok) throw new Error(written.problems[0]!.message);
  return written.value;
}

function opened(address: string): Trip {
  const read = readShareLink(address);
  if (!read.ok) throw new Error(read.problems[0]!.message);
  return read.value;
}

function codeOf(address: string): string | undefined {
  const read = readShareLink(address);
  return read.ok ? undefined : read.problems[0]!.code;
}

/** A link as somebody else might make it, of any bytes. */
function forged(text: string, version = 1): string {
  const json = new TextEncoder().encode(text);
  const packed = deflateSync(json, { dictionary: new TextEncoder().encode(SHARE_DICTIONARY) });
  const bytes = new Uint8Array(packed.length + 4);
  bytes.set(packed);
  new DataView(bytes.buffer).setUint32(packed.length, crc32(json));
  return `#trip=${version}.${base64UrlOf(bytes)}`;
}

const shippedTrips = ['petrol-day', 'electric-tender', 'hire-hull'] as const;

describe('writeShareLink', () => {
  it.each(shippedTrips)('carries %s in fewer than 2,000 characters', (name) => {
    expect(link(shipped(name)).length).toBeLessThan(2000);
    expect(link(shipped(name), { names: true }).length).toBeLessThan(2000);
  });

  it('carries an own boat, six aboard and forty waypoints put down by hand in fewer than 2,000 characters', () => {
    const trip = shipped('petrol-day');
    const digits = (seed: number, from: number) => Math.round((from + ((seed * 7919) % 997) / 9970) * 1e6) / 1e6;
    const waypoints = Array.from({ length: 40 }, (_, i) => ({ lat: digits(i + 1, 45.9), lon: digits(i + 71, -32.1) }));
    const hull = { ...trip.craft.hull, name: 'Grey boat of the sailing school', length: 3.71, beam: 1.79, mass: 63.5 };
    const own = { ...trip, craft: { ...trip.craft, hull }, route: { ...trip.route, waypoints } };
    expect(link(own).length).toBeLessThan(2000);
  });

  it('says nothing of who is aboard, what they brought and what was noted', () => {
    const trip: Trip = structuredClone(petrolTrip());
    const named: Trip = {
      ...trip,
      name: 'With Edda, 0555 0100',
      load: {
        ...trip.load,
        items: [{ id: 'edda', kind: 'adult', name: 'Edda (insulin)', mass: 70, station: 'helm', helm: true }],
      },
      trials: { ...trip.trials!, measuredBy: 'Edda' },
    };
    const carried = JSON.stringify(opened(link(named)));
    for (const word of ['edda', '0555', 'insulin', '"note"', 'measuredBy']) {
      expect(carried.toLowerCase()).not.toContain(word.toLowerCase());
    }
    expect(opened(link(named, { names: true }))).toStrictEqual(named);
  });

  it('keeps the page it was made on and drops what stood in its fragment', () => {
    const written = writeShareLink(shipped('petrol-day'), `${PAGE}?lang=de#answer`);
    expect(written.ok && written.value.startsWith(`${PAGE}?lang=de#trip=1.`)).toBe(true);
  });

  it('writes no link for what could not be opened again', () => {
    const trip = shipped('petrol-day');
    const written = writeShareLink({ ...trip, load: { ...trip.load, fill: 7 } }, PAGE);
    expect(written).toMatchObject({ ok: false, problems: [{ code: 'too-large', path: 'load.fill' }] });
  });

  it('refuses a trip no messenger would carry', () => {
    const trip = petrolTrip();
    const note = () => Array.from({ length: 200 }, () => String.fromCharCode(33 + Math.floor(random() * 90))).join('');
    let state = 7;
    const random = () => {
      state = (state * 16807) % 2147483647;
      return state / 2147483647;
    };
    trip.trials.runs = Array.from({ length: 500 }, (_, i) => ({ ...trip.trials.runs[1], id: `${i}`, note: note() }));
    const many = { ...trip, trials: { ...trip.trials, refills: [] } };
    many.load = { items: trip.load.items };
    many.route.waypoints = Array.from({ length: 5000 }, (_, i) => ({ lat: random() * 80, lon: i / 50, name: note() }));
    const written = writeShareLink(many, PAGE, { names: true });
    expect(written).toMatchObject({ ok: false, problems: [{ code: 'link-too-long' }] });
  });
});

describe('readShareLink', () => {
  it.each(shippedTrips)('opens %s as exactly the same plan', (name) => {
    const trip = shipped(name);
    expect(planOf(opened(link(trip)))).toStrictEqual(planOf(trip));
  });

  it.each([
    ['petrol', petrolTrip],
    ['electric', electricTrip],
  ])('gives back a %s trip with every field given', (_name, made) => {
    expect(opened(link(made(), { names: true }))).toStrictEqual(made());
  });

  it('opens a trip that has no route yet', () => {
    const { route, ...trip } = shipped('petrol-day');
    expect(opened(link({ ...trip, route: { ...route, waypoints: [] } })).route.waypoints).toEqual([]);
  });

  it('opens what was copied out of a sentence, or stands beside another part of the fragment', () => {
    const address = link(shipped('petrol-day'));
    for (const around of [`${address}.`, `${address})`, `${address}\n`, address.replace('#', '#answer&')]) {
      expect(codeOf(around)).toBeUndefined();
    }
  });

  it('says what is wrong with a link that is cut short, changed, empty or not one of ours', () => {
    const address = link(shipped('petrol-day'));
    expect(codeOf(address.slice(0, -1))).toBe('link-damaged');
    expect(codeOf(address.slice(0, 300))).toBe('link-damaged');
    expect(codeOf(address.toLowerCase())).toBe('link-damaged');
    expect(codeOf(`${PAGE}#trip=`)).toBe('link-damaged');
    expect(codeOf('#trip=1.')).toBe('link-damaged');
    expect(codeOf('#trip=0.AAAAAAAA')).toBe('link-damaged');
    expect(codeOf('#trip=<script>alert(1)</script>')).toBe('link-damaged');
    expect(codeOf('#answer')).toBe('no-trip-in-link');
    expect(codeOf('')).toBe('no-trip-in-link');
    expect(codeOf(`#trip=1.${'A'.repeat(300_000)}`)).toBe('link-too-long');
  });

  it('knows a link of a newer page from a damaged one', () => {
    expect(codeOf(forged(JSON.stringify(shipped('petrol-day')), 2))).toBe('link-too-new');
    expect(codeOf(forged(JSON.stringify({ ...shipped('petrol-day'), version: 2 })))).toBe('unknown-version');
  });

  it('takes nothing from a forged link that a file would not be believed', () => {
    expect(codeOf(forged('{"version":1}'))).toBe('missing');
    expect(codeOf(forged('{"__proto__":{"version":1}}'))).toBe('unsafe-key');
    expect(codeOf(forged('no JSON'))).toBe('link-damaged');
    const heavy = { ...shipped('petrol-day'), policy: { reserve: [{ kind: 'share', share: -1 }] } };
    expect(codeOf(forged(JSON.stringify(heavy)))).toBe('too-small');
  });

  it('stops unfolding a link that would fill the memory', () => {
    const bomb = forged(' '.repeat(20e6));
    expect(bomb.length).toBeLessThan(200_000);
    expect(codeOf(bomb)).toBe('link-damaged');
  });

  it('opens the links people keep: the dictionary of version 1 never changes', () => {
    const hash = createHash('sha256').update(SHARE_DICTIONARY).digest('hex');
    expect(hash).toBe('bc411f2a20978a73ae0e5891aea95787ae4302d3baf2319764417db4534c906f');
  });
});

describe('crc32', () => {
  it('gives the check value of the standard', () => {
    expect(crc32(new TextEncoder().encode('123456789'))).toBe(0xcbf43926);
  });
});
