import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parseDecimal } from '../../../src/components/units/decimal.ts';
import { measuresFor } from '../../../src/components/units/measures.ts';
import type { Measure } from '../../../src/core/trip/shapes.ts';

const plain = (text: string) => text.replaceAll('\u00a0', ' ');
const nautical = measuresFor('nautical', 'en');
const metric = measuresFor('metric', 'en');
const imperial = measuresFor('imperial', 'en-US');
const MEASURES: Measure[] = [
  'amount',
  'mass',
  'speed',
  'power',
  'time',
  'length',
  'distance',
  'count',
  'share',
  'angle',
];
const SYSTEMS = [nautical, metric, imperial];

describe('show', () => {
  it('gives one speed in the units of each system', () => {
    // 10 kn = 5.14444 m/s = 18.52 km/h = 11.508 mph (1852 m and 1609.344 m exactly).
    const tenKnots = 18_520 / 3600;
    expect(SYSTEMS.map((m) => plain(m.show('speed', tenKnots)))).toEqual(['10.0 kn', '18.5 km/h', '11.5 mph']);
  });

  it('shows fuel as volume and charge as energy', () => {
    // 12 L of petrol at 0.745 kg/L; 12 L = 3.170 US gallons.
    expect(SYSTEMS.map((m) => plain(m.show('amount', 12 * 0.745)))).toEqual(['12.0 L', '12.0 L', '3.17 gal']);
    expect(plain(nautical.show('amount', 850 * 3600, 'charge'))).toBe('850 Wh');
    expect(plain(nautical.show('amount', 1.4 * 3.6e6, 'charge'))).toBe('1.40 kWh');
  });

  it('turns short distances into metres or feet', () => {
    expect(plain(nautical.show('distance', 150))).toBe('150 m');
    expect(plain(nautical.show('distance', 1852))).toBe('1.0 NM');
    expect(plain(metric.show('distance', 150))).toBe('150 m');
    expect(plain(imperial.show('distance', 30.48))).toBe('100 ft');
  });

  it('writes minus as minus, zero without one, and a dash for what is no figure', () => {
    expect(plain(nautical.show('amount', -0.745))).toBe('\u22121.0 L');
    expect(plain(nautical.show('amount', -0.001))).toBe('0.0 L');
    expect(nautical.show('speed', Number.NaN)).toBe('–');
    expect(nautical.show('time', Infinity)).toBe('–');
  });

  it('follows the language of the page, and English where it is unknown', () => {
    expect(plain(measuresFor('nautical', 'de').show('speed', 18_520 / 3600))).toBe('10,0 kn');
    expect(plain(measuresFor('nautical', '?!').show('speed', 18_520 / 3600))).toBe('10.0 kn');
    expect(plain(measuresFor('nautical', '').show('mass', 1234))).toBe('1,234 kg');
  });

  it('shows shares and angles without a space', () => {
    expect(nautical.show('share', 0.93)).toBe('93%');
    expect(nautical.show('angle', 4.2)).toBe('4°');
    expect(nautical.bearing(4.2)).toBe('004°');
    expect(nautical.bearing(-0.2)).toBe('000°');
    expect(nautical.bearing(359.7)).toBe('000°');
  });
});

describe('flow and perDistance', () => {
  it('tell consumption by the hour and by the mile', () => {
    const litrePerHour = 0.745 / 3600;
    expect(plain(nautical.flow(9.8 * litrePerHour, 'fuel'))).toBe('9.8 L/h');
    expect(plain(imperial.flow(3.785411784 * litrePerHour, 'fuel'))).toBe('1.0 gal/h');
    expect(plain(nautical.flow(850, 'charge'))).toBe('850 W');
    expect(plain(nautical.flow(3240, 'charge'))).toBe('3.2 kW');
    expect(plain(nautical.perDistance((0.76 * 0.745) / 1852, 'fuel'))).toBe('0.76 L/NM');
    expect(plain(metric.perDistance((240 * 3600) / 1000, 'charge'))).toBe('240 Wh/km');
  });

  it('show a flow whose digits change at ten and at a thousand watts without jumping a unit', () => {
    expect(plain(nautical.flow(999.7, 'charge'))).toBe('1.0 kW');
    expect(plain(nautical.flow((9.96 * 0.745) / 3600, 'fuel'))).toBe('10.0 L/h');
  });
});

