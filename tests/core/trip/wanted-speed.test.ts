import { describe, expect, it } from 'vitest';
import { bestSpeed } from '../../../src/core/curve/best-speed.ts';
import { speedAtFroude } from '../../../src/core/curve/hump.ts';
import { CALM } from '../../../src/core/curve/steady.ts';
import type { Stretch } from '../../../src/core/route/split-legs.ts';
import type { Prepared } from '../../../src/core/trip/prepare.ts';
import type { Scenario } from '../../../src/core/trip/scenario.ts';
import { wantedSpeed } from '../../../src/core/trip/wanted-speed.ts';
import { planingSpeedKept } from '../../../src/core/water/sea-speed.ts';
import { loaded } from '../curve/loaded.ts';

const { boat, afloat, craft } = loaded('rib-4-7', 'petrol-40hp-4s', 'tank-25');
const weak = loaded('rib-4-7', 'petrol-4hp-4s', 'tank-25');
const PLANING = speedAtFroude(boat, afloat, 2.2);
const DISPLACEMENT = 2.1;

interface Asked {
  readonly stretch?: Partial<Stretch>;
  readonly scenario?: Partial<Scenario>;
  readonly waveHeight?: number;
  readonly stream?: { readonly setDeg: number; readonly rate: number };
  readonly of?: typeof weak;
}

function speeds({ stretch = {}, scenario = {}, waveHeight = 0, stream, of = { boat, afloat, craft } }: Asked) {
  const prepared = { displacementSpeed: DISPLACEMENT, trip: { craft } } as unknown as Prepared;
  const whole = { part: 'out', trackDeg: 0, speed: 10, ...stretch } as unknown as Stretch;
  const weather = { headwind: 0, waveHeight };
  return wantedSpeed(prepared, of.boat, of.afloat, weather, whole, stream, { oneWay: false, ...scenario } as Scenario);
}

describe('the speed of a stretch', () => {
  it('is the one planned', () => {
    expect(speeds({})).toEqual({ planned: 10, wanted: 10, inWaves: 10 });
  });

  it('is the limit of its zone where that is less', () => {
    expect(speeds({ stretch: { limit: 2.5 } }).planned).toBe(2.5);
    expect(speeds({ stretch: { limit: 12 } }).planned).toBe(10);
  });

  it('on the way home is no more than the cap of a bad case, on the way out it is what it is', () => {
    expect(speeds({ stretch: { part: 'home' }, scenario: { homeCap: 3 } }).planned).toBe(3);
    expect(speeds({ stretch: { part: 'home', speed: 2 }, scenario: { homeCap: 3 } }).planned).toBe(2);
    expect(speeds({ scenario: { homeCap: 3 } }).planned).toBe(10);
    expect(speeds({ scenario: { homeCap: 3, oneWay: true } }).planned).toBe(3);
  });

  it('labours at the hump on the way home only where it was to be faster', () => {
    const home = { part: 'home' } as const;
    expect(speeds({ stretch: home, scenario: { homeSpeed: 4 } }).planned).toBe(4);
    expect(speeds({ stretch: { ...home, speed: 3 }, scenario: { homeSpeed: 4 } }).planned).toBe(3);
    expect(speeds({ stretch: home, scenario: { homeSpeed: 4, homeCap: 3 } }).planned).toBe(3);
    expect(speeds({ scenario: { homeSpeed: 4 } }).planned).toBe(10);
    expect(speeds({ scenario: { homeSpeed: 4, oneWay: true } }).planned).toBe(4);
  });
});

describe('the best speed', () => {
  const best = (planing: boolean, over = (speed: number) => speed) => bestSpeed(boat, afloat, CALM, over, planing)!;

  it('is that of the boat in still water', () => {
    expect(speeds({ stretch: { speed: 'best' } }).planned).toBe(best(false));
    expect(speeds({ stretch: { speed: 'best-planing' } }).planned).toBe(best(true));
    expect(best(true)).toBeGreaterThan(best(false));
  });

  it('counts the way over ground: a foul stream makes it faster, one across is crossed', () => {
    const foul = speeds({ stretch: { speed: 'best' }, stream: { setDeg: 180, rate: 1.2 } }).planned;
    expect(foul).toBe(best(false, (speed) => Math.max(speed - 1.2, 0)));
    expect(foul).toBeGreaterThan(best(false));
    const across = speeds({ stretch: { speed: 'best' }, stream: { setDeg: 90, rate: 1 } }).planned;
    expect(across).toBeCloseTo(
      best(false, (speed) => (speed > 1 ? Math.sqrt(speed * speed - 1) : 0)),
      6,
    );
  });

  it('of a boat that cannot plane is asked at Froude number 2.5 where it was to plane, else displacement speed', () => {
    expect(speeds({ stretch: { speed: 'best-planing' }, of: weak }).planned).toBeCloseTo(
      speedAtFroude(weak.boat, weak.afloat, 2.5),
      12,
    );
    const storm = speeds({ stretch: { speed: 'best' }, stream: { setDeg: 180, rate: 90 }, of: weak });
    expect(storm.planned).toBe(DISPLACEMENT);
  });
});

describe('what the waves leave of a speed', () => {
  it('is all of it below planing and in flat water', () => {
    expect(speeds({ stretch: { speed: PLANING - 0.01 }, waveHeight: 0.5 }).inWaves).toBe(PLANING - 0.01);
    expect(speeds({ stretch: { speed: 12 } }).inWaves).toBe(12);
  });

  it('is the share kept of a planing speed', () => {
    const share = planingSpeedKept(0.2, craft.hull.length)!;
    expect(share).toBeLessThan(1);
    const { planned, wanted, inWaves } = speeds({ stretch: { speed: 14 }, waveHeight: 0.2 });
    expect([planned, wanted, inWaves]).toEqual([14, 14 * share, 14 * share]);
  });

  it('is displacement speed where too little is left to plane on', () => {
    const share = planingSpeedKept(0.2, craft.hull.length)!;
    expect(speeds({ stretch: { speed: (PLANING / share) * 0.9999 }, waveHeight: 0.2 }).inWaves).toBe(DISPLACEMENT);
    expect(speeds({ stretch: { speed: (PLANING / share) * 1.0001 }, waveHeight: 0.2 }).inWaves).toBeGreaterThan(
      PLANING,
    );
    expect(speeds({ stretch: { speed: PLANING }, waveHeight: 0.2 }).inWaves).toBe(DISPLACEMENT);
    expect(speeds({ stretch: { speed: 14 }, waveHeight: 9 }).inWaves).toBe(DISPLACEMENT);
  });

  it('is told, but not sailed, where the waves may not slow the boat', () => {
    const { planned, wanted, inWaves } = speeds({
      stretch: { speed: 14 },
      waveHeight: 0.2,
      scenario: { unslowed: true },
    });
    expect([planned, wanted]).toEqual([14, 14]);
    expect(inWaves).toBeLessThan(14);
  });

  it('counts after the limit of a zone', () => {
    expect(speeds({ stretch: { speed: 14, limit: 2.5 }, waveHeight: 0.2 }).inWaves).toBe(2.5);
  });
});
