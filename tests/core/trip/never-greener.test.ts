import { describe, expect, it } from 'vitest';
import { mended } from '../../../src/components/planner/mended.ts';
import { craftFrom } from '../../../src/core/files/catalogue.ts';
import type { Trip } from '../../../src/core/trip/shapes.ts';
import { tightened } from '../../../src/core/trip/tightened.ts';
import { planOf, reasonOf, shipped, soundTrip } from '../../trips.ts';

const RANK = { go: 0, marginal: 1, 'no-go': 2 };

function inWind(speed: number, maxWind?: number): Trip {
  const trip = soundTrip();
  return {
    ...trip,
    conditions: { ...trip.conditions, wind: { fromDeg: 200, speed } },
    policy: { ...trip.policy, maxWind },
  };
}

describe('wind', () => {
  it('is never made harmless by a generous limit of the crew', () => {
    expect(reasonOf(planOf(inWind(9, 26)), 'over-wind-limit')?.level).toBe('marginal');
    expect(reasonOf(planOf(inWind(15, 26)), 'over-wind-limit')?.level).toBe('no-go');
  });

  it('from astern that freshens is no better on a bad day than as it was', () => {
    const trip = soundTrip();
    const oneWay: Trip = { ...trip, route: { ...trip.route, shape: 'one-way' } };
    const astern = { fromDeg: 0, speed: 5 };
    const plan = planOf({ ...oneWay, conditions: { ...oneWay.conditions, wind: astern } });
    // Where full throttle does not quite hold the planned speed, a crew on a bad day eases off, and needs a little less.
    expect(plan.badCase.need).toBeGreaterThanOrEqual(plan.need95 * 0.997);
  });
});

describe('a host', () => {
  it('never loosens what the user left at its default', () => {
    const policy = tightened(
      { reserve: [] },
      { manoeuvring: 60, drawnFactor: 1, reserve: [{ kind: 'share', share: 0.1 }] },
    );
    expect(policy.manoeuvring).toBe(450);
    expect(policy.drawnFactor).toBe(1.05);
    expect(policy.reserve.map((rule) => rule.kind)).toEqual(['thirds', 'share']);
  });

  it('tightens what the user chose', () => {
    const policy = tightened(
      { reserve: [], maxWind: 9, timeAllowed: 7200 },
      { maxWind: 6, timeAllowed: 3600, drawnFactor: 1.3 },
    );
    expect(policy).toMatchObject({ maxWind: 6, timeAllowed: 3600, drawnFactor: 1.3 });
  });
});

describe('a bag that nobody placed', () => {
  it('is no better for the speed held than the same bag in the bow, forward of every seat', () => {
    const trip = soundTrip();
    const at = (speed: number, station: string | undefined): Trip => ({
      ...trip,
      craft: craftFrom('catamaran-3-6', 'petrol-9-9hp-2s', 'tank-12'),
      load: {
        items: [
          { id: 'helm', kind: 'adult', mass: 60, station: 'seat-mid', helm: true },
          { id: 'bag', kind: 'gear', mass: 17, ...(station && { station }) },
        ],
        fill: 1,
        fillKnownBy: 'measured',
      },
      route: { ...trip.route, speed },
    });
    let refused = 0;
    for (let speed = 8.5; speed < 9.3; speed += 0.05) {
      const held = (station?: string) => reasonOf(planOf(at(speed, station)), 'speed-not-held') === undefined;
      if (held('gear-bow')) continue;
      refused++;
      expect(held()).toBe(false);
    }
    expect(refused).toBeGreaterThan(0);
  });
});

describe('a tank of which nobody said how full it is', () => {
  it('is no better for the speed held than the same tank known to be brimful', () => {
    const trip = soundTrip();
    const at = (speed: number, fill: number | undefined): Trip => ({
      ...trip,
      craft: craftFrom('catamaran-2-9', 'petrol-4hp-2s', 'tank-25-25'),
      load: {
        items: [{ id: 'helm', kind: 'adult', mass: 70, station: 'seat-mid', helm: true }],
        ...(fill !== undefined && { fill, fillKnownBy: 'measured' }),
      },
      route: { ...trip.route, speed },
    });
    let refused = 0;
    for (let speed = 3.2; speed < 3.8; speed += 0.002) {
      const held = (fill?: number) => reasonOf(planOf(at(speed, fill)), 'speed-not-held') === undefined;
      if (held(1)) continue;
      refused++;
      expect(held()).toBe(false);
    }
    expect(refused).toBeGreaterThan(0);
  });
});

describe('a sea that is known to be higher', () => {
  it('never turns a trip greener by slowing the boat', () => {
    const trip = soundTrip();
    let worst = 0;
    for (const height of [0.05, 0.1, 0.15, 0.2, 0.25, 0.28]) {
      const plan = planOf({
        ...trip,
        load: { ...trip.load, fill: 0.14 },
        route: { ...trip.route, speed: 5.8 },
        conditions: { ...trip.conditions, wind: 'calm', sea: { height } },
      });
      expect(RANK[plan.verdict]).toBeGreaterThanOrEqual(worst);
      worst = RANK[plan.verdict];
    }
  });
});

