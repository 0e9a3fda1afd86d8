import type { Craft } from '../../core/craft/shapes.ts';
import { craftFrom, engines, hulls, stores } from '../../core/files/catalogue.ts';
import { readFleet } from '../../core/files/fleet-file.ts';
import { readDraft } from '../../core/files/trip-schema.ts';
import { readWaters } from '../../core/files/waters-file.ts';
import { hireCraft } from '../../core/hire/hire-trip.ts';
import type { Fleet, HireBoat } from '../../core/hire/shapes.ts';
import type { WatersFile } from '../../core/route/shapes.ts';
import type { Trials } from '../../core/trials/shapes.ts';
import type { ReserveRule, Trip } from '../../core/trip/shapes.ts';
import type { Result } from '../../core/units/result.ts';
import { firstSetups } from '../load-table/setups.ts';
import { tileTemplate } from '../route-map/tile-template.ts';
import { parsePosition } from '../units/coordinates.ts';
import { givenWords as words } from '../words/en-given.ts';
import { problemAt } from '../words/en-problems.ts';
import type { HostProblem } from './host-problems.ts';

/** A boat of the page, ready for a trip. */
export interface HostBoat {
  readonly id: string;
  readonly name: string;
  readonly craft: Craft;
  /** m/s; absent: as the trip says. */
  readonly speed?: number;
  readonly trials?: Trials;
}

/** What a page wrote in attributes and inside the element, unread. */
export interface HostGiven {
  readonly units: string;
  readonly theme: string;
  readonly center: string;
  readonly zoom: number | undefined;
  readonly tiles: string;
  readonly forecastSource: string;
  readonly reserve: string;
  readonly boat: string;
  readonly fleet: string;
  readonly fleetFile: unknown;
  /** Text of a JSON script inside. */
  readonly inline: string;
  /** The boats of an element that knows no others, where the page brings no fleet. */
  readonly boats: readonly HireBoat[] | undefined;
}

/** The same, read; what could not be read is among the problems. */
export interface HostTaken {
  readonly problems: readonly HostProblem[];
  readonly boats: readonly HostBoat[];
  readonly fleet: Fleet | undefined;
  /** The boat asked for. */
  readonly boat: HostBoat | undefined;
  readonly reserve: ReserveRule | undefined;
  readonly trip: Trip | undefined;
  readonly waters: WatersFile | undefined;
}

const UNIT_SYSTEMS = ['nautical', 'metric', 'imperial'] as const;
const THEMES = ['light', 'dark'] as const;
const INLINE = ['trip', 'waters', 'fleet'];
/** Findings told of one file. */
const MOST = 3;

/** Reads what a page gave; `today` is an ISO date. Fetches nothing but the fleet file it names. */
export async function takeGiven(given: HostGiven, today: string): Promise<HostTaken> {
  const problems: HostProblem[] = [];
  const wrong = (attribute: string, message: string) => void problems.push({ attribute, message });
  simpleValues(given, wrong);
  const inline = inlineOf(given.inline, wrong);
  const fleet = await fleetOf(given, inline.fleet, today, wrong);
  const rule = reserveRule(given.reserve);
  if (given.reserve !== '' && !rule) wrong('reserve', words.reserve(given.reserve));
  const boats = (fleet?.boats ?? given.boats ?? []).map(hostBoat);
  return {
    problems,
    boats,
    fleet,
    boat: boatOf(given.boat, boats, given.boats ? [] : hulls, wrong),
    reserve: rule,
    trip: inline.trip === undefined ? undefined : read('script', readDraft(inline.trip), wrong),
    waters: inline.waters === undefined ? undefined : read('script', readWaters(inline.waters), wrong),
  };
}

type Wrong = (attribute: string, message: string) => void;

