import { describe, expect, it } from 'vitest';
import { boatOf } from '../../../src/core/curve/boat.ts';
import { steady } from '../../../src/core/curve/steady.ts';
import { idleFlow } from '../../../src/core/drive/demand.ts';
import { fuelMass } from '../../../src/core/drive/tank.ts';
import { craftFrom } from '../../../src/core/files/catalogue.ts';
import { afloatOf, readRefill, readRun, setupOf } from '../../../src/core/trials/readings.ts';
import type { Refill, Run } from '../../../src/core/trials/shapes.ts';
import { ALONE, catamaran, planned, trialsOf } from './made-trials.ts';

const trials = trialsOf(catamaran, []);
const boat = boatOf(catamaran, 'sea', 18);
const run = (more: Partial<Run> = {}) => readRun(trials, planned('a', ALONE, 6, more));
const plain: Refill = { id: 'r', setup: 'usual', load: ALONE, spent: [{ speed: 6, seconds: 1000 }], amount: 2 };
const refill = (more: Partial<Refill> = {}) => readRefill(trials, { ...plain, ...more });
const kinds = (more: Partial<Run>) => run(more).readings.map(({ kind }) => kind);

describe('readRun', () => {
  it('takes logarithms of what was read, an amount as a rate, and full throttle as all the power there is', () => {
    const found = run({ rpm: 4000, consumed: { kind: 'amount', amount: 3, seconds: 600 }, fullThrottle: true });
    expect(found.readings.map(({ kind, measured }) => [kind, measured])).toEqual([
      ['consumed', Math.log(0.005)],
      ['rpm', Math.log(4000)],
      ['power', 0],
    ]);
    expect(found).toMatchObject({ id: 'a', kind: 'run', speed: 6, leftOut: false });
    expect(run({ consumed: { kind: 'rate', rate: 0.004 } }).readings[0]!.measured).toBe(Math.log(0.004));
    expect(run({ leftOut: true }).leftOut).toBe(true);
  });

  it('keeps only what was read', () => {
    expect(kinds({ rpm: undefined })).toEqual(['consumed']);
    expect(kinds({ consumed: undefined })).toEqual(['rpm']);
    expect(kinds({ consumed: undefined, rpm: undefined })).toEqual([]);
    expect(kinds({ consumed: undefined, rpm: undefined, fullThrottle: true })).toEqual(['power']);
  });

  it('doubts an amount over a time more than a flow meter, and less or more as the one measuring says', () => {
    // What speed and form add is the same each time: squares are compared.
    const square = (more: Partial<Run>) => run(more).readings[0]!.deviation ** 2;
    const told = square({ consumedError: 0.2 });
    expect(told - square({})).toBeCloseTo(0.2 ** 2 - 0.05 ** 2, 9);
    expect(told - square({ consumed: { kind: 'amount', amount: 1, seconds: 300 } })).toBeCloseTo(
      0.2 ** 2 - 0.06 ** 2,
      9,
    );
    expect(square({})).toBeGreaterThan(0.05 ** 2 + 0.1 ** 2);
  });

  it('doubts volts and amperes by 3 %', () => {
    const craft = craftFrom('catamaran-4-3', 'electric-0-55kw', 'battery-1-0-nmc');
    const square = (more: Partial<Run>) =>
      readRun(trialsOf(craft, []), planned('a', ALONE, 1.5, more)).readings[0]!.deviation ** 2;
    expect(square({ consumedError: 0.2 }) - square({})).toBeCloseTo(0.2 ** 2 - 0.03 ** 2, 9);
  });

  it('knows speed better by more passes, and so what belongs to it', () => {
    const two = run();
    const out = { over: 6, way: 'out' } as const;
    const back = { over: 6, way: 'back' } as const;
    const four = run({ passes: [out, back, out, back] });
    expect(two.speedDeviation).toBeCloseTo(0.1 / Math.SQRT2, 12);
    expect(four.speedDeviation).toBeLessThan(two.speedDeviation);
    two.readings.forEach(({ deviation }, at) => {
      expect(four.readings[at]!.deviation).toBeLessThan(deviation);
    });
  });

  it('expects what the boat takes at that speed, in calm', () => {
    const [flow, rpm] = run().predict(boat);
    const { drive } = steady(boat, afloatOf(trials, trials.setups[0]!, ALONE), 6);
    expect(Math.exp(flow!)).toBeCloseTo(drive.flow, 12);
    expect(Math.exp(rpm!)).toBeCloseTo(drive.rpm, 6);
  });

  it('has wind ahead on one way astern on the other, whichever of them; abeam it is no headwind', () => {
    const flow = (offBowDeg: number, more: Partial<Run> = {}) =>
      run({ wind: { speed: 8, offBowDeg }, ...more }).predict(boat)[0]!;
    const calm = run().predict(boat)[0]!;
    expect(flow(0)).toBeCloseTo(flow(180), 12);
    expect(flow(0)).toBeGreaterThan(calm);
    expect(flow(90)).toBeCloseTo(calm, 9);
    const passes = [{ over: 6, way: 'out' }] as const;
    expect(flow(0, { passes, stream: 0 })).toBeGreaterThan(calm);
    expect(flow(180, { passes, stream: 0 })).toBeLessThan(calm);
    const home = [{ over: 6, way: 'back' }] as const;
    expect(flow(0, { passes: home, stream: 0 })).toBeCloseTo(flow(180, { passes, stream: 0 }), 12);
  });

  it('takes more in waves', () => {
    expect(run({ waveHeight: 0.4 }).predict(boat)[0]!).toBeGreaterThan(run().predict(boat)[0]!);
  });
});

