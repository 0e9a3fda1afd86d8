import { listText } from '../words/list-text.ts';
import { spoken } from '../words/spoken.ts';

/** What taking a route round says, in English; one object per language. */
export const roundWords = spoken('roundWords', {
  taken: (legs: readonly number[], added: number, off: string) =>
    `${legs.length === 1 ? `Leg ${legs[0]} now goes` : `Legs ${listText(legs.map(String))} now go`} round, ${off} off: ${added} ${added === 1 ? 'waypoint' : 'waypoints'} put in between. Undo takes ${added === 1 ? 'it' : 'them'} out.`,
  already: (off: string) => `Nothing to do: the legs keep ${off} off as they are, or as much as their ends allow.`,
  narrow: (room: string) => `Where the water is narrow it is only ${room} off.`,
  shoals: (names: readonly string[]) =>
    `It still crosses ${listText(names)}: an end lies there, or nothing leads round.`,
  refused: (leg: number, why: string) => `Leg ${leg} stays as it is: ${why}`,
  why: {
    'on-land': (waypoint: number) => `waypoint ${waypoint} lies on land.`,
    'in-keep-out': (waypoint: number) => `waypoint ${waypoint} lies where boats keep out.`,
    'too-near': (waypoint: number) => `waypoint ${waypoint} lies against the shore.`,
    'outside-waters': (waypoint: number) => `waypoint ${waypoint} lies outside the waters known here.`,
    'too-far-north': (waypoint: number) => `waypoint ${waypoint} lies beyond 85 degrees of latitude.`,
    'too-detailed': () => 'the shore is too detailed to search that far. Put a waypoint in between.',
    'no-way': () => 'no way by water was found.',
  },
});
