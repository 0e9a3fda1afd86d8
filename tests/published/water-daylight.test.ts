import { describe, expect, it } from 'vitest';
import { entries, holdsTimes } from './daylight-checks.ts';

// Sources by entry: US Naval Observatory and NREL SPA values quoted in astronomy and solar library tests, an almanac web
// site, a planetary ephemeris, the listed output of a sunrise program.
describe('daylightOn', () => {
  const published = entries.filter(({ provenance }) => provenance === 'P');

  it.each(published)('meets $id: $source', (check) => {
    holdsTimes(check);
  });

  it('covers twelve published entries', () => {
    expect(published).toHaveLength(12);
  });
});
