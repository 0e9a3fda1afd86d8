import type { Craft } from '../../core/craft/shapes.ts';
import type { NamedLoad, SheetStep } from '../../core/trials/run-sheet.ts';
import type { BoatProfile, Setup, Trials } from '../../core/trials/shapes.ts';
import { type CraftOrigin, firstDraft } from '../planner/first-trip.ts';
import type { RefillEntry } from './refill-entry.ts';
import type { RunEntry } from './run-entry.ts';

/** Everything on the trials page that a reload must not lose. */
export interface Work {
  readonly profile: BoatProfile;
  /** Which example each setup came from, by its id. */
  readonly origins: Readonly<Record<string, CraftOrigin>>;
  /** The form of a run or a refill, while it is open. */
  readonly entry?: RunEntry;
  readonly refill?: RefillEntry;
  readonly sheet?: Sheet;
}

/** A proposed day of runs, and which run each of its steps became, by the number of the step. */
export interface Sheet {
  readonly steps: readonly SheetStep[];
  readonly loads: readonly NamedLoad[];
  readonly before: number;
  readonly after: number;
  readonly reading: 'rate' | 'current' | 'none';
  readonly done: Readonly<Record<number, string>>;
}

/** What a newcomer sees: the planner's first boat, one setup, no runs. */
export function firstWork(): Work {
  const { trip, origin } = firstDraft();
  return workOn(trip.craft, origin);
}

/** A fresh start on a boat that the planner knows. */
function workOn(craft: Craft, origin: CraftOrigin): Work {
  const { hull, drive, store } = craft;
  const trials: Trials = { hull, water: 'sea', setups: [{ id: 's1', drive, store }], runs: [], refills: [] };
  return {
    profile: { format: 'homeleg-profile', version: 1, name: hull.name, usual: 's1', trials },
    origins: { s1: origin },
  };
}

/** The boat of a setup as a craft without calibration. */
export function craftOf(trials: Trials, id: string): Craft {
  const setup = setupOf(trials, id);
  return { hull: trials.hull, drive: setup.drive, store: setup.store };
}

/** The setup of this id; where it is gone, the first. */
export function setupOf({ setups }: Trials, id: string): Setup {
  const found = setups.find((setup) => setup.id === id) ?? setups[0];
  if (!found) throw new RangeError('trials have at least one setup');
  return found;
}