function simpleValues({ units, theme, center, zoom, tiles, forecastSource }: HostGiven, wrong: Wrong): void {
  const known = (list: readonly string[]) => list.join(', ');
  if (!UNIT_SYSTEMS.some((each) => each === units)) wrong('units', words.choices(units, known(UNIT_SYSTEMS)));
  if (theme !== '' && !THEMES.some((each) => each === theme)) wrong('theme', words.choices(theme, known(THEMES)));
  if (center !== '' && !parsePosition(center)) wrong('center', words.position(center));
  if (zoom !== undefined && !(zoom >= 2 && zoom <= 18)) wrong('zoom', words.zoom(String(zoom)));
  if (tiles !== '' && tiles !== 'none' && !tileTemplate(tiles)) wrong('tiles', words.tiles(tiles));
  const place = ['{lat}', '{lon}'].every((part) => forecastSource.includes(part));
  if (forecastSource !== '' && !place) wrong('forecast-source', words.forecast(forecastSource));
}

/** "thirds", "25 %" or "30 min". */
export function reserveRule(text: string): ReserveRule | undefined {
  if (text.trim() === 'thirds') return { kind: 'thirds' };
  const [, figure, unit] = /^\s*(\d+(?:\.\d+)?)\s*(%|min)\s*$/.exec(text) ?? [];
  const value = Number(figure);
  if (unit === '%' && value > 0 && value < 100) return { kind: 'share', share: value / 100 };
  if (unit === 'min' && value > 0 && value <= 24 * 60) return { kind: 'minutes', minutes: value };
  return undefined;
}

function inlineOf(text: string, wrong: Wrong): Readonly<Record<string, unknown>> {
  if (text.trim() === '') return {};
  try {
    const value: unknown = JSON.parse(text);
    if (typeof value !== 'object' || value === null || Array.isArray(value)) throw new Error('not an object { }');
    for (const name of Object.keys(value)) if (!INLINE.includes(name)) wrong('script', words.unknownPart(name));
    return value as Record<string, unknown>;
  } catch (error) {
    wrong('script', words.noJson(error instanceof Error ? error.message : String(error)));
    return {};
  }
}

async function fleetOf(given: HostGiven, inline: unknown, today: string, wrong: Wrong): Promise<Fleet | undefined> {
  let value = given.fleetFile ?? inline;
  if (value === undefined && given.fleet !== '') {
    try {
      value = await (await fetch(given.fleet)).json();
    } catch {
      wrong('fleet', words.noFile(given.fleet));
      return undefined;
    }
  }
  if (value === undefined) return undefined;
  const fleet = read('fleet', readFleet(value), wrong);
  if (!fleet || fleet.until >= today) return fleet;
  wrong('fleet', words.fleetPast(fleet.until));
  return undefined;
}

function hostBoat(boat: HireBoat): HostBoat {
  const craft = hireCraft(boat);
  const trials = boat.profile && { trials: boat.profile.trials };
  return { ...boat, craft: { ...craft, hull: { ...craft.hull, plate: boat.plate } }, ...trials };
}

/** A boat of the fleet; or a hull of the catalogue, with an engine and a store if they are named too. */
function boatOf(
  id: string,
  boats: readonly HostBoat[],
  shippedHulls: typeof hulls,
  wrong: Wrong,
): HostBoat | undefined {
  if (id === '') return undefined;
  const hired = boats.find((boat) => boat.id === id);
  if (hired) return hired;
  const [hullId, engineId, storeId] = id.split(/\s+/);
  const shipped = shippedHulls.find((each) => each.id === hullId);
  const named = engines.some((each) => each.id === engineId) && stores.some((each) => each.id === storeId);
  if (shipped && (named || !engineId)) {
    const { drive, store } = firstSetups(shipped.hull)[0]!;
    const craft = named ? craftFrom(shipped.id, engineId!, storeId!) : { hull: shipped.hull, drive, store };
    return { id, name: shipped.hull.name, craft };
  }
  const known = [...boats, ...shippedHulls].map((each) => each.id);
  wrong('boat', words.noBoat(id, known.join(', ')));
  return undefined;
}

function read<T>(attribute: string, result: Result<T>, wrong: Wrong): T | undefined {
  if (result.ok) return result.value;
  wrong(attribute, `${result.problems.slice(0, MOST).map(problemAt).join('. ')}.`);
  return undefined;
}
