import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import daylight from '../../shared/checks/daylight-checks.json' with { type: 'json' };
import sea from '../../shared/checks/sea-checks.json' with { type: 'json' };
import trip from '../../shared/checks/trip-checks.json' with { type: 'json' };

/** Text of all tests against publications and our prototype. */
const tests = ['published', 'regression']
  .flatMap((folder) => {
    const home = new URL(`../${folder}/`, import.meta.url);
    return readdirSync(home).map((name) => readFileSync(new URL(name, home), 'utf8'));
  })
  .join('\n');

/** Families that tests take by the beginning of the id; all daylight entries are taken by their provenance. */
const FAMILIES = ['cem-U', 'smb-', 'beaufort-', 'wavecurrent-T3', 'prob-'];

function tested(id: string): boolean {
  const family = FAMILIES.find((start) => id.startsWith(start));
  return tests.includes(`'${id}'`) || (family !== undefined && tests.includes(family));
}

describe('the published and own check values of water and trips', () => {
  it.each([...sea, ...trip].map(({ id }) => id))('has a test of %s', (id) => {
    expect(tested(id)).toBe(true);
  });

  it('has daylight entries of the two provenances that are tested whole, and no other', () => {
    expect(new Set(daylight.map(({ provenance }) => provenance))).toEqual(new Set(['P', 'D']));
  });
});
