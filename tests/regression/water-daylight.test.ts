import { describe, expect, it } from 'vitest';
import { entries, holdsTimes } from '../published/daylight-checks.ts';

// Ours: an independent implementation of the Meeus and NOAA equations, within 2 s of NREL SPA.
describe('daylightOn against our own prototype', () => {
  const ours = entries.filter(({ provenance }) => provenance === 'D');

  it.each(ours)('still gives $id', (check) => {
    holdsTimes(check);
  });

  it('covers three entries', () => {
    expect(ours).toHaveLength(3);
  });
});
