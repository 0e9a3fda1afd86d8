import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { WatersFile } from '../../../src/core/route/shapes.ts';
import { prepareWaters } from '../../../src/core/route/waters.ts';
import { planTrip } from '../../../src/core/trip/plan-trip.ts';
import type { Plan, Trip } from '../../../src/core/trip/shapes.ts';

const read = (path: string) =>
  JSON.parse(readFileSync(new URL(`../../../shared/${path}`, import.meta.url), 'utf8')) as unknown;
const { responsible: _, surveyed: __, validUntil: ___, ...undated } = read('waters/haven.geojson') as WatersFile;
const sound = read('trips/petrol-day.json') as Trip;

function planned(departure: string | undefined, dates: Partial<WatersFile>): Plan {
  const { departure: _none, ...conditions } = sound.conditions;
  const trip: Trip = { ...sound, conditions: { ...conditions, ...(departure && { departure }) } };
  const plan = planTrip(trip, prepareWaters({ ...undated, ...dates } as WatersFile), { quick: true });
  if (!plan.ok) throw new Error('the shipped trip has a plan');
  return plan.value;
}

const held = { responsible: 'The harbour office', surveyed: '2026-04-01', validUntil: '2026-06-20' };
const codes = ({ reasons }: Plan) => reasons.map(({ code }) => code);
const assumed = ({ assumptions }: Plan) =>
  assumptions.map(({ code }) => code).filter((code) => code.startsWith('waters'));

describe('the survey of local waters', () => {
  it('counts on both of its days', () => {
    for (const departure of ['2026-04-01T09:00:00Z', '2026-06-20T09:00:00Z']) {
      const plan = planned(departure, held);
      expect(codes(plan)).not.toContain('waters-expired');
      expect(codes(plan)).not.toContain('waters-not-yet');
      expect(assumed(plan)).toEqual([]);
    }
  });

  it('leaves no plain go on the day after the last', () => {
    const before = planned('2026-06-20T09:00:00Z', held);
    const after = planned('2026-06-21T09:00:00Z', held);
    expect(before.verdict).toBe('go');
    expect(after.verdict).toBe('marginal');
    expect(after.reasons).toContainEqual({ code: 'waters-expired', level: 'marginal', name: '2026-06-20' });
  });

  it('counts the day on which the boat comes home, on the clock of the departure', () => {
    expect(codes(planned('2026-06-20T23:30:00+02:00', held))).toContain('waters-expired');
    expect(codes(planned('2026-06-20T09:00:00-11:00', held))).not.toContain('waters-expired');
  });

  it('is not there yet before its first day', () => {
    const plan = planned('2026-03-31T09:00:00Z', held);
    expect(plan.verdict).not.toBe('go');
    expect(plan.reasons).toContainEqual({ code: 'waters-not-yet', level: 'marginal', name: '2026-04-01' });
  });

  it('is unknown without a departure, and says so', () => {
    const plan = planned(undefined, held);
    expect(plan.assumptions).toContainEqual({ code: 'waters-date-unknown', name: '2026-06-20' });
  });

  it('that nobody dated or answers for is said as taken for granted', () => {
    expect(assumed(planned('2026-06-20T09:00:00Z', {}))).toEqual(['waters-unanswered', 'waters-undated']);
    const { validUntil: _last, ...open } = held;
    expect(assumed(planned('2026-06-20T09:00:00Z', open))).toEqual(['waters-undated']);
    expect(assumed(planned('2026-06-20T09:00:00Z', { ...held, responsible: '' }))).toEqual(['waters-unanswered']);
  });

  it('never makes an answer better, whatever its dates', () => {
    const rank = { go: 0, marginal: 1, 'no-go': 2 };
    const free = planned('2026-06-20T09:00:00Z', {});
    for (const dates of [held, { validUntil: '2020-01-01' }, { surveyed: '2040-01-01' }]) {
      expect(rank[planned('2026-06-20T09:00:00Z', dates).verdict]).toBeGreaterThanOrEqual(rank[free.verdict]);
    }
  });
});
