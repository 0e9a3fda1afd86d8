import { describe, expect, it } from 'vitest';
import { planTrip } from '../../../src/core/trip/plan-trip.ts';
import type { Plan, TippingValue, Trip, Verdict } from '../../../src/core/trip/shapes.ts';
import { haven, shipped, soundTrip } from '../../trips.ts';
import { slowFigures } from './questions-asked.ts';

type Knob = TippingValue['knob'];

function plan(trip: Trip, options: { quick?: boolean; use?: number } = {}): Plan {
  const found = planTrip(trip, haven(), options);
  if (!found.ok) throw new Error(found.problems[0]!.message);
  return found.value;
}

function trip(conditions: Partial<Trip['conditions']> = {}, change: Partial<Trip> = {}): Trip {
  const sound = soundTrip();
  return { ...sound, ...change, conditions: { ...sound.conditions, ...conditions } };
}

const withFill = (fill: number, of = trip()): Trip => ({ ...of, load: { ...of.load, fill } });
const withWind = (speed: number, of = trip()): Trip => ({
  ...of,
  conditions: { ...of.conditions, wind: { fromDeg: 240, speed } },
});

/** To how much an edge is found. */
const STEP: Partial<Record<Knob, number>> = { consumption: 0.01, wind: 0.2, stream: 0.05, sea: 0.02, fill: 0.005 };

/** The verdict with one thing changed, as somebody would change it. */
function verdictWith(of: Trip, knob: Knob, value: number): Verdict {
  const { conditions } = of;
  if (knob === 'consumption') return plan(of, { quick: true, use: value }).verdict;
  if (knob === 'fill') return plan(withFill(value, of), { quick: true }).verdict;
  if (knob === 'wind') return plan(withWind(value, of), { quick: true }).verdict;
  const change =
    knob === 'stream'
      ? { stream: { ...(conditions.stream as { setDeg: number; rate: number }), rate: value } }
      : { sea: { height: value } };
  return plan({ ...of, conditions: { ...conditions, ...change } }, { quick: true }).verdict;
}

const knobOf = (tipping: readonly TippingValue[], knob: Knob) => tipping.find((value) => value.knob === knob);

/** At the value the trip is still what it is, a step beyond it is what it turns to. */
function turns(of: Trip, tipping: readonly TippingValue[], knobs: readonly Knob[]): void {
  for (const knob of knobs) {
    const found = knobOf(tipping, knob)!;
    expect(found, knob).toBeDefined();
    const step = 1.01 * STEP[knob]! * (found.direction === 'up' ? 1 : -1);
    expect(verdictWith(of, knob, found.value), `${knob} at the value`).toBe(found.from);
    expect(verdictWith(of, knob, found.value + step), `${knob} beyond`).toBe(found.to);
  }
}

describe('where a go turns', () => {
  // At two metres a second with little in the tank all of them matter.
  const day = withFill(0.2, trip({}, { route: { ...soundTrip().route, speed: 2 } }));
  const { tipping, verdict, balance, payload } = plan(day);

  it('is told of people and gear, consumption, wind, stream, sea and fill, each from what it is now to the worse', () => {
    expect(verdict).toBe('go');
    const now: Record<string, [number, string]> = {
      'crew-mass': [balance.peopleAndGear, 'up'],
      consumption: [1, 'up'],
      wind: [3, 'up'],
      stream: [0.15, 'up'],
      sea: [0.1, 'up'],
      fill: [0.2, 'down'],
    };
    for (const value of tipping) {
      expect([value.now, value.direction]).toEqual(now[value.knob]);
      expect(value.from).toBe('go');
      expect(value.to).not.toBe('go');
      expect(value.direction === 'up' ? value.value : -value.value).toBeGreaterThanOrEqual(
        value.direction === 'up' ? value.now : -value.now,
      );
    }
    expect(tipping.map(({ knob }) => knob)).toEqual(['crew-mass', 'consumption', 'wind', 'stream', 'sea', 'fill']);
  });

  it('is where a plan made anew says so', () => {
    turns(day, tipping, ['consumption', 'wind', 'stream', 'sea', 'fill']);
  });

  it('of people and gear is what else may come aboard', () => {
    const found = knobOf(tipping, 'crew-mass')!;
    expect(found.value - found.now).toBeGreaterThan(payload.extra! - 1.5);
    expect(found.value - found.now).toBeLessThan(payload.extra! + 1.5);
  });

  it('of people and gear is a no-go beyond the plate', () => {
    const { plate } = day.craft.hull;
    if (!plate || plate === 'none') throw new Error('there is a plate');
    const tight = {
      ...day,
      craft: { ...day.craft, hull: { ...day.craft.hull, plate: { ...plate, maxLoad: balance.counted + 10 } } },
    };
    const found = knobOf(plan(tight).tipping, 'crew-mass')!;
    expect(found.to).toBe('no-go');
    expect(found.value - found.now).toBeGreaterThan(9 - 1e-9);
    expect(found.value - found.now).toBeLessThan(10 + 1e-9);
  });
});

