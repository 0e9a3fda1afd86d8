import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { grown } from '../../scripts/size/grown.ts';
import { tableOf, weigh } from '../../scripts/size/weigh.ts';

const kept = JSON.parse(readFileSync(new URL('../../scripts/size/table.json', import.meta.url), 'utf8'));

describe('the size table', () => {
  it('names a part that grew by more than three in a hundred, and no other', () => {
    const before = { map: 10_000, table: 10_000, small: 100 };
    expect(grown({ map: 10_300, table: 10_301, small: 240 }, before)).toEqual([
      'table grew from 10000 to 10301 bytes (gzip)',
    ]);
  });

  it('passes a part that is new: it counts in what loads it', () => {
    expect(grown({ added: 50_000 }, {})).toEqual([]);
  });
});

describe('the elements as built', () => {
  it('weigh no more than the table in the repository says; after a wanted change: npm run size -- --write', async () => {
    const now = tableOf(await weigh());
    expect(Object.keys(now).length).toBeGreaterThan(20);
    expect(grown(now, kept)).toEqual([]);
  }, 180_000);
});
