import { describe, expect, it } from 'vitest';
import { fitTrials } from '../../../src/core/trials/fit.ts';
import { candidateRuns, helpfulRuns } from '../../../src/core/trials/next-run.ts';
import { parametersOf } from '../../../src/core/trials/parameters.ts';
import { runSheet } from '../../../src/core/trials/run-sheet.ts';
import { ALONE, catamaran, planned, sailed, THREE, TWO, trialsOf } from './made-trials.ts';

const none = trialsOf(catamaran, []);
const means = parametersOf(none).list.map(({ mean }) => mean);
const slow = sailed(
  trialsOf(
    catamaran,
    [1.5, 2, 2.5].map((speed, i) => planned(`${i}`, ALONE, speed)),
  ),
  means,
);

describe('the one run that helps most', () => {
  it('for three aboard at 7 m/s is a run with three aboard near that speed', () => {
    const fit = fitTrials(slow);
    const candidates = candidateRuns(slow, fit, ['usual'], [ALONE, TWO, THREE]);
    const [best] = helpfulRuns(slow, fit, { setup: 'usual', load: THREE, speeds: [7] }, candidates);
    expect(best!.candidate.load).toBe(THREE);
    expect(Math.abs(best!.candidate.speed - 7)).toBeLessThanOrEqual(1);
    expect(best!.after).toBeLessThan(0.6 * best!.before);
  });

  it('told the truth: the band after the run is the one foretold', () => {
    const fit = fitTrials(none);
    const question = { setup: 'usual', load: TWO, speeds: [7] };
    const [told] = helpfulRuns(none, fit, question, [{ setup: 'usual', load: TWO, speed: 7 }]);
    const made = sailed(trialsOf(catamaran, [planned('a', TWO, 7)]), means);
    const [later] = helpfulRuns(made, fitTrials(made), question, [{ setup: 'usual', load: TWO, speed: 7 }]);
    expect(later!.before).toBeCloseTo(told!.after, 2);
  });

  it('never makes a band wider', () => {
    const fit = fitTrials(slow);
    const candidates = candidateRuns(slow, fit, ['usual'], [ALONE, TWO, THREE]);
    for (const speed of [1.5, 4, 6, 8, 11]) {
      for (const { before, after } of helpfulRuns(
        slow,
        fit,
        { setup: 'usual', load: TWO, speeds: [speed] },
        candidates,
      )) {
        expect(after).toBeLessThanOrEqual(before);
      }
    }
  });
});

describe('a run sheet', () => {
  const { propeller } = catamaran.drive;
  const flat = { ...catamaran.drive, propeller: { ...propeller, pitch: propeller.pitch - 0.025 } };
  const trials = {
    ...none,
    setups: [...none.setups, { id: 'flat', drive: flat, store: catamaran.store }],
  };
  const loads = [
    { name: 'alone', load: ALONE },
    { name: 'three', load: THREE },
  ];
  const sheetOf = (hours: number, setups = ['usual', 'flat']) =>
    runSheet(trials, fitTrials(trials), { setups, loads, time: hours * 3600 });

  it('fits into the hours given, and begins with the warm-up', () => {
    for (const hours of [0.5, 1, 2, 4]) {
      const sheet = sheetOf(hours);
      expect(sheet.time).toBeLessThanOrEqual(hours * 3600);
      expect(sheet.steps[0]!.kind).toBe('warm-up');
      expect(sheet.after).toBeLessThan(sheet.before);
    }
  });

  it('asks for no run more than twice', () => {
    const runs = sheetOf(8, ['usual']).steps.filter(({ kind }) => kind === 'run');
    const counts = new Map<string, number>();
    for (const step of runs) {
      const key = JSON.stringify(step);
      counts.set(key, (counts.get(key) ?? 0) + 1);
    }
    expect(Math.max(...counts.values())).toBeLessThanOrEqual(2);
  });

  it('tells more in more hours', () => {
    const spreads = [0.5, 1, 2, 4].map((hours) => sheetOf(hours).after);
    for (let i = 1; i < spreads.length; i++) expect(spreads[i]!).toBeLessThanOrEqual(spreads[i - 1]! + 1e-9);
  });

  it('changes the propeller at most once, last, and people in between', () => {
    const kinds = sheetOf(4).steps;
    const change = kinds.findIndex(({ kind }) => kind === 'change-setup');
    expect(kinds.filter(({ kind }) => kind === 'change-setup').length).toBeLessThanOrEqual(1);
    if (change >= 0) {
      expect(kinds.slice(0, change).every((step) => step.kind !== 'run' || step.setup === 'usual')).toBe(true);
      expect(kinds.slice(change).every((step) => step.kind !== 'run' || step.setup === 'flat')).toBe(true);
    }
  });

  it('in half an hour has no runs that do not fit', () => {
    expect(sheetOf(0.1).steps).toEqual([]);
  });

  it('asks for speeds rising within a load', () => {
    let last = 0;
    for (const step of sheetOf(3, ['usual']).steps) {
      if (step.kind === 'change-load') last = 0;
      if (step.kind !== 'run') continue;
      expect(step.speed).toBeGreaterThanOrEqual(last);
      last = step.speed;
    }
  });
});