describe('the wind at which a trip turns', () => {
  it('is that from which a fresh breeze blows, or the limit of the crew', () => {
    const bold = { ...trip(), policy: { ...trip().policy, maxWind: 20 } };
    const breeze = knobOf(plan(bold).tipping, 'wind')!;
    expect(breeze.value).toBeLessThan(8);
    const cautious = { ...trip(), policy: { ...trip().policy, maxWind: 3.5 } };
    const own = knobOf(plan(cautious).tipping, 'wind')!;
    expect(own.to).toBe('no-go');
    expect(own.value).toBeGreaterThan(3.3 - 1e-9);
    expect(own.value).toBeLessThan(3.5 + 1e-9);
  });

  it('of a refused trip is how far it has to ease', () => {
    const blown = withWind(8.7);
    const { verdict, tipping } = plan(blown);
    expect(verdict).toBe('no-go');
    const found = knobOf(tipping, 'wind')!;
    expect(found).toMatchObject({ from: 'no-go', now: 8.7, direction: 'down' });
    turns(blown, tipping, ['wind']);
    // No other knob mends the wind.
    expect(tipping.map(({ knob }) => knob)).toEqual(['wind']);
  });

  it('counts the category of the boat', () => {
    const day = trip();
    const { plate } = day.craft.hull;
    if (!plate || plate === 'none') throw new Error('there is a plate');
    const sheltered = {
      ...day,
      craft: { ...day.craft, hull: { ...day.craft.hull, plate: { ...plate, category: 'D' as const } } },
    };
    const found = knobOf(plan(sheltered).tipping, 'wind')!;
    expect(found.value).toBeLessThanOrEqual(knobOf(plan(day).tipping, 'wind')!.value);
  });
});

describe('a trip short of fuel', () => {
  it('is mended by more of it, by using less of it, and by less aboard', () => {
    const short = withFill(0.17);
    const { verdict, tipping } = plan(short);
    expect(verdict).toBe('no-go');
    expect(knobOf(tipping, 'fill')).toMatchObject({ from: 'no-go', to: 'marginal', direction: 'up', now: 0.17 });
    expect(knobOf(tipping, 'consumption')).toMatchObject({ direction: 'down', now: 1 });
    expect(knobOf(tipping, 'crew-mass')).toMatchObject({ direction: 'down' });
    turns(short, tipping, ['fill', 'consumption', 'sea']);
  });

  it('turns where a plan made anew does, however much there is', () => {
    const verdicts = new Set<Verdict>();
    for (const fill of [0.12, 0.18, 0.19, 0.3]) {
      const of = withFill(fill);
      const { tipping, verdict } = plan(of);
      verdicts.add(verdict);
      turns(of, tipping, ['fill', 'consumption']);
    }
    expect(verdicts.size).toBe(3);
  });
});

describe('a trip that other things decide', () => {
  it('has no tipping values where land is in the way, nor where it cannot be sailed', () => {
    const across = trip();
    const land = {
      ...across,
      route: {
        ...across.route,
        waypoints: [
          { lat: 45.985, lon: -32.07 },
          { lat: 46.06, lon: -31.99 },
        ],
      },
    };
    expect(plan(land).verdict).toBe('no-go');
    expect(plan(land).tipping).toEqual([]);
    const foul = trip({ stream: { setDeg: 180, rate: 30 } });
    expect(plan(foul).tipping).toEqual([]);
  });

  it('turns from in doubt to no-go, where the doubt is of another kind', () => {
    const { plate: _, ...hull } = trip().craft.hull;
    const doubtful = withFill(0.2, { ...trip(), craft: { ...trip().craft, hull } });
    const { verdict, tipping } = plan(doubtful);
    expect(verdict).toBe('marginal');
    expect(tipping.length).toBeGreaterThan(2);
    for (const value of tipping) expect([value.from, value.to]).toEqual(['marginal', 'no-go']);
    turns(doubtful, tipping, ['consumption', 'fill', 'wind', 'sea']);
  });

  it('counts from what stands for a wind, a stream and a sea that nobody gave', () => {
    const { wind: _, stream: __, sea: ___, ...unsaid } = trip().conditions;
    const unknown = withFill(0.6, { ...trip(), conditions: unsaid });
    const { tipping } = plan(unknown);
    for (const [knob, now] of [
      ['wind', 4.4],
      ['stream', 0.25],
    ] as const) {
      const found = knobOf(tipping, knob);
      if (found) expect(found.now).toBe(now);
    }
    expect(tipping.length).toBeGreaterThan(0);
  });

  it('counts from slack water and calm as from nothing', () => {
    const { tipping } = plan(trip({ wind: 'calm', stream: 'slack', sea: 'calm' }));
    for (const knob of ['wind', 'stream', 'sea'] as const) {
      const found = knobOf(tipping, knob);
      if (found) expect(found.now).toBe(0);
    }
  });
});

