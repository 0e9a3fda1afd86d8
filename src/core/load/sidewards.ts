import type { Craft } from '../craft/shapes.ts';
import type { LoadBalance } from './balance.ts';
import { placed } from './placing.ts';
import type { Load } from './shapes.ts';

/** Mass of the persons, and the moment to starboard of everything else, kg m. */
export function sidewards({ hull }: Craft, load: Load, now: LoadBalance): { people: number; rest: number } {
  const people = placed(hull, load).items.filter(({ kind }) => kind === 'adult' || kind === 'child');
  const rest = people.reduce((sum, { mass, place }) => sum - mass * place.y, now.lateral * now.allUpMass);
  return { people: people.reduce((sum, { mass }) => sum + mass, 0), rest };
}
