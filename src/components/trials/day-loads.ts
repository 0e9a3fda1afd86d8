import type { Load } from '../../core/load/shapes.ts';
import type { NamedLoad } from '../../core/trials/run-sheet.ts';
import { person } from '../deck-plan/landing.ts';

/** Loads that a crew can make up in a day: the helm alone, about half of them, everyone; all keep their seats. */
export function dayLoads(all: Load, name: (persons: number, mass: number) => string): readonly NamedLoad[] {
  const people = all.items
    .filter(({ kind }) => person(kind))
    .toSorted((a, b) => Number(b.helm ?? false) - Number(a.helm ?? false));
  const others = all.items.filter(({ kind }) => !person(kind));
  if (people.length === 0) return [];
  const counts = [...new Set([1, Math.ceil((people.length + 1) / 2), people.length])];
  return counts
    .sort((a, b) => a - b)
    .map((count): NamedLoad => {
      const items = [...people.slice(0, count), ...others];
      const load = { ...all, items: all.items.filter((item) => items.includes(item)) };
      return {
        name: name(
          count,
          load.items.reduce((sum, { mass }) => sum + mass, 0),
        ),
        load,
      };
    });
}
