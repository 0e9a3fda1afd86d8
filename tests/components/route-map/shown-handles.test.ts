import { describe, expect, it } from 'vitest';
import { shownHandles } from '../../../src/components/route-map/shown-handles.ts';

const view = { width: 800, height: 500 };
const none = new Set<number>();

describe('shownHandles', () => {
  it('gives every waypoint of a hand-drawn route in view its handle, however close', () => {
    const spots = [0, 1, 2].map((x) => ({ x, y: 10 }));
    expect(shownHandles(spots, view, none)).toEqual([0, 1, 2]);
  });

  it('gives none to waypoints far outside the view, save those always kept', () => {
    const spots = [
      { x: 10, y: 10 },
      { x: 5000, y: 10 },
      { x: -5000, y: 10 },
    ];
    expect(shownHandles(spots, view, none)).toEqual([0]);
    expect(shownHandles(spots, view, new Set([2]))).toEqual([0, 2]);
  });

  it('thins a long track but keeps the first, the last and the selected', () => {
    const spots = Array.from({ length: 5000 }, (_, i) => ({ x: (i * 800) / 5000, y: 100 }));
    const shown = shownHandles(spots, view, new Set([0, 2501, 4999]));
    expect(shown.length).toBeLessThan(25);
    expect(shown).toEqual(expect.arrayContaining([0, 2501, 4999]));
  });

  it('draws about 200 handles at most, whatever the track', () => {
    const spots = Array.from({ length: 5000 }, (_, i) => ({ x: (i * 137) % 2000, y: (i * 61) % 2000 }));
    expect(shownHandles(spots, { width: 2000, height: 2000 }, new Set([4999])).length).toBeLessThanOrEqual(201);
  });
});
