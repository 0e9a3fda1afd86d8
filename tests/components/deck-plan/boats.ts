import { readFileSync } from 'node:fs';
import type { Spot } from '../../../src/components/deck-plan/hull-plan.ts';
import type { Craft, Hull } from '../../../src/core/craft/shapes.ts';
import type { Aboard, Load } from '../../../src/core/load/shapes.ts';
import { craft as madeCraft } from '../../core/load/made-craft.ts';

const file = new URL('../../../shared/craft/hulls.json', import.meta.url);

/** The invented boats that ship with the project. */
export const boats: readonly { id: string; hull: Hull }[] = JSON.parse(readFileSync(file, 'utf8'));

export function boat(id: string): Hull {
  return boats.find((each) => each.id === id)!.hull;
}

/** A shipped boat with a portable tank aft and a 50 kg engine. */
export function craftWith(hull: Hull): Craft {
  const aft = hull.stations.find(({ id }) => id === 'store-aft')!;
  const at = { x: aft.x, y: aft.y, z: aft.z };
  const tank = { name: 'Portable', capacityL: 12, emptyMass: 3, unusableL: 0.6, fixed: false, at };
  return { ...madeCraft({ store: { kind: 'tank', tanks: [tank] } }), hull };
}

export function load(...items: Aboard[]): Load {
  return { items };
}

/** Whether a spot is inside a closed ring, by counting the edges a line to the right crosses. */
export function inside(ring: readonly Spot[], { x, y }: Spot): boolean {
  let within = false;
  ring.forEach((a, i) => {
    const b = ring[(i + 1) % ring.length]!;
    if (a.y > y !== b.y > y && x < a.x + ((y - a.y) / (b.y - a.y)) * (b.x - a.x)) within = !within;
  });
  return within;
}
