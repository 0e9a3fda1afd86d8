import { setUp } from '../../core/compare/loaded.ts';
import { boatOf } from '../../core/curve/boat.ts';
import { curve } from '../../core/curve/curve.ts';
import { steady } from '../../core/curve/steady.ts';
import { balance } from '../../core/load/balance.ts';
import type { Capacity, CapacityRule } from '../../core/load/capacity.ts';
import { categoryCovers, categoryLimits } from '../../core/load/plate.ts';
import { type ShaftFit, shaftFit } from '../../core/load/shaft-fit.ts';
import type { Trip } from '../../core/trip/shapes.ts';
import { beaufortOf } from '../../core/water/beaufort.ts';
import type { Measures } from '../units/measures.ts';
import { commonWords } from '../words/en-common.ts';
import { capacityWords as words } from '../words/en-load.ts';

export interface CapacityRow {
  readonly name: string;
  readonly source: string;
  readonly allows: string;
  readonly now: string;
  readonly spare: string;
  readonly tone: 'leads' | 'over' | 'plain' | 'aside';
}

/** The answer in one sentence. */
export function capacityAnswer({ leading, spare, rules }: Capacity, m: Measures): string {
  if (leading && spare !== undefined) {
    const rule = commonWords.within(words.names[leading.rule]);
    return spare < 0
      ? words.verdictOver(m.show('mass', -spare), rule)
      : words.verdictSpare(m.show('mass', spare), rule);
  }
  const plateless = rules.some(({ rule, standing }) => rule === 'iso-14946' && standing === 'lacks');
  return plateless && rules.every(({ standing }) => standing !== 'limit') ? words.unknown : words.unread;
}

/** Rules side by side: those that count first, then comparisons; those that do not cover the boat stand apart. */
export function capacityRows({ rules, leading }: Capacity, m: Measures): readonly CapacityRow[] {
  const order = { limit: 0, comparison: 1, lacks: 2, 'not-covered': 3 } as const;
  return rules
    .filter(({ standing }) => standing !== 'not-covered')
    .sort((a, b) => order[a.standing] - order[b.standing])
    .map((rule) => rowOf(rule, rule === leading, m));
}

/** "US weight capacity (33 CFR 183.35); ...", of the rules that are for other boats. */
export function notCovering({ rules }: Capacity): string {
  const others = rules.filter(({ standing }) => standing === 'not-covered');
  if (others.length === 0) return '';
  const names = others.map(({ rule }) => `${words.names[rule]} (${words.sources[rule]})`).join('; ');
  const monohull = others.some(({ rule }) => rule === 'us-weight' || rule === 'length-width');
  return `${words.notCoveredLead} ${names}. ${monohull ? words.notCoveredWhy : words.notCoveredTubes}`;
}

function rowOf(rule: CapacityRule, leads: boolean, m: Measures): CapacityRow {
  const { standing, load, persons, power, spare } = rule;
  const over = standing === 'limit' && ((spare ?? 0) < 0 || (persons !== undefined && persons.now > persons.allowed));
  const pair = (of: 'allowed' | 'now') =>
    [
      load && m.show('mass', load[of]),
      persons && words.persons(persons[of]),
      rule.rule === 'us-power' && power && m.show('power', power[of]),
    ]
      .filter(Boolean)
      .join(', ');
  const aside =
    standing === 'not-covered'
      ? words.notCovered
      : standing === 'comparison'
        ? words.comparison
        : standing === 'lacks'
          ? rule.rule === 'plate'
            ? words.lacks.plate
            : rule.rule === 'iso-6185'
              ? ''
              : words.lacks.other
          : '';
  return {
    name: words.names[rule.rule],
    source: words.sources[rule.rule],
    allows: pair('allowed') || aside,
    now: pair('now'),
    spare: standing === 'limit' && spare !== undefined ? m.show('mass', spare) : pair('allowed') ? aside : '',
    tone: over ? 'over' : leads ? 'leads' : standing === 'limit' ? 'plain' : 'aside',
  };
}