describe('band', () => {
  it('names both ends with one unit', () => {
    const litres = (low: number, high: number) => ({ low: low * 0.745, median: low * 0.745, high: high * 0.745 });
    expect(plain(nautical.band('amount', litres(6.1, 7.9)))).toBe('6.1 to 7.9 L');
    expect(plain(nautical.band('amount', litres(6.11, 6.12)))).toBe('6.1 L');
    expect(plain(nautical.band('time', { low: 3600, median: 4000, high: 5400 }))).toBe('1 h 00 min to 1 h 30 min');
  });
});

describe('time and clock', () => {
  it('tell how long and when', () => {
    expect(plain(nautical.time(7500))).toBe('2 h 05 min');
    expect(plain(nautical.time(45 * 60))).toBe('45 min');
    expect(plain(nautical.time(3599.9))).toBe('1 h 00 min');
    expect(plain(nautical.time(12))).toBe('under 1 min');
    expect(plain(nautical.time(0))).toBe('0 min');
    expect(plain(nautical.time(-1800))).toBe('\u221230 min');
  });

  it('keep the clock of the place of departure, whatever zone the computer is in', () => {
    expect(nautical.clock('2026-07-15T09:30:00+01:00', 7500)).toBe('11:35');
    expect(nautical.clock('2026-07-15T09:30-03:30', 0)).toBe('09:30');
    expect(plain(nautical.clock('2026-12-31T23:30:00Z', 3600))).toBe('00:30 +1 d');
    expect(plain(nautical.clock('2026-03-01T00:10:00Z', -3600))).toBe('23:10 \u22121 d');
  });

  it('count from departure where none was given', () => {
    expect(plain(nautical.clock(undefined, 7500))).toBe('+2 h 05 min');
    expect(plain(nautical.clock('soon', 600))).toBe('+10 min');
  });
});

describe('figures in inputs', () => {
  it('come back as the same amount within what is shown, in every unit and language', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.01, max: 5000, noNaN: true }),
        fc.constantFrom(...MEASURES),
        fc.constantFrom<'fuel' | 'charge'>('fuel', 'charge'),
        fc.constantFrom<'metric' | 'nautical' | 'imperial'>('metric', 'nautical', 'imperial'),
        fc.constantFrom('en', 'de', 'fr'),
        (shown, measure, store, system, lang) => {
          const m = measuresFor(system, lang);
          const si = m.toSi(measure, shown, store);
          expect(m.fromSi(measure, si, store)).toBeCloseTo(shown, 9);
          const back = parseDecimal(m.figure(measure, si, store), lang);
          expect(Math.abs(back! - shown)).toBeLessThanOrEqual(0.5 * 10 ** -m.digits(measure, shown, store));
        },
      ),
      { seed: 3, numRuns: 500 },
    );
  });

  it('carry no needless zeros', () => {
    expect(nautical.figure('length', 3.3)).toBe('3.3');
    expect(nautical.figure('amount', 25 * 0.745)).toBe('25');
    expect(nautical.figure('speed', Number.NaN)).toBe('');
  });
});

it('never shows NaN, undefined or minus zero for any figure', () => {
  fc.assert(
    fc.property(fc.double(), fc.constantFrom(...MEASURES), fc.constantFrom(...SYSTEMS), (si, measure, m) => {
      const texts = [
        m.show(measure, si),
        m.show(measure, si, 'charge'),
        m.figure(measure, si),
        m.flow(si, 'fuel'),
        m.flow(si, 'charge'),
        m.perDistance(si, 'fuel'),
        m.band(measure, { low: si, median: si, high: si }),
        m.clock('2026-07-15T09:30:00+01:00', si),
        m.bearing(si),
      ];
      for (const text of texts) expect(text).not.toMatch(/NaN|undefined|Infinity|\u22120(?:\.0+)?(?![.\d])/);
    }),
    { seed: 3, numRuns: 500 },
  );
});
