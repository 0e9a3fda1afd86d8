import { describe, expect, it } from 'vitest';
import electricTender from '../../../shared/trips/electric-tender.json' with { type: 'json' };
import hireHull from '../../../shared/trips/hire-hull.json' with { type: 'json' };
import petrolDay from '../../../shared/trips/petrol-day.json' with { type: 'json' };
import { measuresFor } from '../../../src/components/units/measures.ts';
import { assumptionText } from '../../../src/components/words/en-assumptions.ts';
import { badCaseText } from '../../../src/components/words/en-bad-case.ts';
import { fixText } from '../../../src/components/words/en-fixes.ts';
import { payloadText } from '../../../src/components/words/en-payload.ts';
import { reasonText } from '../../../src/components/words/en-reasons.ts';
import { tippingText } from '../../../src/components/words/en-tipping.ts';
import { planTrip } from '../../../src/core/trip/plan-trip.ts';
import type { Plan, Trip } from '../../../src/core/trip/shapes.ts';

const m = measuresFor('nautical', 'en');
const trips = [electricTender, hireHull, petrolDay] as unknown as Trip[];
const bare = (trip: Trip): Trip => ({ ...trip, conditions: { water: 'sea' }, load: { items: trip.load.items } });
const heavy = (trip: Trip): Trip => ({
  ...trip,
  load: {
    ...trip.load,
    fill: 0.3,
    items: [...trip.load.items, { id: 'crate', kind: 'gear', name: 'Crate', mass: 250 }],
  },
});
const windy = (trip: Trip): Trip => ({
  ...trip,
  conditions: {
    ...trip.conditions,
    wind: { fromDeg: 10, speed: 12 },
    sea: { height: 0.9 },
    stream: { setDeg: 200, rate: 2.5 },
  },
  policy: { reserve: [], timeAllowed: 1800 },
});
const empty = (trip: Trip): Trip => ({ ...trip, load: { items: [], fill: 0 } });

function sentences(plan: Plan): string[] {
  const { store } = plan;
  return [
    ...plan.reasons.map((reason) => reasonText(reason, m, store)),
    ...plan.reasons.flatMap(({ fixes = [] }) => fixes.map((fix) => fixText(fix, m, store))),
    ...plan.assumptions.map((assumption) => assumptionText(assumption, m, store)),
    ...plan.tipping.map((tipping) => tippingText(tipping, m, store)),
    payloadText(plan.payload, m, store),
    badCaseText(plan.badCase.kinds),
  ];
}

describe('every sentence about a real plan', () => {
  it.each([
    ['as it comes', (trip: Trip) => trip],
    ['with nothing known', bare],
    ['overloaded and low', heavy],
    ['in wind, sea and stream', windy],
    ['with nobody and nothing aboard', empty],
  ] as const)('is whole %s', (_name, change) => {
    for (const trip of trips) {
      const planned = planTrip(change(trip), undefined);
      if (!planned.ok) throw new Error(planned.problems[0]?.message);
      const told = sentences(planned.value);
      expect(told.length).toBeGreaterThan(4);
      for (const text of told) {
        expect(text).toMatch(/^\S.{4,}/);
        expect(text).not.toMatch(/undefined|NaN|Infinity|\[object|\bstore\b| {2}|\(\)|–/);
      }
    }
  });
});