/** Engine, shaft, seats and category against boat, plate and forecast: name, words, and whether a limit is broken. */
export function fitRows(
  trip: Trip,
  capacity: Capacity,
  speed: number,
  m: Measures,
): readonly (readonly [string, string, boolean])[] {
  const { drive } = trip.craft;
  const plate = capacity.rules.find(({ rule }) => rule === 'plate');
  const held = (measure: 'power' | 'mass', now: number, limit: { allowed: number } | undefined) => {
    const shown = m.show(measure, now);
    if (!limit) return [words.plateSilent(shown), false] as const;
    const over = now > limit.allowed * (1 + 1e-9);
    return [(over ? words.overBy : words.against)(shown, m.show(measure, limit.allowed)), over] as const;
  };
  const [power, overPower] = held('power', drive.ratedPower, plate?.power);
  const [mass, overMass] = held('mass', drive.mass, plate?.engineMass);
  const { seats } = capacity;
  const fit = shaftFit(trip.craft);
  return [
    [words.power, power, overPower],
    [words.engineMass, mass, overMass],
    [words.shaft, shaftText(trip, fit, speed, m), fit !== undefined && fit.fit !== 'fits'],
    [words.people, words.seats(seats.now, seats.allowed), seats.now > seats.allowed],
    categoryRow(trip, m),
  ];
}

function shaftText(trip: Trip, fit: ShaftFit | undefined, speed: number, m: Measures): string {
  if (!fit) return words.shaftUnknown;
  const gap = m.show('length', Math.abs(fit.below));
  if (fit.fit === 'too-short') return words.tooShort(gap);
  return fit.fit === 'fits' ? words.fits(gap) : words.tooLong(gap, dragCost(trip, speed, m));
}

/** Top speed and consumption with the leg as deep as it hangs, against one that fits. */
function dragCost({ craft, load, conditions }: Trip, speed: number, m: Measures): string {
  const setting = { water: conditions.water, batteryTemperatureC: conditions.batteryTemperatureC ?? 10 };
  const deep = setUp(craft, setting);
  const fits = boatOf(craft, setting.water, setting.batteryTemperatureC);
  const now = balance(craft, load, 0);
  const afloat = { mass: now.allUpMass, lcg: now.lcg, airArea: now.airArea };
  const lost = curve(fits, afloat, 1).topSpeed.median - curve(deep, afloat, 1).topSpeed.median;
  const more = steady(deep, afloat, speed).flow / steady(fits, afloat, speed).flow - 1;
  if (!(lost > 0.01) && !(more > 0.005)) return '';
  return words.dragCost(m.show('speed', Math.max(lost, 0)), m.show('share', Math.max(more, 0)));
}

function categoryRow({ craft, conditions }: Trip, m: Measures): readonly [string, string, boolean] {
  const { plate, length } = craft.hull;
  if (!categoryCovers(length)) return [words.category, words.categoryShort, false];
  const category = plate && plate !== 'none' ? plate.category : undefined;
  if (!category) return [words.category, words.categoryNone, false];
  const { maxBeaufort, maxWave } = categoryLimits(category);
  const wind = words.windTo(maxBeaufort);
  const wave = words.waveTo(Number.isFinite(maxWave) ? m.show('length', maxWave) : '');
  const speed = strongest(conditions);
  const height = waves(conditions);
  if (speed === undefined && height === undefined)
    return [words.category, words.categoryOpen(category, wind, wave), false];
  const over = beaufortOf(speed ?? 0) > maxBeaufort || (height ?? 0) > maxWave;
  return [words.category, (over ? words.categoryOver : words.categoryFits)(category, wind, wave), over];
}

/** Strongest wind that was given, m/s. */
function strongest({ wind }: Trip['conditions']): number | undefined {
  if (wind === undefined || wind === 'calm') return wind && 0;
  return 'speed' in wind ? wind.speed : Math.max(...wind.forecast.map(({ speed }) => speed));
}

/** Waves that were given, m; swell alone is the least of them. */
function waves({ sea }: Trip['conditions']): number | undefined {
  if (sea === undefined || sea === 'calm') return sea && 0;
  return 'height' in sea ? sea.height : sea.swell;
}