describe('the questions that tipping values take', () => {
  /** Runs of the fuel or charge, and answers of the engine: what they took when this was written. */
  const most: readonly [string, Trip, Partial<Record<Knob, readonly [number, number]>>, readonly [number, number]][] = [
    ['a trip with plenty aboard', trip(), { 'crew-mass': [5, 6], wind: [4, 4], sea: [5, 0], fill: [9, 0] }, [35, 10]],
    [
      'a slow trip with little aboard',
      withFill(0.2, trip({}, { route: { ...soundTrip().route, speed: 2 } })),
      { 'crew-mass': [6, 4], consumption: [6, 0], wind: [3, 4], stream: [14, 0], sea: [7, 0], fill: [9, 0] },
      [45, 8],
    ],
    [
      'a trip short of fuel',
      withFill(0.17),
      { 'crew-mass': [7, 3], consumption: [6, 0], sea: [4, 0], fill: [5, 0] },
      [27, 5],
    ],
    ['a trip in too much wind', withWind(8.7), { wind: [4, 3] }, [4, 5]],
    [
      'a day out',
      shipped('petrol-day'),
      { 'crew-mass': [6, 8], consumption: [6, 0], wind: [8, 4], stream: [15, 0], sea: [10, 0], fill: [6, 0] },
      [51, 12],
    ],
    [
      'an electric tender',
      shipped('electric-tender'),
      { 'crew-mass': [6, 4], consumption: [6, 0], wind: [6, 4], stream: [8, 0], sea: [7, 0], fill: [6, 0] },
      [39, 8],
    ],
    [
      'a hired boat',
      shipped('hire-hull'),
      { 'crew-mass': [4, 6], consumption: [6, 0], wind: [4, 8], stream: [13, 0], sea: [7, 0], fill: [9, 0] },
      [43, 14],
    ],
    [
      'a boat in doubt for its speed',
      trip({}, { route: { ...soundTrip().route, speed: 8.6 } }),
      { 'crew-mass': [1, 9], wind: [1, 6], sea: [1, 0], fill: [5, 0] },
      [11, 15],
    ],
  ];

  it.each(most)('are few for %s: an edge is guessed before it is sought', (_name, of, knobs, [tank, engine]) => {
    const { tipping, allTipping } = slowFigures(of);
    expect(allTipping.tank).toBeLessThanOrEqual(tank);
    expect(allTipping.engine).toBeLessThanOrEqual(engine);
    for (const { value, asked } of tipping) {
      const [runs, answers] = knobs[value.knob]!;
      expect(asked.tank, value.knob).toBeLessThanOrEqual(runs);
      expect(asked.engine, value.knob).toBeLessThanOrEqual(answers);
    }
    expect(tipping.map(({ value }) => value.knob)).toEqual(Object.keys(knobs));
  });
});

describe('how far a trip is looked at', () => {
  const knobsOf = (of: Trip) => plan(of).tipping.map(({ knob }) => knob);

  it('is four times the consumption: what does not turn it by then does not', () => {
    // Of a trip that turns at 1.4 of what it has, the fill that turns it at 3.9 and at 4.1 times.
    const slow = trip({}, { route: { ...soundTrip().route, speed: 2 } });
    const factors = [0.3, 0.45, 0.5, 0.55, 0.6, 0.65, 0.7, 0.75, 0.8].map(
      (fill) => knobOf(plan(withFill(fill, slow)).tipping, 'consumption')?.value,
    );
    for (const factor of factors) if (factor !== undefined) expect(factor).toBeLessThan(4);
    expect(factors[0]).toBeGreaterThan(2);
    expect(factors.at(-1)).toBeUndefined();
  });

  it('is 400 kg more aboard', () => {
    // A launch without a plate that carries more than that.
    const values = [60, 100, 140, 180].map((speed) => {
      const of = withFill(0.9, trip({}, { route: { ...soundTrip().route, speed: speed / 100 } }));
      const { plate: _, ...hull } = of.craft.hull;
      const found = knobOf(plan({ ...of, craft: { ...of.craft, hull } }).tipping, 'crew-mass');
      return found && found.value - found.now;
    });
    for (const value of values) if (value !== undefined) expect(value).toBeLessThan(400);
  });

  it('is a stream of 2.5 m/s and waves of 1.5 m', () => {
    const bold = { ...trip(), policy: { ...trip().policy, maxWave: 9 } };
    for (const { knob, value } of plan(bold).tipping) {
      if (knob === 'sea') expect(value).toBeLessThan(1.5);
      if (knob === 'stream') expect(value).toBeLessThan(2.5);
    }
    expect(knobsOf(bold)).not.toContain('stream');
  });
});
