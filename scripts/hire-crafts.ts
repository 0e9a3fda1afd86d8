/**
 * node scripts/hire-crafts.ts: what the boats of the invented hire desk are, taken from the catalogue into
 * shared/craft/hire-crafts.json, so that a reserve check can do without the catalogue.
 */
import { readFileSync, writeFileSync } from 'node:fs';
import { hireCraft } from '../src/core/hire/hire-trip.ts';
import type { Fleet } from '../src/core/hire/shapes.ts';

const craft = new URL('../shared/craft/', import.meta.url);
const { boats }: Fleet = JSON.parse(readFileSync(new URL('hire-fleet.json', craft), 'utf8'));
const crafts = Object.fromEntries(boats.map((boat) => [boat.id, hireCraft(boat)]));
writeFileSync(new URL('hire-crafts.json', craft), `${JSON.stringify(crafts, undefined, 2)}\n`);
