import { describe, expect, it } from 'vitest';
import type { Craft } from '../../../src/core/craft/shapes.ts';
import { boatOf } from '../../../src/core/curve/boat.ts';
import { curve } from '../../../src/core/curve/curve.ts';
import { TRIED_SPREAD } from '../../../src/core/curve/form-spread.ts';
import { steady } from '../../../src/core/curve/steady.ts';
import { craftFrom } from '../../../src/core/files/catalogue.ts';
import { calibrated } from '../../../src/core/trials/calibrated.ts';
import { fitTrials } from '../../../src/core/trials/fit.ts';
import { boatWith, parametersOf } from '../../../src/core/trials/parameters.ts';
import { afloatOf } from '../../../src/core/trials/readings.ts';
import type { Run, Trials } from '../../../src/core/trials/shapes.ts';
import {
  ALONE,
  catamaran,
  drawn,
  morning,
  normals,
  planned,
  sailed,
  seeded,
  THREE,
  TWO,
  trialsOf,
} from './made-trials.ts';

const Z90 = 1.2816;
const plain = trialsOf(catamaran, []);
const means = parametersOf(plain).list.map(({ mean }) => mean);

/** 15 % more resistance everywhere, another pitch, a thirstier engine: the synthetic truth of the method. */
function thirsty(trials: Trials): number[] {
  const changed: Record<string, number> = { kd: 1.15, kp: 1.15, kh: 1.15, fuel: 1.12, friction: 0.1, pitchShift: 0.01 };
  return parametersOf(trials).list.map(({ factor, mean }) => changed[factor] ?? mean);
}

/** Relative standard deviation of consumption, mean over the speeds of the morning. */
function spreadOf(craft: Craft, load = TWO, speeds = [2, 6, 8]): number {
  const boat = boatOf(craft, 'sea', 18);
  const afloat = afloatOf({ hull: craft.hull }, { id: '', drive: craft.drive, store: craft.store }, load);
  const points = curve(boat, afloat, 12).points.filter((point) => speeds.includes(point.speed));
  return points.reduce((sum, { flow }) => sum + Math.log(flow.high / flow.median) / Z90, 0) / points.length;
}

const learned = (trials: Trials): Craft => calibrated(catamaran, trials, fitTrials(trials));

