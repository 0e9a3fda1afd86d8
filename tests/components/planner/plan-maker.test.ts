import { readFileSync } from 'node:fs';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { PlanMaker } from '../../../src/components/planner/plan-maker.ts';
import type { Trip } from '../../../src/core/trip/shapes.ts';

const trip: Trip = JSON.parse(readFileSync('shared/trips/petrol-day.json', 'utf8'));
const element = {
  addController() {},
  removeController() {},
  requestUpdate() {},
  updateComplete: Promise.resolve(true),
};

/** A plan under way: the quick answer is there, the slower figures are begun. */
async function begun(): Promise<PlanMaker> {
  const maker = new PlanMaker(element, () => {});
  maker.hostConnected();
  maker.make(trip, undefined);
  await vi.advanceTimersByTimeAsync(140);
  while (vi.getTimerCount() === 0) await new Promise((next) => setImmediate(next));
  expect(maker.plan).toBeDefined();
  expect(maker.settled).toBe(false);
  return maker;
}

describe('PlanMaker', () => {
  beforeEach(() => void vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] }));
  afterEach(() => void vi.useRealTimers());

  it('works the curve out with the slower figures, if somebody came near it only while those were worked out', async () => {
    const maker = await begun();
    await maker.showCurve();
    expect(maker.curve).toBeUndefined();
    await vi.runAllTimersAsync();
    expect(maker.settled).toBe(true);
    expect(maker.curve).toBeDefined();
  });

  it('works no curve out while nobody is near it', async () => {
    const maker = await begun();
    await vi.runAllTimersAsync();
    expect(maker.settled).toBe(true);
    expect(maker.curve).toBeUndefined();
  });
});
