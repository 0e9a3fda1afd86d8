import { describe, expect, it } from 'vitest';
import {
  blankEntry,
  consumedOf,
  entryOf,
  problemsOf,
  type RunEntry,
  runOf,
} from '../../../src/components/trials/run-entry.ts';
import { readProfile, writeProfile } from '../../../src/core/files/profile-file.ts';
import { madeRun, newTrials } from './made-work.ts';

const filled = (change: Partial<RunEntry> = {}): RunEntry => ({
  ...blankEntry(newTrials(), 's1', '2026-07-15'),
  passes: [
    { way: 'out', over: 6.4 },
    { way: 'back', over: 6 },
  ],
  reading: { kind: 'rate', rate: 0.0012 },
  ...change,
});

describe('blankEntry', () => {
  it('begins with the load, the setup and the way of reading of the last run', () => {
    const last = madeRun('r1', { consumed: { kind: 'amount', amount: 1, seconds: 600 } });
    const entry = blankEntry({ ...newTrials(), runs: [last] }, 's1', '2026-07-15');
    expect(entry.load).toEqual(last.load);
    expect(entry.reading).toEqual({ kind: 'amount' });
    expect(entry.passes).toEqual([{ way: 'out' }, { way: 'back' }]);
  });
});

describe('entryOf and runOf', () => {
  it('give back the run that was opened, figure by figure', () => {
    const run = madeRun('r7', {
      day: '2026-07-15',
      passes: [{ over: 5, way: 'out' }],
      stream: -0.2,
      fullThrottle: true,
      wind: { speed: 3, offBowDeg: 45 },
      waveHeight: 0.1,
      consumedError: 0.03,
      leftOut: true,
      note: 'choppy',
    });
    expect(runOf(entryOf(run), newTrials())).toEqual(run);
  });

  it('make a run that the door of a profile lets in', () => {
    const trials = { ...newTrials(), runs: [runOf(filled(), newTrials())] };
    const text = writeProfile({ format: 'homeleg-profile', version: 1, name: 'Boat', usual: 's1', trials });
    expect(readProfile(text)).toMatchObject({ ok: true });
  });

  it('forget a stream once there is a pass back, which tells it better', () => {
    expect(runOf(filled({ stream: 0.4 }), newTrials())).not.toHaveProperty('stream');
  });

  it('leave out passes without a speed', () => {
    const run = runOf(filled({ passes: [{ way: 'out', over: 6 }, { way: 'back' }] }), newTrials());
    expect(run.passes).toEqual([{ way: 'out', over: 6 }]);
  });
});

describe('problemsOf', () => {
  it('has none for a run with speeds and a flow', () => {
    expect(problemsOf(filled())).toEqual([]);
  });

  it('asks for a speed, for the other half of a reading, for where the wind came from, and for somebody aboard', () => {
    const bare = filled({
      passes: [{ way: 'out' }],
      reading: { kind: 'current', amps: 40 },
      windSpeed: 4,
      load: { items: [] },
    });
    expect(problemsOf(bare).map(({ code }) => code)).toEqual(['no-speed', 'half-reading', 'no-bearing', 'nobody']);
  });
});

describe('consumedOf', () => {
  it('makes watts of amps and volts', () => {
    expect(consumedOf({ kind: 'current', amps: 40, volts: 50 })).toEqual({ kind: 'rate', rate: 2000 });
  });

  it('makes nothing of half a reading', () => {
    expect(consumedOf({ kind: 'amount', amount: 2 })).toBeUndefined();
  });
});
