import type { Craft } from '../craft/shapes.ts';
import type { HireBoat } from './shapes.ts';

/**
 * What a boat is that brings its own figures or its profile, without the catalogue; undefined for one of shipped parts. A
 * measured boat goes out as its profile says it usually does.
 */
export function ownCraft(boat: HireBoat): Craft | undefined {
  if (boat.craft) return boat.craft;
  if (!boat.profile) return undefined;
  const { hull, setups } = boat.profile.trials;
  const { drive, store } = setups.find(({ id }) => id === boat.profile.usual) ?? setups[0]!;
  return { hull, drive, store };
}
