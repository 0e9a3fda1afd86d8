import { describe, expect, it } from 'vitest';
import {
  equalTimeAlong,
  equalTimePoint,
  lastReturnPoint,
  pointOfNoReturn,
  pointOfNoReturnByAmount,
  type TurnStretch,
} from '../../../src/core/route/turn-point.ts';

/** Two legs of 6 and 4 km; the second costs twice as much a metre. */
const route: TurnStretch[] = [
  { distance: 6000, needOnward: 6, needBack: 6, timeOnward: 600, timeBack: 1200 },
  { distance: 4000, needOnward: 8, needBack: 8, timeOnward: 800, timeBack: 400 },
];

describe('pointOfNoReturn', () => {
  it('shortens in any steady stream, from either side', () => {
    const slack = pointOfNoReturn(3600, 5, 5).distance;
    expect(pointOfNoReturn(3600, 6, 4).distance).toBeLessThan(slack);
    expect(pointOfNoReturn(3600, 4, 6).distance).toBeCloseTo(pointOfNoReturn(3600, 6, 4).distance, 9);
  });

  it('is where the boat lies when it makes no way either way', () => {
    expect(pointOfNoReturn(3600, 0, 0)).toEqual({ time: 0, distance: 0 });
    expect(pointOfNoReturnByAmount(5, { flow: 1, speed: 2 }, { flow: 1, speed: 0 })).toEqual({ time: 0, distance: 0 });
  });
});

describe('pointOfNoReturnByAmount', () => {
  it('is what there is over what a metre costs there and back, also at less than a metre a second', () => {
    // 2 a metre out and 4 home: 90 last 15 m, at half a metre per second 30 s.
    const [out, home] = [
      { flow: 1, speed: 0.5 },
      { flow: 1, speed: 0.25 },
    ];
    expect(pointOfNoReturnByAmount(90, out, home)).toEqual({ time: 30, distance: 15 });
    expect(pointOfNoReturnByAmount(90, { flow: 1, speed: 0 }, home)).toEqual({ time: 0, distance: 0 });
    expect(pointOfNoReturnByAmount(90, { flow: 0, speed: 1 }, { flow: 0, speed: 1 }).distance).toBe(Infinity);
  });
});

describe('equalTimePoint', () => {
  it('lies half-way when both ways are alike', () => {
    expect(equalTimePoint(1000, 5, 5)).toEqual({ time: 100, distance: 500 });
  });
});

describe('lastReturnPoint', () => {
  it('lies on the leg where out and home together use up what there is', () => {
    // 12 for the first leg there and back, 8 of the 16 of the second: half of its 4 km.
    expect(lastReturnPoint(route, 20)).toEqual({ distance: 8000, time: 1000, stretch: 1, share: 0.5, onRoute: true });
  });

  it('is the end, and says so, when the whole route fits', () => {
    expect(lastReturnPoint(route, 28)).toEqual({ distance: 10000, time: 1400, stretch: 2, share: 0, onRoute: false });
  });

  it('is the start with nothing available', () => {
    expect(lastReturnPoint(route, 0)).toMatchObject({ distance: 0, time: 0, onRoute: true });
    expect(lastReturnPoint(route, -3)).toMatchObject({ distance: 0, time: 0, onRoute: true });
  });

  it('does not go where the stream bars the way back', () => {
    const barred = [route[0]!, { ...route[1]!, needBack: Infinity, timeBack: Infinity }];
    expect(lastReturnPoint(barred, 1000)).toEqual({ distance: 6000, time: 600, stretch: 1, share: 0, onRoute: true });
  });

  it('agrees with the fuel form on one leg', () => {
    const single = pointOfNoReturnByAmount(20, { flow: 0.01, speed: 5 }, { flow: 0.012, speed: 4 });
    const leg = { distance: 1e5, needOnward: 200, needBack: 300, timeOnward: 2e4, timeBack: 2.5e4 };
    const found = lastReturnPoint([leg], 20);
    expect(found.distance).toBeCloseTo(single.distance, 6);
    expect(found.time).toBeCloseTo(single.time, 6);
  });
});

describe('equalTimeAlong', () => {
  it('is as far in time from the end as from the start', () => {
    const { distance, stretch, share, time } = equalTimeAlong(route);
    const onward = 1400 - time;
    const back = 1200 * share;
    expect(stretch).toBe(0);
    expect(onward).toBeCloseTo(back, 9);
    expect(distance).toBeCloseTo(6000 * (1400 / 1800), 9);
  });

  it('agrees with the published form on one leg', () => {
    const leg = { distance: 1000, needOnward: 0, needBack: 0, timeOnward: 1000 / 4, timeBack: 1000 / 2.5 };
    expect(equalTimeAlong([leg]).distance).toBeCloseTo(equalTimePoint(1000, 4, 2.5).distance, 9);
  });
});
