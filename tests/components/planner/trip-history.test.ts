import { describe, expect, it } from 'vitest';
import { type Draft, firstDraft } from '../../../src/components/planner/first-trip.ts';
import { TripHistory } from '../../../src/components/planner/trip-history.ts';

const start = firstDraft();
const filled = (fill: number): Draft => ({ ...start, trip: { ...start.trip, load: { ...start.trip.load, fill } } });
const windy = (from: Draft, speed: number): Draft => ({
  ...from,
  trip: { ...from.trip, conditions: { ...from.trip.conditions, wind: { fromDeg: 225, speed } } },
});

describe('TripHistory', () => {
  it('goes back over boat, load and day alike, and on again', () => {
    const history = new TripHistory();
    const half = filled(0.5);
    const breezy = windy(half, 6);
    history.changed(start, half, { at: 0 });
    history.changed(half, breezy, { at: 100 });
    expect(history.undo(breezy)?.draft).toBe(half);
    expect(history.undo(half)?.draft).toBe(start);
    expect(history.undo(start)).toBeUndefined();
    expect(history.redo(start)?.draft).toBe(half);
    expect(history.redo(half)?.draft).toBe(breezy);
    expect(history.canRedo).toBe(false);
  });

  it('takes the digits of one figure for one step, and what is typed later for another', () => {
    const history = new TripHistory();
    const [a, b, c] = [filled(0.1), filled(0.15), filled(0.2)];
    history.changed(start, a, { at: 0 });
    history.changed(a, b, { at: 300 });
    history.changed(b, c, { at: 5000 });
    expect(history.undo(c)?.draft).toBe(b);
    expect(history.undo(b)?.draft).toBe(start);
  });

  it('takes a drag for one step, and a drag taken back for none', () => {
    const history = new TripHistory();
    history.changed(start, filled(0.1), { at: 0, live: true });
    history.changed(filled(0.1), filled(0.2), { at: 16, live: true });
    history.changed(filled(0.2), filled(0.3), { at: 32 });
    expect(history.undo(filled(0.3))?.draft).toBe(start);
    const dropped = new TripHistory();
    dropped.changed(start, filled(0.1), { at: 0, live: true });
    dropped.changed(filled(0.1), start, { at: 16 });
    expect(dropped.canUndo).toBe(false);
  });

  it("keeps in step with the route's own undo: a change that leads back counts as the step back", () => {
    const history = new TripHistory();
    const half = filled(0.5);
    history.changed(start, half, { at: 0 });
    history.changed(half, filled(start.trip.load.fill ?? 0.9), { at: 5000 });
    const back = structuredClone(half);
    history.changed(filled(start.trip.load.fill ?? 0.9), back, { at: 9000 });
    expect(history.canRedo).toBe(true);
    expect(history.undo(back)?.draft).toBe(start);
  });

  it('never melts another trip together with a change of it', () => {
    const history = new TripHistory();
    history.changed(start, filled(0.5), { at: 0, whole: true });
    history.changed(filled(0.5), filled(0.6), { at: 10 });
    expect(history.undo(filled(0.6))).toMatchObject({ draft: filled(0.5), whole: false });
    expect(history.undo(filled(0.5))).toMatchObject({ draft: start, whole: true });
  });
});
