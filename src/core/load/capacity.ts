import { fullness } from '../craft/plan-form.ts';
import type { Craft } from '../craft/shapes.ts';
import { PETROL_DENSITY } from '../units/constants.ts';
import { HORSEPOWER } from '../units/convert.ts';
import { balance, type LoadBalance } from './balance.ts';
import { type FloatBody, floatBody } from './float-body.ts';
import { heaviestAtFreeboard, sideTestMass, spareOnOneSide } from './float-limit.ts';
import { LEAST_FREEBOARD, TUBES_USED } from './float-margins.ts';
import type { FloatAsked } from './float-of.ts';
import { isoLoad, isoTankContents } from './iso14946.ts';
import { lengthWidthCovers, lengthWidthPersons } from './length-width.ts';
import { liferaftPersons, liferaftSanityCovers } from './liferaft-sanity.ts';
import type { Load } from './shapes.ts';
import { sidewards } from './sidewards.ts';
import { usMaxLoad, usMaxPower, usPersons, usPersonsMass, usPersonsMassOutboard, usRuleCovers } from './us-capacity.ts';
import { weightOf } from './weight-of.ts';

export type RuleName =
  | 'plate'
  | 'us-weight'
  | 'us-persons'
  | 'us-power'
  | 'length-width'
  | 'iso-14946'
  | 'iso-6185'
  | 'liferaft'
  | 'tubes'
  | 'freeboard'
  | 'one-side';

/** What one rule allows, against what is there now. Masses kg, power W. */
export interface CapacityRule {
  readonly rule: RuleName;
  /** `limit` counts; `comparison` is shown beside; `not-covered` the rule is for other boats; `lacks` a figure is missing. */
  readonly standing: 'limit' | 'comparison' | 'not-covered' | 'lacks';
  readonly load?: Held;
  readonly persons?: Held;
  readonly power?: Held;
  readonly engineMass?: Held;
  /** How much more it lets come aboard, kg; negative: to be left ashore. */
  readonly spare?: number;
}

export interface Held {
  readonly allowed: number;
  readonly now: number;
}

export interface Capacity {
  readonly rules: readonly CapacityRule[];
  /** The limit that leaves least; undefined: nothing known limits the load. */
  readonly leading: CapacityRule | undefined;
  /** kg that may still come aboard by it; undefined: not known. */
  readonly spare: number | undefined;
  /** Seats and places at the helm, and persons aboard. */
  readonly seats: Held;
}

/**
 * What a boat may carry: the builder's plate first; without one the published rules that cover its form, the smallest
 * leading; and always what its own record says of floating. A rule never lifts what the plate allows. Where the plate
 * was not read nothing leads: what it says may be less than any estimate.
 */
export function capacityOf(craft: Craft, load: Load, asked: FloatAsked): Capacity {
  const now = balance(craft, load, asked.storeMass);
  const body = floatBody(craft.hull);
  const known = typeof body === 'string' ? undefined : body;
  const rules: readonly CapacityRule[] = [
    plateRule(craft, now),
    ...usRules(craft, load, now, known, asked),
    lengthWidth(craft, load, now),
    iso14946(craft, load, now),
    { rule: 'iso-6185', standing: craft.hull.tube ? 'lacks' : 'not-covered' },
    liferaft(craft, now),
    ...floatRules(craft, load, now, known, asked),
  ];
  const unread =
    craft.hull.plate === undefined || (craft.hull.plate !== 'none' && craft.hull.plate.maxLoad === undefined);
  const limits = rules.filter(({ standing, spare }) => standing === 'limit' && spare !== undefined);
  const trusted = limits.some(({ rule }) => rule !== 'length-width');
  const leading = unread || !trusted ? undefined : limits.reduce((a, b) => (b.spare! < a.spare! ? b : a));
  const seats = craft.hull.stations.filter(({ use }) => use === 'seat' || use === 'helm').length;
  return { rules, leading, spare: leading?.spare, seats: { allowed: seats, now: now.persons } };
}

function plateRule({ hull, drive }: Craft, now: LoadBalance): CapacityRule {
  const { plate } = hull;
  if (plate === undefined || plate === 'none') return { rule: 'plate', standing: 'lacks' };
  const { maxLoad, persons, maxPower, maxEngineMass } = plate;
  return {
    rule: 'plate',
    standing: maxLoad === undefined ? 'lacks' : 'limit',
    ...(maxLoad !== undefined && { load: { allowed: maxLoad, now: now.counted }, spare: maxLoad - now.counted }),
    ...(persons !== undefined && { persons: { allowed: persons, now: now.persons } }),
    ...(maxPower !== undefined && { power: { allowed: maxPower, now: drive.ratedPower } }),
    ...(maxEngineMass !== undefined && { engineMass: { allowed: maxEngineMass, now: drive.mass } }),
  };
}

/** A published rule counts only where the boat carries no plate; beside a plate it is a comparison. */
function standingOf({ hull }: Craft): 'limit' | 'comparison' {
  return hull.plate === 'none' ? 'limit' : 'comparison';
}