describe('a fit of trial runs', () => {
  it('without a run leaves the boat exactly as it was', () => {
    const fit = fitTrials(plain);
    expect(fit.counted).toBe(0);
    expect(fit.factors.map(({ value }) => value)).toEqual(means);
    for (const { deviation, priorDeviation } of fit.factors) expect(deviation).toBeCloseTo(priorDeviation, 12);
    expect(calibrated(catamaran, plain, fit)).toEqual(catamaran);
  });

  it('of runs that read what the model says changes no factor and narrows the band', () => {
    const trials = sailed(trialsOf(catamaran, morning()), means);
    const fit = fitTrials(trials);
    fit.factors.forEach(({ value }, i) => {
      expect(value).toBeCloseTo(means[i]!, 4);
    });
    expect(fit.scatter).toBeLessThan(1e-3);
    expect(spreadOf(learned(trials))).toBeLessThan(0.4 * spreadOf(catamaran));
  });

  it('trusts the curve less between runs that lie off it: a fifth up and down in turn, however good the meter', () => {
    const trials = sailed(trialsOf(catamaran, morning()), means);
    expect(fitTrials(trials).formSpread).toBe(TRIED_SPREAD);
    const uneven = (share: number) => ({
      ...trials,
      runs: trials.runs.map((run, i): Run => {
        const { rate } = run.consumed as { rate: number };
        return { ...run, consumed: { kind: 'rate', rate: rate * (i % 2 ? 1 + share : 1 / (1 + share)) } };
      }),
    });
    const [fifth, third] = [fitTrials(uneven(0.2)), fitTrials(uneven(0.35))];
    expect(fifth.formSpread).toBeGreaterThan(1.3 * TRIED_SPREAD);
    expect(fifth.formSpread).toBeLessThan(0.25);
    // Some of the runs then contradict the others and are set aside; the curve is no surer for that.
    expect(third.runs.some(({ setAside }) => setAside === 'contradicts')).toBe(true);
    expect(third.formSpread).toBeGreaterThan(fifth.formSpread);
    const band = (of: Trials) => spreadOf(calibrated(catamaran, of, fitTrials(of)));
    expect(band(uneven(0.2))).toBeGreaterThan(1.2 * band(trials));
  });

  it('finds a boat that drags and drinks more than ours: consumption at a third load within 2 %', () => {
    const trials = sailed(trialsOf(catamaran, morning()), thirsty(plain));
    const fit = fitTrials(trials);
    const craft = calibrated(catamaran, trials, fit);
    const afloat = afloatOf(trials, trials.setups[0]!, TWO);
    const truth = boatWith(trials, trials.setups[0]!, parametersOf(trials), thirsty(trials));
    for (const speed of [2, 5, 6, 7, 8]) {
      const told = steady(boatOf(craft, 'sea', 18), afloat, speed).flow;
      expect(Math.abs(told / steady(truth, afloat, speed).flow - 1)).toBeLessThan(0.02);
    }
    expect(fit.factors.find(({ factor }) => factor === 'pitchShift')!.value).toBeGreaterThan(0.005);
  });

  it('narrows with every run that agrees', () => {
    const all = sailed(trialsOf(catamaran, morning()), means).runs;
    const spreads = [0, 1, 3, 6, 12].map((count) => spreadOf(learned(trialsOf(catamaran, all.slice(0, count)))));
    for (let i = 1; i < spreads.length; i++) expect(spreads[i]!).toBeLessThan(spreads[i - 1]!);
    // Unmeasured about 30 %. A full fit 6 to 10 % in the method; 11 to 12 % since boats that somebody measured were fitted.
    expect(spreads.at(-1)!).toBeLessThan(0.12);
  });

  it('is less sure where nobody tried: of another load, and of another speed', () => {
    const runs = [5.5, 6.5, 7.5].map((speed, i) => planned(`${i}`, ALONE, speed));
    const craft = learned(sailed(trialsOf(catamaran, runs), means));
    expect(spreadOf(craft, THREE, [7])).toBeGreaterThan(1.3 * spreadOf(craft, ALONE, [7]));
    expect(spreadOf(craft, ALONE, [2])).toBeGreaterThan(1.3 * spreadOf(craft, ALONE, [7]));
  });

  it('covers the truth of 500 boats in 75 to 85 % of its 10 to 90 % bands', () => {
    const inside: number[] = [];
    let flows = 0;
    let asked = 0;
    const trials = trialsOf(catamaran, morning());
    const { list } = parametersOf(trials);
    for (let seed = 0; seed < 500; seed++) {
      const normal = normals(seeded(seed));
      const truth = drawn(trials, normal);
      const made = sailed(trials, truth, normal);
      const fit = fitTrials(made);
      fit.factors.forEach(({ value, deviation }, i) => {
        inside[i] = (inside[i] ?? 0) + Number(Math.abs(value - truth[i]!) <= Z90 * deviation);
      });
      const setup = made.setups[0]!;
      const craft = calibrated(catamaran, made, fit);
      const afloat = afloatOf(made, setup, TWO);
      const boat = boatWith(made, setup, parametersOf(made), truth);
      for (const { speed, flow } of curve(boatOf(craft, 'sea', 18), afloat, 12).points) {
        if (![2, 6, 8].includes(speed)) continue;
        // The runs of another day differ by what the form leaves open, as those of the trial did.
        const real = steady(boat, afloat, speed).flow * Math.exp(TRIED_SPREAD * normal());
        flows += Number(real >= flow.low && real <= flow.high);
        asked++;
      }
    }
    const coverage = Object.fromEntries(list.map(({ factor }, i) => [factor, inside[i]! / 500]));
    // Nothing reads full-throttle power here: it keeps its prior, whose band is that of the draw.
    for (const factor of ['kd', 'kp', 'kh', 'lcgShift', 'friction', 'power', 'pitchShift']) {
      expect.soft(coverage[factor], factor).toBeGreaterThan(0.75);
      expect.soft(coverage[factor], factor).toBeLessThan(0.85);
    }
    // Falls short on the wide side, 87 %: the prior of the friction share reaches below nothing, where its bound stands.
    expect.soft(coverage.fuel).toBeGreaterThan(0.85);
    expect.soft(coverage.fuel).toBeLessThan(0.88);
    expect.soft(flows / asked).toBeGreaterThan(0.75);
    expect.soft(flows / asked, 'consumption').toBeLessThan(0.85);
  }, 240_000);

  it('names a run 50 % off and does not fit it', () => {
    const good = sailed(trialsOf(catamaran, morning()), means);
    const spoilt = good.runs.map((run): Run => {
      if (run.id !== 'three 3' || run.consumed?.kind !== 'rate') return run;
      return { ...run, consumed: { kind: 'rate', rate: 1.5 * run.consumed.rate } };
    });
    const fit = fitTrials({ ...good, runs: spoilt });
    expect(fit.runs.filter(({ setAside }) => setAside).map(({ id, setAside }) => [id, setAside])).toEqual([
      ['three 3', 'contradicts'],
    ]);
    fit.factors.forEach(({ value }, i) => {
      expect(value).toBeCloseTo(means[i]!, 2);
    });
    expect(fit.counted).toBe(11);
  });

  it('says that two runs disagree where it cannot tell which is wrong, and stays wide', () => {
    const good = sailed(trialsOf(catamaran, [planned('a', TWO, 7), planned('b', TWO, 7.2)]), means);
    const runs = good.runs.map((run, i): Run => {
      if (i === 0 || run.consumed?.kind !== 'rate') return run;
      return { ...run, consumed: { kind: 'rate', rate: 2 * run.consumed.rate } };
    });
    const fit = fitTrials({ ...good, runs });
    expect(fit.limits.find(({ code }) => code === 'runs-disagree')).toBeDefined();
    expect(fit.counted).toBe(2);
    expect(spreadOf(learned({ ...good, runs }), TWO, [7])).toBeGreaterThan(1.7 * spreadOf(learned(good), TWO, [7]));
  });

  it('knows resistance and consumption only together where revs were not read', () => {
    const runs = morning().map(({ rpm: _, ...run }) => run);
    const { limits } = fitTrials(sailed(trialsOf(catamaran, runs), means));
    expect(limits).toContainEqual({ code: 'only-together', factors: ['kp', 'fuel'] });
  });

  it('of one load says so', () => {
    const runs = [5.5, 6.5, 7.5].map((speed, i) => planned(`${i}`, TWO, speed));
    expect(fitTrials(sailed(trialsOf(catamaran, runs), means)).limits).toContainEqual({ code: 'one-load' });
  });

  it('leaves out what the one measuring leaves out', () => {
    const good = sailed(trialsOf(catamaran, morning()), thirsty(plain));
    const fit = fitTrials({ ...good, runs: good.runs.map((run) => ({ ...run, leftOut: true })) });
    expect(fit.counted).toBe(0);
    expect(fit.factors.map(({ value }) => value)).toEqual(means);
  });

  it('keeps what it learned of the hull for an engine that was not tried', () => {
    const trials = sailed(trialsOf(catamaran, morning()), thirsty(plain));
    const other = craftFrom('catamaran-3-6', 'petrol-9-9hp-2s', 'tank-25');
    const { calibration } = calibrated(other, trials, fitTrials(trials));
    const own = learned(trials).calibration!;
    expect(calibration!.factors.slice(0, 4)).toEqual(own.factors.slice(0, 4));
    expect(calibration!.factors.slice(4)).toEqual([0, 1, 0]);
    expect(calibration!.covariance[5]![5]).toBeCloseTo(0.04, 12);
    expect(calibration!.covariance[1]![5]).toBe(0);
  });

  it('of another hull says nothing', () => {
    const trials = sailed(trialsOf(catamaran, morning()), means);
    const other = craftFrom('rib-4-7', 'petrol-40hp-4s', 'tank-25-25');
    expect(calibrated(other, trials, fitTrials(trials))).toEqual(other);
  });

  it('shares one engine between two propellers', () => {
    const { propeller } = catamaran.drive;
    const flat = { ...catamaran.drive, propeller: { ...propeller, pitch: propeller.pitch - 0.025 } };
    const setups = [
      { id: 'usual', drive: catamaran.drive, store: catamaran.store },
      { id: 'flat', drive: flat, store: catamaran.store },
    ];
    const list = parametersOf({ ...plain, setups }).list.map(({ factor }) => factor);
    expect(list.filter((factor) => factor === 'fuel')).toHaveLength(1);
    expect(list.filter((factor) => factor === 'pitchShift')).toHaveLength(2);
  });

  it('grows wider with the years since, to a limit', () => {
    const runs = morning().map((run) => ({ ...run, day: '2024-06-01' }));
    const trials = sailed(trialsOf(catamaran, runs), means);
    const fit = fitTrials(trials);
    const at = (day: string) => calibrated(catamaran, trials, fit, day).calibration!.formSpread!;
    expect(at('2024-06-01')).toBeCloseTo(TRIED_SPREAD, 12);
    expect(at('2026-06-01')).toBeGreaterThan(at('2025-06-01'));
    expect(at('2090-06-01')).toBeCloseTo(Math.hypot(TRIED_SPREAD, 0.2), 12);
    // Nobody said when: as old as any.
    const undated = sailed(trialsOf(catamaran, morning()), means);
    expect(calibrated(catamaran, undated, fitTrials(undated), '2024-06-01').calibration!.formSpread).toBeCloseTo(
      Math.hypot(TRIED_SPREAD, 0.2),
      12,
    );
  });

  it('adds what fouling costs since the trials: a summer of weed is 25 % more resistance', () => {
    const craft = learned(sailed(trialsOf(catamaran, morning()), means));
    const clean = boatOf(craft, 'sea', 18).factors;
    const weedy = boatOf({ ...craft, fouling: 'weed' }, 'sea', 18).factors;
    expect(weedy.hull.kp).toBeCloseTo(1.25 * clean.hull.kp, 12);
    expect(spreadOf({ ...craft, fouling: 'weed' })).toBeGreaterThan(spreadOf(craft));
  });

  it('takes a refill of a known trip as a run of its own error', () => {
    const setup = plain.setups[0]!;
    const spent = [
      { speed: 7, seconds: 3600 },
      { speed: 2, seconds: 1200 },
      { speed: 0, seconds: 600 },
    ];
    const empty = trialsOf(catamaran, [], {
      refills: [{ id: 'day out', setup: 'usual', load: TWO, spent, amount: 1 }],
    });
    const [log] = fitTrials(empty).reads[0]!.predict(boatWith(empty, setup, parametersOf(empty), thirsty(empty)));
    const amount = Math.exp(log!) * 5400;
    const trials = { ...empty, refills: [{ ...empty.refills[0]!, amount }] };
    const fit = fitTrials(trials);
    expect(fit.counted).toBe(1);
    expect(fit.factors.find(({ factor }) => factor === 'fuel')!.value).toBeGreaterThan(1.02);
    expect(spreadOf(calibrated(catamaran, trials, fit), TWO, [7])).toBeLessThan(0.9 * spreadOf(catamaran, TWO, [7]));
  });

  it('learns an electric boat from volts and amperes', () => {
    const tender = craftFrom('catamaran-3-6', 'electric-5-2kw', 'battery-5-lfp');
    const trials = trialsOf(
      tender,
      morning().map((run) => ({ ...run, id: `e ${run.id}` })),
    );
    const truth = thirsty(trials).map((value, i) =>
      parametersOf(trials).list[i]!.factor === 'friction' ? 0.003 : value,
    );
    const fit = fitTrials(sailed(trials, truth));
    expect(fit.counted).toBe(12);
    expect(fit.factors.find(({ factor }) => factor === 'kp')!.value).toBeGreaterThan(1.05);
  });
});
