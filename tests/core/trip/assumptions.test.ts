import { describe, expect, it } from 'vitest';
import { assumptions } from '../../../src/core/trip/assumptions.ts';
import { prepare } from '../../../src/core/trip/prepare.ts';
import type { Plan, Trip } from '../../../src/core/trip/shapes.ts';
import { haven, planOf, shipped, soundTrip } from '../../trips.ts';

const of = (plan: Plan) => plan.assumptions.map(({ code }) => code);

function changed(change: { [Part in keyof Trip]?: Partial<Trip[Part]> }, trip = soundTrip()): Plan {
  const parts = Object.entries(change).map(([part, with_]) => [
    part,
    { ...(trip[part as keyof Trip] as object), ...(with_ as object) },
  ]);
  return planOf({ ...trip, ...Object.fromEntries(parts) } as Trip, { quick: true });
}

describe('what a plan takes for granted', () => {
  it('are the figures of what nobody told', () => {
    const { wind: _, stream: __, sea: ___, ...conditions } = soundTrip().conditions;
    const plan = planOf(
      {
        ...soundTrip(),
        conditions,
        load: { ...soundTrip().load, fill: undefined, fillKnownBy: undefined },
        policy: { reserve: [] },
      },
      { quick: true },
    );
    const length = soundTrip().craft.hull.length;
    expect(plan.assumptions).toEqual(
      expect.arrayContaining([
        { code: 'fill', measure: 'share', value: 0.5 },
        { code: 'wind', measure: 'speed', value: 4.4 },
        { code: 'stream', measure: 'speed', value: 0.25 },
        { code: 'sea', measure: 'length', value: expect.closeTo(0.04 * length, 9) },
        expect.objectContaining({ code: 'manoeuvring', measure: 'time' }),
        expect.objectContaining({ code: 'drawn-factor' }),
        { code: 'reserve-rule' },
      ]),
    );
  });

  it('are not those of what was told', () => {
    const told = of(
      changed({ load: { fill: 0.8, fillKnownBy: 'measured' }, policy: { manoeuvring: 300, drawnFactor: 1.02 } }),
    );
    for (const code of ['fill', 'fill-gauge', 'wind', 'stream', 'sea', 'manoeuvring', 'drawn-factor', 'daylight']) {
      expect(told).not.toContain(code);
    }
    expect(of(changed({ load: { fill: 0.8, fillKnownBy: undefined } }))).toContain('fill-gauge');
  });

  it('name how many have no seat, and nobody where all have one', () => {
    const { items } = soundTrip().load;
    const seated = items.map((item) => ({ ...item, at: { x: 1.2, y: 0 }, station: undefined }));
    expect(of(changed({ load: { items: seated } }))).not.toContain('seat');
    const one = seated.map((item, i) => (i === 0 ? { ...item, at: undefined } : item));
    expect(changed({ load: { items: one } }).assumptions).toContainEqual({ code: 'seat', measure: 'count', value: 1 });
  });

  it('are the density of petrol with a tank, and the temperature of a battery nobody measured', () => {
    expect(of(changed({}))).toContain('petrol-density');
    expect(of(changed({}))).not.toContain('battery-temperature');
    const electric = shipped('electric-tender');
    const unsaid = changed({ conditions: { batteryTemperatureC: undefined } }, electric);
    expect(unsaid.assumptions).toContainEqual({ code: 'battery-temperature', value: 10 });
    expect(of(unsaid)).not.toContain('petrol-density');
    expect(of(changed({ conditions: { batteryTemperatureC: 18 } }, electric))).not.toContain('battery-temperature');
  });

  it('are light and seasons where no date was given', () => {
    expect(of(changed({ conditions: { departure: undefined } }))).toContain('daylight');
    const hazards = [
      { kind: 'keep-out', leg: 0, at: { lat: 46, lon: -32 }, zone: { name: 'Beach', season: '06-01/08-31' } },
    ];
    const about = (departure: string | undefined, season: string | undefined) => {
      const trip = { ...soundTrip(), conditions: { ...soundTrip().conditions, departure } };
      const prepared = {
        ...prepare(trip, haven()),
        hazards: hazards.map((one) => ({ ...one, zone: { ...one.zone, season } })),
      };
      const run = { scenario: { waveHeight: 0.1 }, sailed: [], refills: undefined };
      return assumptions(prepared as never, { run, spread: 0.2 } as never).map(({ code }) => code);
    };
    expect(about(undefined, '06-01/08-31')).toContain('keep-out-season');
    expect(about(undefined, undefined)).not.toContain('keep-out-season');
    expect(about('2027-07-01T10:00:00Z', '06-01/08-31')).not.toContain('keep-out-season');
  });
});
