import { commonWords } from '../words/en-common.ts';
import { spoken } from '../words/spoken.ts';

/** What the map says, in English; one object per language. */
export const mapWords = spoken('mapWords', {
  map: 'Map of the route',
  tools: 'Edit the route',
  undo: 'Undo',
  redo: 'Redo',
  reverse: 'Reverse',
  fit: 'Fit route',
  howFar: 'How far from here',
  streetMap: 'Street map',
  zoomIn: 'Zoom in',
  zoomOut: 'Zoom out',
  moveMap: 'Move the map',
  moveWaypoint: (number: number) => `Move waypoint ${number}`,
  directions: { north: 'north', west: 'west', east: 'east', south: 'south' },
  insertBefore: 'Insert before',
  insertAfter: 'Insert after',
  delete: 'Delete',
  done: 'Done',
  start: 'Start',
  turn: 'Turn',
  finish: 'Finish',
  turnBack: 'Latest point to turn back',
  hintEmpty: 'Tap the water where the trip starts, then each point on the way.',
  hint: 'Tap to add a waypoint at the end. Tap a waypoint to select it.',
  hintSelected: 'Now tap where it should go, or use the arrows.',
  hintFingers: 'Two fingers move the map.',
  hintThinned: 'Some waypoints are too close together to show. Zoom in to edit them.',
  mapKeys: 'Enter adds a waypoint at the cross. Arrows move the map, plus and minus zoom, Tab goes to the waypoints.',
  mapKeysSelected: 'Enter puts the selected waypoint at the cross. Arrows move the map, Escape cancels.',
  waypointKeys:
    'Arrows move the waypoint, with Shift in small steps. Delete deletes it. Page Up and Page Down go to the one before or after. Escape cancels.',
  selected: (number: number, count: number) => `Waypoint ${number} of ${count}`,
  noMap: "The map can't be shown in this page. Your route and the plan still work: use the table of waypoints.",
  noMapPolicy:
    'The security policy of this page does not let the map load. Your route and the plan still work: use the table of waypoints.',
  loading: 'The map is loading.',
  noPictures: "Map pictures can't be loaded; your route and the plan still work.",
  keepPictures: 'Keep the map pictures I see on this device',
  keepPicturesWhy:
    'They are then shown without a network: up to 600, for 30 days. Whole areas may not be fetched ahead. Off again throws them away.',
  key: 'Key to the map',
  keyOut: 'Way out',
  keyHome: 'Way home',
  keySlowed: 'Slowed by a speed limit',
  keyLand: 'Land',
  keyShoal: 'Shoal',
  keyLimit: 'Speed limit',
  keyKeepOut: 'Keep out',
  keyLanding: 'Landing',
  keySetRoute: 'Set route',
  keyReachHome: 'How far, out and home',
  keyReachOneWay: 'How far, one way',
  openStreetMap: 'OpenStreetMap contributors',
  waypoint: (number: number, count: number) => `Waypoint ${number} of ${count}`,
  shoalDries: (name: string, height: string) => `${name}, dries ${height}`,
  shoalDeep: (name: string, depth: string) => `${name}, ${depth} least`,
  fromStart: (distance: string) => `${distance} from start`,
});

/** "Waypoint 2 of 5, Ward jetty, 1.8 NM from start"; the first and last also say what they are. */
export function waypointName(
  index: number,
  count: number,
  { name, role, fromStart }: { name?: string; role?: string; fromStart: string },
): string {
  return [
    mapWords.waypoint(index + 1, count),
    name,
    role && commonWords.within(role),
    index > 0 ? mapWords.fromStart(fromStart) : undefined,
  ]
    .filter(Boolean)
    .join(', ');
}
