import { describe, expect, it } from 'vitest';
import { readDraft, readTrip, readTripText } from '../../../src/core/files/trip-schema.ts';
import type { Problem, Result } from '../../../src/core/units/result.ts';
import { electricTrip, petrolTrip, places, shippedTrips, withAt } from './full-trips.ts';

const full = { petrol: petrolTrip(), electric: electricTrip() };

function problemsOf(result: Result<unknown>): readonly Problem[] {
  return result.ok ? [] : result.problems;
}

/** The only problem of a trip with one value changed. */
function problemAt(path: string, value: unknown, trip: unknown = full.petrol): Problem {
  const problems = problemsOf(readTrip(withAt(trip, path.split('.'), value)));
  expect(problems.map((problem) => problem.path)).toEqual([path]);
  return problems[0]!;
}

describe('readTrip', () => {
  it.each(Object.entries({ ...shippedTrips, ...full }))('gives back the %s trip exactly as it was', (_name, trip) => {
    expect(readTrip(structuredClone(trip))).toEqual({ ok: true, value: trip });
    expect(readTripText(JSON.stringify(trip))).toEqual({ ok: true, value: trip });
  });

  it.each(Object.entries(full))(
    'finds an impossible number at its place, wherever it stands in a %s trip',
    (_name, trip) => {
      for (const [keys, value] of places(trip)) {
        if (typeof value !== 'number' || keys[0] === 'version') continue;
        for (const wrong of [1e300, -1e300, Infinity, -Infinity, Number.NaN, '1', null, true, [], {}]) {
          const problems = problemsOf(readTrip(withAt(trip, keys, wrong)));
          expect(problems[0]?.path, `${keys.join('.')} = ${wrong}`).toContain(keys.join('.'));
        }
      }
    },
  );

  it.each(Object.entries(full))(
    'finds an impossible word at its place, wherever it stands in a %s trip',
    (_name, trip) => {
      for (const [keys, value] of places(trip)) {
        if (typeof value !== 'string') continue;
        for (const wrong of ['x'.repeat(201), 7, null, false, []]) {
          // A number may stand for the planned speed.
          if (wrong === 7 && keys.at(-1) === 'speed') continue;
          const problems = problemsOf(readTrip(withAt(trip, keys, wrong)));
          expect(problems[0]?.path, `${keys.join('.')} = ${wrong}`).toContain(keys.join('.'));
        }
      }
    },
  );

  it.each(Object.entries(full))('misses what must be there and only that in a %s trip', (_name, trip) => {
    const needless: string[] = [];
    for (const [keys] of places(trip)) {
      if (keys.length === 0 || /^\d+$/.test(keys.at(-1)!)) continue;
      const result = readTrip(withAt(trip, keys, undefined));
      if (result.ok) needless.push(keys.filter((key) => !/^\d+$/.test(key)).join('.'));
      else if (keys[0] !== 'version')
        expect(result.problems[0]).toMatchObject({ code: 'missing', path: keys.join('.') });
    }
    const optional =
      /^(name|waters|trials|craft\.fouling|trials\.(measuredBy|fouling|(runs|refills)\.(day|stream|rpm|fullThrottle|consumed|consumedError|wind|waveHeight|leftOut|note|readAt))|trials\..*\.(plate|tube|transomHeight|shaft|maxCurrent|fill|fillKnownBy|name|station|at|helm)|trials\.hull\.plate\.(?!scheme)\w+|craft\.hull\.(plate|tube|transomHeight)|craft\.hull\.plate\.(?!scheme)\w+|.*\.z|craft\.drive\.shaft|craft\.store\.batteries\.maxCurrent|load\.fill(KnownBy)?|load\.items\.(name|station|at|helm)|route\.waypoints\.(name|stop|speed|streamPlace)|conditions\.(?!water$)[^.]+|policy\.(?!reserve)\w+)$/;
    expect(needless.filter((field) => !optional.test(field))).toEqual([]);
    expect(needless.length).toBeGreaterThan(20);
  });

  it.each(Object.entries(full))(
    'refuses a misspelt field in every part of a %s trip, lest a limit be lost',
    (_name, trip) => {
      for (const [keys, value] of places(trip)) {
        if (value === null || typeof value !== 'object' || Array.isArray(value)) continue;
        const place = [...keys, 'maxwind'];
        const problems = problemsOf(readTrip(withAt(trip, place, 3)));
        expect(problems).toMatchObject([{ code: 'unknown-field', path: place.join('.') }]);
        expect(problems[0]!.message).toContain('"maxwind"');
      }
    },
  );

  it('says what is wrong in words of a boat owner, never in those of a library', () => {
    for (const trip of Object.values(full)) {
      for (const [keys, value] of places(trip)) {
        if (keys.length === 0) continue;
        for (const wrong of [undefined, null, 1e300, -1e300, 'nonsense', [], {}, [null]]) {
          if (wrong === value) continue;
          for (const { message } of problemsOf(readTrip(withAt(trip, keys, wrong)))) {
            expect(message).toMatch(/^[A-Z]/);
            expect(message).not.toMatch(
              /Invalid|Expected|received|undefined|null|NaN|Object|This value|cannot be read|\bof this\b/,
            );
          }
        }
      }
    }
  });

  it('counts people and gear, waypoints and tanks from one', () => {
    expect(problemAt('load.items.2.mass', 0)).toEqual({
      code: 'too-small',
      path: 'load.items.2.mass',
      message: 'The weight of item 3 must be more than 0 kg',
      limit: 0,
    });
    expect(problemAt('route.waypoints.4.lat', 91).message).toBe(
      'The latitude of waypoint 5 must be at most 85 degrees',
    );
    expect(problemAt('craft.store.tanks.0.capacityL', -12).message).toBe(
      'The capacity of tank 1 must be more than 0 L',
    );
    expect(problemAt('craft.hull.beam', 'wide').message).toBe('The beam of the hull must be a number');
    expect(problemAt('craft.drive.cycle', '3s').message).toBe(
      'The engine cycle of the engine must be "4s-carb", "4s-efi", "2s-carb" or "2s-di"',
    );
  });

  it('tells every problem at once', () => {
    const trip = petrolTrip();
    trip.load.fill = 1.2;
    trip.load.items[0].mass = -85;
    trip.craft.store.tanks[0].capacityL = 'full';
    expect(
      problemsOf(readTrip(trip))
        .map(({ path }) => path)
        .toSorted(),
    ).toEqual(['craft.store.tanks.0.capacityL', 'load.fill', 'load.items.0.mass']);
  });

  it('takes the ends of a range and nothing beyond', () => {
    for (const fill of [0, 1]) expect(readTrip(withAt(full.petrol, ['load', 'fill'], fill)).ok).toBe(true);
    problemAt('load.fill', -1e-9);
    problemAt('load.fill', 1 + 1e-9);
    problemAt('craft.store.batteries.0.energyWh', 0, full.electric);
    problemAt('craft.store.batteries.0.health', 0, full.electric);
    problemAt('route.speed', 0);
    // Distances are reckoned between 85 degrees south and north.
    problemAt('route.waypoints.3.lat', -85.1);
    problemAt('route.waypoints.3.lon', -180.1);
    problemAt('policy.drawnFactor', 0.99);
  });

  it('needs a route of two waypoints and somebody or something aboard', () => {
    problemAt('route.waypoints', []);
    expect(problemAt('route.waypoints', [{ lat: 46, lon: -32 }]).message).toBe(
      'The list of waypoints must have at least 2 entries',
    );
    problemAt('load.items', []);
  });

  it('reads 5000 waypoints and 60 items, no more', () => {
    const waypoints = Array.from({ length: 5001 }, (_, i) => ({ lat: 46 + i * 1e-5, lon: -32 }));
    expect(readTrip(withAt(full.petrol, ['route', 'waypoints'], waypoints.slice(1))).ok).toBe(true);
    expect(problemAt('route.waypoints', waypoints)).toMatchObject({ code: 'too-many', limit: 5000 });
    const items = Array.from({ length: 61 }, (_, i) => ({ id: `bag-${i}`, kind: 'gear', mass: 1 }));
    expect(readTrip(withAt(full.petrol, ['load', 'items'], items.slice(1))).ok).toBe(true);
    expect(problemAt('load.items', items)).toMatchObject({ code: 'too-many', limit: 60 });
  });

  it('wants the departure with its offset, on a day there is', () => {
    for (const time of ['2028-02-29T10:00:00+01:00', '2027-06-19T10:00Z', '2027-06-19T23:59:59.5-03:30']) {
      expect(readTrip(withAt(full.petrol, ['conditions', 'departure'], time)).ok, time).toBe(true);
    }
    for (const time of [
      '2027-02-29T10:00:00+01:00',
      '2027-13-01T10:00:00Z',
      '2027-06-31T10:00:00Z',
      '2027-06-19T24:00:00Z',
      '2027-06-19T10:00:00',
      '2027-06-19',
      'tomorrow',
      '',
    ]) {
      expect(problemAt('conditions.departure', time).code).toBe('not-a-time');
    }
  });

  it('sees what is sound alone but does not fit together', () => {
    expect(problemAt('craft.hull.wettedLength', 3.7)).toMatchObject({ code: 'too-large', limit: 3.6 });
    expect(problemAt('craft.hull.planingBeam', 1.9)).toMatchObject({ code: 'too-large', limit: 1.85 });
    expect(problemAt('craft.hull.stations.1.id', 'helm').code).toBe('duplicate');
    expect(problemAt('craft.drive.propeller.pitch', 0.6).message).toContain('0.4 and 1.5 times its diameter');
    expect(problemAt('craft.drive.propeller.pitch', 0.05).code).toBe('out-of-range');
    expect(problemAt('craft.store.tanks.0.unusableL', 12.5).limit).toBe(12);
    expect(problemAt('load.items.1.id', 'skipper').code).toBe('duplicate');
    expect(problemAt('load.items.1.station', 'crow-nest').message).toContain('"crow-nest"');
    expect(problemAt('load.items.1.helm', true).code).toBe('two-helms');
    const dog = readTrip(withAt(full.petrol, ['load', 'items', '0', 'kind'], 'dog'));
    expect(problemsOf(dog)).toMatchObject([{ code: 'helm-not-person', path: 'load.items.0.helm' }]);
    const short = readTrip(withAt(full.petrol, ['craft', 'hull', 'wettedLength'], 1));
    expect(problemsOf(short)).toMatchObject([{ code: 'too-large', path: 'craft.hull.planingBeam', limit: 1 }]);
  });

  it('lets no petrol engine run on a battery, nor a motor on a tank', () => {
    const swapped = [
      withAt(full.petrol, ['craft', 'store'], full.electric.craft.store),
      withAt(full.electric, ['craft', 'store'], full.petrol.craft.store),
    ];
    for (const trip of swapped) {
      expect(problemsOf(readTrip(trip))).toMatchObject([{ code: 'wrong-store', path: 'craft.store.kind' }]);
    }
  });

  it('drops a calibration that a trip brings along: it is worked out from the runs, never believed', () => {
    const calibration = { factors: [1, 1, 1, 0, 0, 1, 0], covariance: [], runs: 90 };
    const result = readTrip(withAt(full.petrol, ['craft', 'calibration'], calibration));
    expect(result.ok && 'calibration' in result.value.craft).toBe(false);
    expect(result.ok).toBe(true);
  });

  it('says which version it cannot read', () => {
    expect(problemAt('version', 2)).toMatchObject({ code: 'unknown-version' });
    expect(problemAt('version', 2).message).toContain('version 2');
    for (const version of ['1', null, 0, {}]) expect(problemAt('version', version).code).toBe('unknown-version');
  });

  it.each([undefined, null, 7, 'trip', [], {}, { type: 'FeatureCollection' }, () => 1])(
    'knows that %s is no trip',
    (value) => {
      expect(problemsOf(readTrip(value))).toMatchObject([{ code: 'not-a-trip', path: '' }]);
    },
  );

  it('does not let a field reach the prototype', () => {
    for (const key of ['__proto__', 'constructor', 'prototype']) {
      const text = JSON.stringify(full.petrol).replace('"load":{', `"load":{"${key}":{"fill":1},`);
      expect(problemsOf(readTripText(text))).toMatchObject([{ code: 'unsafe-key', path: `load.${key}` }]);
    }
    expect(({} as { fill?: number }).fill).toBeUndefined();
  });

  it('ends on circles, bottomless nesting, throwing fields and endless lists', () => {
    const circle = petrolTrip();
    circle.craft.hull.centre.back = circle;
    expect(problemsOf(readTrip(circle))[0]!.code).toBe('too-deep');
    const trap = petrolTrip();
    Object.defineProperty(trap.load, 'fill', { enumerable: true, get: () => JSON.parse('') });
    expect(problemsOf(readTrip(trap))[0]!.code).toBe('unreadable');
    expect(problemsOf(readTrip(withAt(full.petrol, ['load', 'items'], new Array(2 ** 31))))[0]!.code).toBe('too-big');
  });
});

