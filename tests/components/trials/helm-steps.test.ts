import { describe, expect, it } from 'vitest';
import { dayLoads } from '../../../src/components/trials/day-loads.ts';
import {
  figuresOf,
  helmFields,
  pressed,
  type RunStep,
  runOfFigures,
} from '../../../src/components/trials/helm-steps.ts';
import type { Sheet } from '../../../src/components/trials/work.ts';
import { NAUTICAL } from '../../../src/components/units/default-measures.ts';
import { KNOT } from '../../../src/core/units/convert.ts';
import { madeRun, newTrials } from './made-work.ts';

const step: RunStep = { kind: 'run', setup: 's1', load: 'helm alone', speed: 6, seconds: 300 };
const sheet: Sheet = {
  steps: [step],
  loads: [{ name: 'helm alone', load: madeRun('r1').load }],
  before: 0.3,
  after: 0.1,
  reading: 'rate',
  done: {},
};
const around = { step, sheet, id: undefined, day: '2026-07-15', trials: newTrials(), measures: NAUTICAL };

describe('pressed', () => {
  it('makes figures of keys, with one point and no leading nought', () => {
    expect(['1', '2', '.', '.', '4'].reduce(pressed, '')).toBe('12.4');
    expect(['0', '7'].reduce(pressed, '')).toBe('7');
    expect(['.', '5'].reduce(pressed, '')).toBe('0.5');
    expect(pressed('12.', 'back')).toBe('12');
  });
});

describe('runOfFigures', () => {
  it('is a run of the sheet with its load, in SI', () => {
    const run = runOfFigures({ out: '12.4', back: '11.6', rpm: '4200' }, around)!;
    expect(run).toMatchObject({ id: 'r1', setup: 's1', load: madeRun('r1').load, rpm: 4200 });
    expect(run.passes.map(({ over }) => over / KNOT)).toEqual([expect.closeTo(12.4), expect.closeTo(11.6)]);
  });

  it('keeps its id when more of it is filled in', () => {
    expect(runOfFigures({ out: '12.4' }, { ...around, id: 'r5' })!.id).toBe('r5');
  });

  it('is none before the first speed', () => {
    expect(runOfFigures({ rpm: '4200' }, around)).toBeUndefined();
  });

  it('comes back as the digits it was typed with', () => {
    const typed = { out: '12.4', back: '11.6', rpm: '4200', rate: '9.8' };
    expect(figuresOf(runOfFigures(typed, around), true, NAUTICAL)).toEqual(typed);
  });
});

describe('helmFields', () => {
  it('asks for the way back last, since readings are made in between', () => {
    expect(helmFields(sheet, step, newTrials())).toEqual(['out', 'rpm', 'rate', 'back']);
  });
});

describe('dayLoads', () => {
  it('makes up the helm alone, about half, and all, each with the gear', () => {
    const person = (id: string, helm = false) => ({ id, kind: 'adult' as const, mass: 80, ...(helm && { helm }) });
    const bag = { id: 'bag', kind: 'gear' as const, mass: 10 };
    const all = { items: [person('a'), person('b', true), person('c'), person('d'), bag], fill: 0.5 };
    const loads = dayLoads(all, (persons, mass) => `${persons} ${mass}`);
    expect(loads.map(({ name }) => name)).toEqual(['1 90', '3 250', '4 330']);
    expect(loads[0]!.load.items.map(({ id }) => id)).toEqual(['b', 'bag']);
    expect(loads[0]!.load.fill).toBe(0.5);
  });

  it('makes up none where nobody comes', () => {
    expect(dayLoads({ items: [] }, String)).toEqual([]);
  });
});
