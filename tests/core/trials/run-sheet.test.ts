import { describe, expect, it } from 'vitest';
import { fitTrials } from '../../../src/core/trials/fit.ts';
import { runSheet, type SheetStep } from '../../../src/core/trials/run-sheet.ts';
import { ALONE, catamaran, THREE, trialsOf } from './made-trials.ts';

const none = trialsOf(catamaran, []);
const { propeller } = catamaran.drive;
const flat = { ...catamaran.drive, propeller: { ...propeller, pitch: propeller.pitch - 0.025 } };
const trials = { ...none, setups: [...none.setups, { id: 'flat', drive: flat, store: catamaran.store }] };
const fit = fitTrials(trials);
const alone = { name: 'alone', load: ALONE };
const three = { name: 'three', load: THREE };
/** Only the flat propeller is asked about. */
const flatAsked = [{ setup: 'flat', load: ALONE, speeds: [6, 7] }];
const kinds = (steps: readonly SheetStep[]) => steps.map(({ kind }) => kind);

describe('runSheet', () => {
  it('counts a warm-up, a change of people and a run: 20 minutes, not a second less', () => {
    const sheet = (time: number) => runSheet(trials, fit, { setups: ['usual'], loads: [alone], time });
    expect(sheet(1199)).toMatchObject({ steps: [], time: 0 });
    const { steps, time, before, after } = sheet(1200);
    expect(steps).toMatchObject([
      { kind: 'warm-up', seconds: 600 },
      { kind: 'change-load', load: 'alone', seconds: 300 },
      { kind: 'run', setup: 'usual', load: 'alone', seconds: 300 },
    ]);
    expect(time).toBe(1200);
    expect(after).toBeLessThan(before);
    expect(kinds(sheet(1499).steps)).toEqual(['warm-up', 'change-load', 'run']);
    expect(kinds(sheet(1500).steps)).toEqual(['warm-up', 'change-load', 'run', 'run']);
  });

  it('has the propeller changed before its first run, ashore in 25 minutes, and not the one that is on', () => {
    const day = { setups: ['usual', 'flat'], loads: [alone], time: 4 * 3600, questions: flatAsked };
    const { steps } = runSheet(trials, fit, day);
    const changes = steps.filter(({ kind }) => kind === 'change-setup');
    expect(changes).toEqual([{ kind: 'change-setup', setup: 'flat', seconds: 1500 }]);
    const change = steps.indexOf(changes[0]!);
    steps.forEach((step, at) => {
      if (step.kind === 'run') expect(step.setup).toBe(at < change ? 'usual' : 'flat');
    });
    expect(steps[change + 1]).toMatchObject({ kind: 'change-load', load: 'alone' });
  });

  it('makes more than one run with a propeller once it is on: the further ones cost their own time alone', () => {
    for (const [minutes, least] of [
      [80, 2],
      [120, 5],
    ] as const) {
      const day = { setups: ['usual', 'flat'], loads: [alone], time: minutes * 60, questions: flatAsked };
      const { steps, time } = runSheet(trials, fit, day);
      const flatRuns = steps.filter((step) => step.kind === 'run' && step.setup === 'flat');
      expect(flatRuns.length).toBeGreaterThanOrEqual(least);
      expect(time).toBeLessThanOrEqual(minutes * 60);
    }
  });

  it('has no change where the propeller asked about is on already and the day too short for the other', () => {
    const day = { setups: ['flat', 'usual'], loads: [alone], time: 2400, questions: flatAsked };
    const { steps } = runSheet(trials, fit, day);
    expect(kinds(steps)).not.toContain('change-setup');
    expect(steps.some((step) => step.kind === 'run' && step.setup === 'flat')).toBe(true);
  });

  it('asks nothing where what is asked is known as well as a run can tell it', () => {
    const day = { setups: ['usual'], loads: [alone, three], time: 3 * 3600, questions: [] };
    expect(runSheet(trials, fit, day)).toEqual({ steps: [], time: 0, before: 0, after: 0 });
  });

  it('asks about every load of the day, and has people changed once for each', () => {
    const day = { setups: ['usual'], loads: [three, alone], time: 5 * 3600 };
    const { steps, time } = runSheet(trials, fit, day);
    const changes = steps.flatMap((step) => (step.kind === 'change-load' ? [step.load] : []));
    expect(changes).toEqual(['three', 'alone']);
    expect(time).toBeLessThanOrEqual(5 * 3600);
    expect(time).toBe(steps.reduce((sum, { seconds }) => sum + seconds, 0));
  });
});