describe('a trip out and home by the same way', () => {
  it('has no point from which going on is shorter', () => {
    expect(planOf(soundTrip()).halfway).toBeUndefined();
    expect(planOf(shipped('petrol-day')).halfway).toBeDefined();
  });

  it('at best speed in a stream knows how it comes home', () => {
    const trip = soundTrip();
    const plan = planOf({
      ...trip,
      route: { ...trip.route, speed: 'best' },
      conditions: { ...trip.conditions, stream: { setDeg: 180, rate: 1.2 } },
    });
    expect(plan.left.median).toBeGreaterThan(plan.reserve);
    expect(plan.turnBack!.onRoute).toBe(false);
    expect(plan.range.outAndHome).toBeGreaterThan(plan.distanceOut);
  });
});

describe('a one-way trip', () => {
  it('may have to be finished slowly too', () => {
    const trip = soundTrip();
    const foul = { ...trip.conditions, stream: { setDeg: 0, rate: 1.9 } };
    const plan = planOf({ ...trip, route: { ...trip.route, shape: 'one-way' }, conditions: foul });
    expect(plan.badCase.kinds).toContain('home-slow');
    expect(plan.verdict).not.toBe('go');
  });
});

describe('the crew', () => {
  const seated = (change: (item: Trip['load']['items'][number]) => Trip['load']['items'][number]): Trip => {
    const trip = soundTrip();
    return { ...trip, load: { ...trip.load, items: trip.load.items.map(change) } };
  };

  it('sits on no bow tube at planing speed', () => {
    const plan = planOf(
      seated((item) => (item.helm || item.kind !== 'adult' ? item : { ...item, station: 'bow-tube', at: undefined })),
    );
    expect(reasonOf(plan, 'on-bow-tube')?.level).toBe('no-go');
  });

  it('is aboard', () => {
    const plan = planOf(seated((item) => (item.kind === 'gear' ? { ...item, at: { x: -3, y: 9 } } : item)));
    expect(reasonOf(plan, 'outside-boat')?.level).toBe('no-go');
  });

  it('has an adult, and somebody at the helm', () => {
    const children = planOf(seated((item) => (item.kind === 'adult' ? { ...item, kind: 'child', mass: 30 } : item)));
    expect(reasonOf(children, 'no-adult')?.level).toBe('no-go');
    const adrift = planOf(seated(({ helm, ...item }) => item));
    expect(reasonOf(adrift, 'no-helm')?.level).toBe('marginal');
  });

  it('does not sink the boat', () => {
    const trip = soundTrip();
    const hull = { ...trip.craft.hull, plate: 'none' as const };
    const stones = { id: 'stones', kind: 'gear' as const, mass: 900, at: { x: 1.2, y: 0 } };
    const plan = planOf({
      ...trip,
      craft: { ...trip.craft, hull },
      load: { ...trip.load, items: [...trip.load.items, stones] },
    });
    expect(reasonOf(plan, 'low-in-water')?.level).toBe('no-go');
  });
});

describe('a load that cannot be right', () => {
  const withItems = (change: (items: Trip['load']['items']) => Trip['load']['items']): Trip => {
    const trip = soundTrip();
    const hull = { ...trip.craft.hull, plate: 'none' as const };
    return { ...trip, craft: { ...trip.craft, hull }, load: { ...trip.load, items: change(trip.load.items) } };
  };

  it('is a person of 500 kg', () => {
    const plan = planOf(withItems(([first, ...rest]) => [{ ...first!, mass: 500 }, ...rest]));
    expect(reasonOf(plan, 'odd-weight')).toMatchObject({ level: 'marginal', value: 500 });
  });

  it('is a child alone: a no-go', () => {
    const plan = planOf(withItems(() => [{ id: 'c', kind: 'child', mass: 35, station: 'helm', helm: true }]));
    expect(reasonOf(plan, 'no-adult')?.level).toBe('no-go');
  });

  it('is more people than seats', () => {
    const many = Array.from({ length: 7 }, (_, i) => {
      return { id: `c${i}`, kind: 'child' as const, mass: 25, at: { x: 1.2, y: 0.1 * (i - 3) } };
    });
    expect(reasonOf(planOf(withItems((items) => [...items, ...many])), 'too-few-seats')?.level).toBe('marginal');
  });

  it('is a weight at the transom that puts it under: a no-go', () => {
    const anvil = { id: 'anvil', kind: 'gear' as const, mass: 330, at: { x: 0.1, y: 0, z: 0.2 } };
    const plan = planOf(withItems((items) => [...items, anvil]));
    expect(reasonOf(plan, 'water-comes-in')?.level).toBe('no-go');
    expect(plan.verdict).toBe('no-go');
  });

  it('is a helm in the bow, out of reach of tiller and kill cord', () => {
    const plan = planOf(
      withItems((items) =>
        items.map((item) => (item.helm ? { ...item, station: undefined, at: { x: 2.4, y: 0 } } : item)),
      ),
    );
    expect(reasonOf(plan, 'helm-far')?.level).toBe('marginal');
  });
});