function usRules(
  craft: Craft,
  load: Load,
  now: LoadBalance,
  body: FloatBody | undefined,
  { density, storeMass }: FloatAsked,
): CapacityRule[] {
  const { hull, drive, store } = craft;
  if (!usRuleCovers(hull.form, hull.length)) {
    return [
      { rule: 'us-weight', standing: 'not-covered' },
      { rule: 'us-persons', standing: 'not-covered' },
      { rule: 'us-power', standing: 'not-covered' },
    ];
  }
  const standing = standingOf(craft);
  const stern = hull.form === 'inflatable-catamaran' ? 1 : fullness(hull.form, 0);
  const { maxPower } = usMaxPower({
    length: hull.length,
    transomWidth: hull.beam * stern,
    // The record says nothing of remote steering; without it the rule is the stricter.
    remoteSteering: false,
    transomHeight: hull.transomHeight ?? 0,
    flatBottomHardChine: hull.form === 'rigid-flat',
  });
  const power: CapacityRule = { rule: 'us-power', standing, power: { allowed: maxPower, now: drive.ratedPower } };
  if (!body) return [{ rule: 'us-weight', standing: 'lacks' }, { rule: 'us-persons', standing: 'lacks' }, power];
  const small = drive.ratedPower <= 2 * HORSEPOWER;
  const maxLoad = usMaxLoad(body.volume * density, hull.mass, small ? '2hp-or-less' : 'outboard');
  const tank = store.kind === 'tank' ? store.tanks : [];
  const battery = store.kind === 'battery' ? store.batteries : [];
  const holders = [...tank.map(({ emptyMass }) => emptyMass), ...battery.map(({ mass }) => mass)];
  const machinery = drive.mass + holders.reduce((sum, mass) => sum + mass, 0);
  const counted = now.peopleAndGear + machinery + storeMass;
  const fuel = tank.reduce((sum, { capacityL, fixed }) => sum + (fixed ? 0 : capacityL * PETROL_DENSITY), 0);
  const mid = { x: hull.wettedLength / 2, z: 0.4 };
  const sideMass = sideTestMass(body, { mass: hull.mass + machinery, y: 0, ...mid }, density);
  const personsMass = small
    ? usPersonsMass(maxLoad, '2hp-or-less')
    : usPersonsMassOutboard({ maxLoad, motorMass: machinery + fuel, sideMass })!;
  const people = peopleMass(load);
  return [
    { rule: 'us-weight', standing, load: { allowed: maxLoad, now: counted }, spare: maxLoad - counted },
    {
      rule: 'us-persons',
      standing,
      load: { allowed: personsMass, now: people },
      persons: { allowed: usPersons(personsMass), now: now.persons },
      spare: personsMass - people,
    },
    power,
  ];
}

function lengthWidth(craft: Craft, load: Load, now: LoadBalance): CapacityRule {
  const { hull } = craft;
  if (!lengthWidthCovers(hull.form, hull.length)) return { rule: 'length-width', standing: 'not-covered' };
  const { persons, mass } = lengthWidthPersons(hull.length, hull.beam);
  const people = peopleMass(load);
  return {
    rule: 'length-width',
    standing: standingOf(craft),
    load: { allowed: mass, now: people },
    persons: { allowed: persons, now: now.persons },
    spare: mass - people,
  };
}

/** How the standard itself would count this crew against the plate; no limit of its own. */
function iso14946({ hull, store }: Craft, load: Load, now: LoadBalance): CapacityRule {
  const adults = load.items.filter(({ kind }) => kind === 'adult').length;
  const children = load.items.filter(({ kind }) => kind === 'child').length;
  const gear = now.peopleAndGear - peopleMass(load);
  const portable = store.kind === 'tank' ? store.tanks.filter(({ fixed }) => !fixed) : [];
  const liquids = portable.reduce((sum, { capacityL, emptyMass }) => {
    return sum + emptyMass + isoTankContents(capacityL, PETROL_DENSITY);
  }, 0);
  const counted = isoLoad(adults, children, gear + liquids);
  const plate = hull.plate && hull.plate !== 'none' ? hull.plate.maxLoad : undefined;
  if (plate === undefined) return { rule: 'iso-14946', standing: 'lacks' };
  return { rule: 'iso-14946', standing: 'comparison', load: { allowed: plate, now: counted } };
}

function liferaft({ hull }: Craft, now: LoadBalance): CapacityRule {
  if (!liferaftSanityCovers(hull.form, hull.length)) return { rule: 'liferaft', standing: 'not-covered' };
  const { tube } = hull;
  if (!tube) return { rule: 'liferaft', standing: 'lacks' };
  const volume = 2 * Math.PI * (tube.diameter / 2) ** 2 * tube.length;
  const floor = Math.max(tube.spacing - tube.diameter, 0) * hull.wettedLength;
  const { persons } = liferaftPersons(volume, floor);
  return { rule: 'liferaft', standing: 'comparison', persons: { allowed: persons, now: now.persons } };
}

function floatRules(
  craft: Craft,
  load: Load,
  now: LoadBalance,
  body: FloatBody | undefined,
  { density }: FloatAsked,
): CapacityRule[] {
  if (!body) return [{ rule: 'freeboard', standing: 'lacks' }];
  const weight = weightOf(now);
  const mass = now.allUpMass;
  const low = heaviestAtFreeboard(body, weight, density, LEAST_FREEBOARD);
  const rules: CapacityRule[] = [
    { rule: 'freeboard', standing: 'limit', load: { allowed: low, now: mass }, spare: low - mass },
  ];
  if (body.tubeVolume === 0) return rules;
  const tubes = TUBES_USED * body.tubeVolume * density;
  rules.push({ rule: 'tubes', standing: 'limit', load: { allowed: tubes, now: mass }, spare: tubes - mass });
  const spare = spareOnOneSide(body, weight, density, sidewards(craft, load, now));
  rules.push({ rule: 'one-side', standing: 'limit', load: { allowed: mass + spare, now: mass }, spare });
  return rules;
}

function peopleMass({ items }: Load): number {
  return items.reduce((sum, { kind, mass }) => sum + (kind === 'adult' || kind === 'child' ? mass : 0), 0);
}
