import { describe, expect, it } from 'vitest';
import { measuresFor } from '../../../src/components/units/measures.ts';
import { roundText } from '../../../src/components/waypoint-table/round-text.ts';
import type { RoundRoute } from '../../../src/core/route/take-round-route.ts';

const nautical = measuresFor('nautical', 'en');
const track = { via: [{ lat: 46, lon: -32 }], distance: 900, kept: 50, clear: true, shoals: [] };
const nothing: RoundRoute = { waypoints: [], added: 0, rounded: [], refused: [] };
const text = (made: Partial<RoundRoute>) => roundText({ ...nothing, ...made }, 50, nautical).replaceAll('\u00a0', ' ');

describe('roundText', () => {
  it('says which legs go round, how far off, and how many waypoints that took', () => {
    expect(text({ added: 1, rounded: [{ leg: 1, track }] })).toBe(
      'Leg 2 now goes round, 50 m off: 1 waypoint put in between. Undo takes it out.',
    );
    const legs = [0, 2, 3].map((leg) => ({ leg, track }));
    expect(text({ added: 7, rounded: legs })).toContain('Legs 1, 3 and 4 now go round, 50 m off: 7 waypoints');
  });

  it('says where the water leaves less room, and what is still crossed', () => {
    const rounded = [
      { leg: 0, track: { ...track, kept: 12, clear: false } },
      { leg: 1, track: { ...track, kept: 0, clear: false, shoals: ['Bank', 'Bar'] } },
    ];
    const said = text({ added: 2, rounded });
    expect(said).toContain('only 12 m off');
    expect(said).toContain('still crosses Bank and Bar');
  });

  it('names the waypoint that stands in the way, counted as on screen', () => {
    const refused = [{ leg: 1, problems: [{ code: 'on-land', path: 'waypoints.2', message: '' }] }];
    expect(text({ refused })).toBe('Leg 2 stays as it is: waypoint 3 lies on land.');
  });

  it('says when there is nothing to do', () => {
    expect(text({})).toContain('Nothing to do');
  });
});