describe('readDraft', () => {
  it('takes a planner in which nothing is drawn and nobody is aboard yet', () => {
    const draft = petrolTrip();
    draft.load.items = [];
    for (const waypoints of [[], [{ lat: 46, lon: -32 }]]) {
      draft.route.waypoints = waypoints;
      expect(readDraft(draft)).toEqual({ ok: true, value: draft });
      expect(readTrip(draft).ok).toBe(false);
    }
  });

  it('is as strict as a trip with everything else', () => {
    for (const [keys, value] of places(full.petrol)) {
      if (typeof value !== 'number') continue;
      expect(readDraft(withAt(full.petrol, keys, 1e300)).ok, keys.join('.')).toBe(false);
    }
  });
});

describe('readTripText', () => {
  it('says line and column where the text stops being JSON', () => {
    expect(problemsOf(readTripText('{\n  "version": 1,\n  "name": Sunday\n}'))).toMatchObject([
      { code: 'not-json', message: 'The file is not valid JSON: "S" cannot stand at line 3, column 11' },
    ]);
  });

  it('refuses more than 2 million characters without reading them', () => {
    expect(problemsOf(readTripText(`${' '.repeat(2e6)}{}`))[0]).toMatchObject({ code: 'too-big', limit: 2e6 });
  });
});
