import type { Aboard } from '../../core/load/shapes.ts';
import type { Measures } from '../units/measures.ts';
import { commonWords } from './en-common.ts';
import { dataName } from './en-data.ts';
import { spoken } from './spoken.ts';

type Kind = Aboard['kind'] | 'tank' | 'battery';

/** Words of the boat seen from above and of those aboard. */
export const deckWords = spoken('deckWords', {
  drawing: 'The boat from above',
  bow: 'Bow',
  port: 'Port',
  starboard: 'Starboard',
  engine: 'Engine',
  kinds: { adult: 'Adult', child: 'Child', dog: 'Dog', gear: 'Gear', tank: 'Tank', battery: 'Battery' } as const,
  /** Short words on empty places. */
  places: { helm: 'Helm', seat: 'Seat', gear: 'Gear', store: 'Tank', 'bow-tube': 'No seat' } as const,
  batteryPlace: 'Battery',
  figuresIn: (unit: string) => `Figures on the pieces are ${unit}.`,
  hint: 'Drag people and things to their places. Or tap one, then the place.',
  hintEmpty: 'Nobody is aboard yet. Add people and things in the table.',
  hintSelected: 'Now tap its place on the boat, or use the buttons.',
  keys: 'Enter picks it up or lets go. Arrows move it 5 cm, with Shift 25 cm. N goes to the next free place. Delete takes it ashore. Page Up and Page Down go to the one before or after. Escape cancels.',
  ashore: 'No place yet',
  placeUnknown: 'place not known',
  builtIn: 'built in, stays where it is',
  steers: 'at the helm',
  outside: 'outside the boat',
  nextPlace: 'Next free place',
  done: 'Done',
  remove: 'Remove',
  putBack: 'Put back',
  removed: (who: string) => `${who} is no longer aboard.`,
  move: (who: string) => `Move ${who}`,
  directions: { forward: 'forward', aft: 'aft', port: 'to port', starboard: 'to starboard' } as const,
  marks: 'Centre of gravity; the shaded field is where it lies well.',
  refused: {
    'bow-tube': 'Nobody rides on the bow at speed: a wave throws them off, in front of the propeller.',
    fixed: 'This tank is built in.',
    none: 'No free place is left for this. Drag it to a free spot.',
  } as const,
  taken: (who: string) => `${who} sits there. First give this one a place, then they can change.`,
  refusedShort: 'Not on the bow',
  balanceSaid: (along: string, across: string) => `Balance lengthwise ${along}, sideways ${across}.`,
  swapped: (one: string, other: string) => `${one} and ${other} changed places.`,
});

/** The table of those aboard. */
export const aboardWords = spoken('aboardWords', {
  title: 'Who and what is aboard',
  who: 'Who or what',
  name: (who: string) => `Name of ${who}`,
  weight: 'Weight',
  weightOf: (who: string) => `Weight of ${who}`,
  weightHint: 'Weights of people: clothed, and with what they carry.',
  place: 'Place',
  placeOf: (who: string) => `Place of ${who}`,
  helm: 'Helm',
  steers: (who: string) => `${who} is at the helm`,
  removeOne: (who: string) => `Remove ${who}`,
  notKnown: 'Not known',
  freeSpot: 'Free spot',
  taken: (label: string, who: string) => `${label} (${who})`,
  forward: 'Forward',
  starboard: 'Starboard',
  spotHint: 'From the stern and from the middle line; to port is less than 0.',
  add: { adult: 'Adult', child: 'Child', dog: 'Dog', gear: 'Gear' } as const,
  addTitle: 'Take aboard',
  addName: (what: string) => `Add: ${commonWords.within(what)}`,
  seatEveryone: 'Seat everyone',
  seatEveryoneHint: 'Puts those without a place where the boat is steadiest. You can still move them.',
  full: 'The list is full: no more can be added.',
  nobody: 'Nobody is aboard yet.',
  noHelm: 'Nobody is at the helm.',
  fixed: 'Built in',
  withFuel: (share: string) => `${share} full`,
  halfFull: 'if half full',
});

export const totalWords = spoken('totalWords', {
  title: 'Weight and balance',
  peopleAndGear: 'People and gear',
  people: (n: number) => `${n} ${n === 1 ? 'person' : 'people'}`,
  counted: 'Counts for the plate',
  ofPlate: (mass: string) => `the plate allows ${mass}`,
  overPlate: (mass: string) => `${mass} too much`,
  plateSilent: 'the plate is not read yet',
  plateNoLoad: 'the plate gives no load',
  noPlate: 'this boat has no plate',
  tooMany: (persons: number) => `the plate allows ${persons} ${persons === 1 ? 'person' : 'people'}`,
  allUp: 'Boat and all in it',
  allUpNote: (level: string) => `with ${level}`,
  tankAt: (share: string) => `the tank ${share} full`,
  tankUnknown: 'the tank taken as half full: nobody said',
  along: 'Centre of gravity',
  alongNote: (distance: string) => `${distance} from the stern`,
  alongShare: (share: string) => `${share} of the wetted length`,
  alongWords: {
    good: 'good',
    'little-aft': 'a little aft',
    aft: 'too far aft',
    'little-forward': 'a little forward',
    forward: 'too far forward',
  } as const,
  across: 'Sideways',
  onMiddle: 'on the middle line',
  acrossSide: (distance: string, starboard: boolean) => `${distance} to ${starboard ? 'starboard' : 'port'}`,
  acrossWords: { middle: 'good', good: 'good', little: 'a little off', off: 'too far off' } as const,
  unknown: (n: number) =>
    n === 1
      ? 'The place of one is not known: it counts where it does most harm.'
      : `The places of ${n} are not known: they count where they do most harm.`,
});

/** "Skipper" or "Adult", for buttons and labels. */
export function whoIs({ name, kind }: { name?: string | undefined; kind: Kind }): string {
  return dataName(name?.trim() ?? '') || deckWords.kinds[kind];
}

export const spotWords = spoken('spotWords', {
  along: (distance: string, forward: boolean) => `${distance} ${forward ? 'forward' : 'behind the stern'}`,
  middle: 'in the middle',
  across: (distance: string, starboard: boolean) => `${distance} to ${starboard ? 'starboard' : 'port'}`,
  piece: (text: string, number: number, count: number) => `${text}; piece ${number} of ${count}`,
});

/** "1.20 m forward, 0.35 m to port". */
export function spotText({ x, y }: { x: number; y: number }, m: Measures): string {
  const along = spotWords.along(m.show('length', Math.abs(x)), x >= 0);
  const across = Math.abs(y) < 0.005 ? spotWords.middle : spotWords.across(m.show('length', Math.abs(y)), y > 0);
  return `${along}, ${across}`;
}

/** "Skipper 85 kg, Helm, starboard aft; piece 1 of 6". */
export function pieceName(
  parts: { who: string; mass: string; place: string; notes: readonly string[] },
  index: number,
  count: number,
): string {
  const text = [`${parts.who} ${parts.mass}`, parts.place, ...parts.notes].join(', ');
  return spotWords.piece(text, index + 1, count);
}
