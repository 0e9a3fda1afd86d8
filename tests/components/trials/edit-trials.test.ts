import { describe, expect, it } from 'vitest';
import {
  duplicatedRun,
  leftOut,
  loadsTried,
  onHull,
  usualLoad,
  withoutSetup,
  withRun,
  withSetup,
} from '../../../src/components/trials/edit-trials.ts';
import { craftFrom } from '../../../src/core/files/catalogue.ts';
import { madeRun, newTrials } from './made-work.ts';

const trials = { ...newTrials(), runs: [madeRun('r1'), madeRun('r2')] };

describe('duplicatedRun', () => {
  it('puts the copy right after its original, under an id of its own', () => {
    const ids = duplicatedRun(trials, 'r1').runs.map(({ id }) => id);
    expect(ids).toEqual(['r1', 'r3', 'r2']);
  });
});

describe('withRun', () => {
  it('keeps a changed run in its place', () => {
    const changed = withRun(trials, madeRun('r1', { rpm: 5000 }));
    expect(changed.runs.map(({ id, rpm }) => [id, rpm])).toEqual([
      ['r1', 5000],
      ['r2', 4400],
    ]);
  });
});

describe('leftOut', () => {
  it('is taken back without a trace', () => {
    expect(leftOut(leftOut(madeRun('r1'), true), false)).toEqual(madeRun('r1'));
  });
});

describe('withoutSetup', () => {
  const two = withSetup(trials, { ...trials.setups[0]!, id: 's2' });

  it('lets a setup go that no run was made with', () => {
    expect(withoutSetup(two, 's2').setups).toHaveLength(1);
  });

  it('keeps the setup of a run, and the last one', () => {
    expect(withoutSetup(two, 's1')).toBe(two);
    expect(withoutSetup(trials, 's1')).toBe(trials);
  });
});

describe('onHull', () => {
  it('keeps the seats that the other hull has too and forgets the rest', () => {
    const { hull } = craftFrom('rib-3-4', 'petrol-15hp-4s', 'tank-12');
    const known = new Set(hull.stations.map(({ id }) => id));
    for (const { load } of onHull(trials, hull).runs) {
      for (const { station } of load.items) expect(station === undefined || known.has(station)).toBe(true);
    }
  });
});

describe('usualLoad', () => {
  it('is the one most runs of the setup were made with', () => {
    const heavy = { items: [{ id: 'a', kind: 'adult' as const, mass: 120 }] };
    const several = { ...trials, runs: [...trials.runs, madeRun('r3', { load: heavy })] };
    expect(usualLoad(several, 's1')).toEqual(madeRun('r1').load);
    expect(loadsTried(several)).toHaveLength(2);
  });
});
