import { destination } from '../route/distance.ts';
import { splitLegs } from '../route/split-legs.ts';
import type { Waters } from '../route/waters.ts';
import { firstBar } from './range-ray.ts';
import type { Trip } from './shapes.ts';

/** Rays looked at, of which so many must be open this far, m, for a place to have open water about it. */
const LOOKED = 24;
const OPEN = 6;
const OPEN_WATER = 1000;

/**
 * The first waypoint of a trip with open water about it: from inside a harbour land ends every ray, and the outline
 * would say nothing. The start where there is none, or no waters to tell.
 */
export function openWaypoint(trip: Trip, waters: Waters | undefined): number {
  if (!waters) return 0;
  const { departure } = trip.conditions;
  const open = trip.route.waypoints.findIndex((place) => {
    let free = 0;
    for (let i = 0; i < LOOKED; i++) {
      const to = destination(place, (360 * i) / LOOKED, OPEN_WATER);
      const { hazards } = splitLegs([{ from: place, to, part: 'out', stop: 0, speed: 'best' }], waters);
      if (!firstBar(hazards, departure)) free++;
    }
    return free >= OPEN;
  });
  return Math.max(open, 0);
}
