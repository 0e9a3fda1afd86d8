import { describe, expect, it } from 'vitest';
import { markLive, RouteHistory } from '../../../src/components/route-map/route-history.ts';
import type { Waypoint } from '../../../src/core/route/shapes.ts';

const one: Waypoint[] = [{ lat: 46, lon: -32 }];
const two = [...one, { lat: 46.01, lon: -32 }];
const three = [...two, { lat: 46.02, lon: -32 }];

function history(...steps: Waypoint[][]): RouteHistory {
  const kept = new RouteHistory();
  for (const step of steps) kept.follow(step);
  return kept;
}

describe('RouteHistory', () => {
  it('has nothing to undo at the start', () => {
    const kept = history(one);
    expect(kept.canUndo).toBe(false);
    expect(kept.undo()).toBeUndefined();
  });

  it('goes back step by step, and forward again', () => {
    const kept = history(one, two, three);
    expect(kept.undo()).toEqual(two);
    expect(kept.undo()).toEqual(one);
    expect(kept.canUndo).toBe(false);
    expect(kept.redo()).toEqual(two);
    expect(kept.redo()).toEqual(three);
    expect(kept.canRedo).toBe(false);
  });

  it('forgets what was undone once something else is done', () => {
    const kept = history(one, two);
    kept.undo();
    kept.follow(three);
    expect(kept.canRedo).toBe(false);
    expect(kept.undo()).toEqual(one);
  });

  it('does not count an echo of the same waypoints', () => {
    const kept = history(one, two, structuredClone(two));
    expect(kept.undo()).toEqual(one);
    expect(kept.canUndo).toBe(false);
  });

  it('stays in step with another one that saw the same changes, when either undoes', () => {
    const map = history(one, two, three);
    const table = history(one, two, three);
    table.follow(structuredClone(map.undo()!));
    expect(table.canRedo).toBe(true);
    map.follow(structuredClone(table.undo()!));
    expect(map.present).toEqual(one);
    expect(map.canUndo).toBe(false);
    table.follow(map.redo()!);
    expect(table.present).toEqual(two);
    expect(table.redo()).toEqual(three);
  });

  it('takes a drag for one step, however many frames it was drawn in', () => {
    const kept = history(one);
    const dragged = [two, three, structuredClone(two)];
    for (const waypoints of dragged) {
      markLive(waypoints, true);
      kept.follow(waypoints);
    }
    const dropped = dragged.at(-1)!;
    markLive(dropped, false);
    kept.follow(dropped);
    expect(kept.undo()).toEqual(one);
    expect(kept.canUndo).toBe(false);
    for (const waypoints of dragged) markLive(waypoints, false);
  });

  it('remembers a hundred steps and no more', () => {
    const kept = history(...Array.from({ length: 150 }, (_, i) => [{ lat: i / 10, lon: 0 }]));
    let steps = 0;
    while (kept.undo()) steps++;
    expect(steps).toBe(100);
  });
});