describe('readRefill', () => {
  it('is a mean over the whole time, doubted by filling, by the day and by the form of the model', () => {
    const [reading] = refill().readings;
    expect(reading!.measured).toBeCloseTo(Math.log(2 / 1000), 12);
    expect(reading!.deviation).toBeCloseTo(Math.sqrt(3) * 0.1, 12);
    expect(refill({ consumedError: 0.2 }).readings[0]!.deviation).toBeCloseTo(Math.sqrt(0.04 + 0.02), 12);
    expect(refill()).toMatchObject({ id: 'r', kind: 'refill', leftOut: false });
    expect(refill({ leftOut: true }).leftOut).toBe(true);
  });

  it('takes off what a charger loses where charge was read at the socket, and doubts it', () => {
    const [reading] = refill({ readAt: 'socket' }).readings;
    expect(reading!.measured).toBeCloseTo(Math.log((2 * 0.88) / 1000), 12);
    expect(reading!.deviation).toBeCloseTo(Math.hypot(Math.sqrt(3) * 0.1, 0.04), 12);
    expect(refill({ readAt: 'battery' }).readings).toEqual(refill().readings);
  });

  it('tells the mean speed under way, from 0.3 m/s on', () => {
    const spent = [
      { speed: 0, seconds: 600 },
      { speed: 2, seconds: 100 },
      { speed: 5, seconds: 300 },
    ];
    expect(refill({ spent }).speed).toBeCloseTo((200 + 1500) / 400, 12);
    expect(refill({ spent: [{ speed: 0.3, seconds: 100 }] }).speed).toBeCloseTo(0.3, 12);
    expect(refill({ spent: [{ speed: 0.29, seconds: 100 }] }).speed).toBe(0);
  });

  it('expects what the boat takes under way and the engine idling beside it', () => {
    const spent = [
      { speed: 6, seconds: 100 },
      { speed: 0, seconds: 300 },
    ];
    const { flow } = steady(boat, afloatOf(trials, trials.setups[0]!, ALONE), 6);
    const [told] = refill({ spent }).predict(boat);
    expect(Math.exp(told!)).toBeCloseTo((100 * flow + 300 * idleFlow(boat.model)) / 400, 12);
    expect(refill({ waveHeight: 0.4 }).predict(boat)[0]!).toBeGreaterThan(refill().predict(boat)[0]!);
  });
});

describe('afloatOf and setupOf', () => {
  it('take tanks of which nobody knows the level for half full, and a battery for full', () => {
    if (catamaran.store.kind !== 'tank') throw new Error('made with a tank');
    const setup = trials.setups[0]!;
    const { fill: _, ...unknown } = ALONE;
    const mass = (fill: number) => afloatOf(trials, setup, { ...ALONE, fill }).mass;
    expect(afloatOf(trials, setup, unknown).mass).toBeCloseTo((mass(0) + mass(1)) / 2, 9);
    expect(mass(1) - mass(0)).toBeCloseTo(fuelMass(catamaran.store.tanks, 1), 9);
    expect(afloatOf(trials, setup, unknown).charge).toBe(1);
    expect(afloatOf(trials, setup, { ...ALONE, fill: 0.3 }).charge).toBe(0.3);
  });

  it('take a run of a setup that nobody listed for one of the first', () => {
    const two = { ...trials, setups: [...trials.setups, { ...trials.setups[0]!, id: 'other' }] };
    expect(setupOf(two, 'other').id).toBe('other');
    expect(setupOf(two, 'gone').id).toBe('usual');
  });
});
