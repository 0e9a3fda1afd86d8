import type { Craft, Plate } from '../../core/craft/shapes.ts';
import type { LoadBalance } from '../../core/load/balance.ts';
import type { Load } from '../../core/load/shapes.ts';
import type { Measures } from '../units/measures.ts';
import { totalWords as words } from '../words/en-deck.ts';
import { across, along } from './good-balance.ts';
import { levelOf } from './pieces.ts';

/** One line of what the load amounts to. */
export interface Total {
  readonly name: 'people' | 'counted' | 'all-up' | 'along' | 'across';
  readonly term: string;
  readonly figure: string;
  readonly notes: readonly string[];
  /** `doubt`: off, or not known; `over`: a limit is broken or the boat badly out of balance. */
  readonly tone: 'good' | 'plain' | 'doubt' | 'over';
}

/** Weight and balance in words, for the boat as it leaves. */
export function totals({ hull, store }: Craft, load: Load, balance: LoadBalance, m: Measures): Total[] {
  const mass = (kg: number) => m.show('mass', kg);
  const limits = hull.plate === 'none' ? undefined : hull.plate;
  const crowded = limits?.persons !== undefined && balance.persons > limits.persons;
  const lengthwise = along(balance, hull);
  const sideways = across(balance, hull);
  return [
    {
      name: 'people',
      term: words.peopleAndGear,
      figure: mass(balance.peopleAndGear),
      notes: [
        words.people(balance.persons) +
          (crowded && limits?.persons !== undefined ? `, ${words.tooMany(limits.persons)}` : ''),
      ],
      tone: crowded ? 'over' : 'plain',
    },
    {
      name: 'counted',
      term: words.counted,
      figure: mass(balance.counted),
      ...plateNote(hull.plate, balance.counted, mass),
    },
    {
      name: 'all-up',
      term: words.allUp,
      figure: mass(balance.allUpMass),
      notes:
        store.kind === 'battery'
          ? []
          : [
              load.fill === undefined
                ? words.tankUnknown
                : words.allUpNote(words.tankAt(m.show('share', levelOf(store, load)))),
            ],
      tone: 'plain',
    },
    {
      name: 'along',
      term: words.along,
      figure: words.alongWords[lengthwise],
      notes: [words.alongShare(m.show('share', balance.lcgShare)), words.alongNote(m.show('length', balance.lcg))],
      tone: lengthwise === 'good' ? 'good' : lengthwise === 'aft' || lengthwise === 'forward' ? 'over' : 'doubt',
    },
    {
      name: 'across',
      term: words.across,
      figure: words.acrossWords[sideways],
      notes: [
        sideways === 'middle'
          ? words.onMiddle
          : words.acrossSide(m.show('length', Math.abs(balance.lateral)), balance.lateral > 0),
      ],
      tone: sideways === 'off' ? 'over' : sideways === 'little' ? 'doubt' : 'good',
    },
  ];
}

function plateNote(
  plate: Plate | 'none' | undefined,
  counted: number,
  mass: (kg: number) => string,
): Pick<Total, 'notes' | 'tone'> {
  if (plate === undefined) return { notes: [words.plateSilent], tone: 'doubt' };
  if (plate === 'none') return { notes: [words.noPlate], tone: 'doubt' };
  if (plate.maxLoad === undefined) return { notes: [words.plateNoLoad], tone: 'doubt' };
  const over = counted - plate.maxLoad;
  // A unit conversion may leave a crumb; it is no overload.
  if (over > 1e-9 * plate.maxLoad)
    return { notes: [words.ofPlate(mass(plate.maxLoad)), words.overPlate(mass(over))], tone: 'over' };
  return { notes: [words.ofPlate(mass(plate.maxLoad))], tone: 'plain' };
}