describe('a displacement launch', () => {
  it('driven past its hull speed is never a plain go: measured ones need more power there', () => {
    const trip = soundTrip();
    const craft = { ...craftFrom('launch-4-9', 'petrol-6hp-4s', 'tank-12') };
    const { plate } = trip.craft.hull;
    const launch: Trip = { ...trip, craft: { ...craft, hull: { ...craft.hull, plate } } };
    const at = (speed: number) => planOf({ ...launch, route: { ...launch.route, speed } });
    expect(reasonOf(at(2.7), 'outside-method')?.level).toBe('marginal');
    expect(reasonOf(at(1.8), 'outside-method')).toBeUndefined();
  });
});

describe('safe payload', () => {
  it('ends where the boat floats too low, whatever a generous plate allows', () => {
    const trip = soundTrip();
    const { plate } = trip.craft.hull;
    if (!plate || plate === 'none') throw new Error('the sound trip has a plate');
    const slow: Trip = {
      ...trip,
      craft: { ...trip.craft, hull: { ...trip.craft.hull, plate: { ...plate, maxLoad: 1500 } } },
      route: { ...trip.route, speed: 1.8 },
    };
    const plan = planOf(slow);
    expect(plan.payload.binds).toBe('floating');
    const loaded = (mass: number) => {
      const stones = { id: 'stones', kind: 'gear' as const, mass, at: { x: plan.balance.lcg, y: 0 } };
      return planOf({ ...slow, load: { ...slow.load, items: [...slow.load.items, stones] } });
    };
    expect(reasonOf(loaded(plan.payload.extra! - 1), 'low-in-water')).toBeUndefined();
    expect(reasonOf(loaded(plan.payload.extra! + 2), 'low-in-water')?.level).toBe('marginal');
    const crew = plan.tipping.find(({ knob }) => knob === 'crew-mass')!;
    expect(crew.value - crew.now).toBeLessThanOrEqual(plan.payload.extra! + 1);
  });
});

describe('a gauge that may lie', () => {
  it('makes the bad day worse than a dipstick does', () => {
    const trip = soundTrip();
    const known = (fillKnownBy: 'measured' | 'gauge') =>
      planOf({ ...trip, load: { ...trip.load, fill: 0.5, fillKnownBy } }).badCase.need;
    expect(known('gauge')).toBeGreaterThan(known('measured'));
  });
});

describe('a fix', () => {
  it('that eases one leg makes no other leg faster', () => {
    const trip = soundTrip();
    const [first, ...rest] = trip.route.waypoints;
    const fast: Trip = { ...trip, route: { ...trip.route, speed: 2, waypoints: [{ ...first!, speed: 14 }, ...rest] } };
    const { trip: eased } = mended(
      fast,
      { code: 'ease-speed', measure: 'speed', value: 9.14 },
      { code: 'speed-not-held', level: 'no-go' },
    );
    expect(eased!.route.speed).toBe(2);
    expect(eased!.route.waypoints[0]!.speed).toBe(9.14);
  });

  it('to plan a lower speed is only offered where it betters the answer', () => {
    const trip = shipped('electric-tender');
    const hurried: Trip = { ...trip, route: { ...trip.route, speed: 1.9 } };
    const fix = reasonOf(planOf(hurried), 'reserve-broken')!.fixes!.find((f) => f.code === 'slow-down')!;
    const slower = planOf({ ...hurried, route: { ...hurried.route, speed: fix.value! } });
    expect(RANK[slower.verdict]).toBeLessThan(RANK['no-go']);
  });

  it('to shorten the route names a length that fits', () => {
    const trip = soundTrip();
    const far: Trip = {
      ...trip,
      load: { ...trip.load, fill: 0.4 },
      route: {
        ...trip.route,
        waypoints: [
          { lat: 45.99, lon: -32.08 },
          { lat: 45.85, lon: -32.08 },
        ],
      },
    };
    const plan = planOf(far);
    const fix = plan.reasons.flatMap((r) => r.fixes ?? []).find((f) => f.code === 'shorten-route')!;
    const share = (fix.value! / plan.distance) * 0.98;
    const near: Trip = {
      ...far,
      route: { ...far.route, waypoints: [far.route.waypoints[0]!, { lat: 45.99 - 0.14 * share, lon: -32.08 }] },
    };
    expect(planOf(near).reasons.map((r) => r.code)).not.toContain('reserve-broken');
    expect(planOf(near).reasons.map((r) => r.code)).not.toContain('runs-dry');
  });
});
