import type { Craft } from '../craft/shapes.ts';
import { DEGREE } from '../units/convert.ts';
import { balance as balanceOf } from './balance.ts';
import { crowdedTo } from './crowded.ts';
import { equilibrium, type Floating, levelFor, stiffness, type Weight } from './equilibrium.ts';
import { type Chamber, type FloatBody, type FloatLacks, floatBody, tubesAlone } from './float-body.ts';
import { placed } from './placing.ts';
import type { Load } from './shapes.ts';
import { weightOf } from './weight-of.ts';

/** What a boat floats in and how much fuel it has aboard. */
export interface FloatAsked {
  /** Of fuel, kg. */
  readonly storeMass: number;
  /** Of the water, kg/m3. */
  readonly density: number;
}

/** How a loaded boat floats at rest. Lengths m, masses kg, angles degrees: bow up and starboard down are positive. */
export interface Float {
  readonly mass: number;
  readonly rest: Floating;
  /** Upright, above the centre of gravity; undefined where the boat does not float. */
  readonly metacentricHeight: number | undefined;
  readonly longitudinalMetacentricHeight: number | undefined;
  /** kg per m of sinkage. */
  readonly massPerMetre: number | undefined;
  /** By the metacentre alone, and by the large-angle balance; `heelDeg` is the larger, as it is shown. */
  readonly simpleHeelDeg: number | undefined;
  readonly exactHeelDeg: number | undefined;
  readonly heelDeg: number | undefined;
  /** What the boat carries with its edge just under, and how much of that is left. */
  readonly buoyancy: number;
  readonly reserve: number;
  /** Share of the tubes under water were they to carry everything; undefined without tubes. */
  readonly tubesUsed: number | undefined;
  /** Everybody on the worse side: half of them on the tube or at the gunwale, half inside it. */
  readonly crowded: Floating | undefined;
  /** The tubes alone with the worst of their chambers empty, two a side, and everybody gone to the far corner; undefined without tubes. */
  readonly chamberLost: ChamberLost | undefined;
  /** The tubes alone, the boat full of water; undefined without tubes: no record says what foam a rigid boat has. */
  readonly swamped: Swamped | undefined;
}

export interface ChamberLost {
  readonly chamber: Chamber;
  readonly floating: Floating;
  /** What the rest could still carry; below 0 it cannot carry what is aboard. */
  readonly margin: number;
}

export interface Swamped {
  readonly floating: Floating;
  readonly margin: number;
}

const CHAMBERS: readonly Chamber[] = ['port-aft', 'port-fore', 'starboard-aft', 'starboard-fore'];

/** How a craft floats with its load, or what its record lacks to tell. Open boats at rest in still water. */
export function floatOf(craft: Craft, load: Load, asked: FloatAsked): Float | FloatLacks {
  const body = floatBody(craft.hull);
  if (typeof body === 'string') return body;
  const now = balanceOf(craft, load, asked.storeMass);
  const weight = weightOf(now);
  const { density } = asked;
  const rest = equilibrium(body, weight, density);
  const upright = uprightStiffness(body, weight, density);
  const simple = upright && leanDeg(weight.y, upright.across);
  const exact = rest.state === 'afloat' ? rest.heelDeg : undefined;
  const buoyancy = body.volume * density;
  return {
    mass: weight.mass,
    rest,
    metacentricHeight: upright?.across,
    longitudinalMetacentricHeight: upright?.along,
    massPerMetre: upright && upright.waterplane * density,
    simpleHeelDeg: simple,
    exactHeelDeg: exact,
    heelDeg: simple === undefined || exact === undefined ? exact : Math.abs(simple) > Math.abs(exact) ? simple : exact,
    buoyancy,
    reserve: buoyancy - weight.mass,
    tubesUsed: body.tubeVolume > 0 ? weight.mass / (body.tubeVolume * density) : undefined,
    crowded: crowdedOf(craft, load, body, weight, density),
    chamberLost: body.tubeVolume > 0 ? chamberLost(craft, load, body, weight, density) : undefined,
    swamped: body.tubeVolume > 0 ? swamped(body, weight, density) : undefined,
  };
}

/** Stiffness of the boat upright, at the trim it takes there. */
function uprightStiffness(body: FloatBody, weight: Weight, density: number) {
  const standing = { ...weight, y: 0 };
  if (weight.mass / density >= body.volume) return undefined;
  const level = levelFor(body.slices, body.middle, weight.mass / density);
  const found = equilibrium(body, standing, density);
  const surface = found.state === 'afloat' ? { ...found.surface, heel: 0 } : ({ level, bowUp: 0, heel: 0 } as const);
  return stiffness(body.slices, body.middle, standing, surface);
}

/** tan(heel) = offset over metacentric height; a right angle where nothing rights the boat. */
function leanDeg(offset: number, metacentricHeight: number): number {
  if (offset === 0) return 0;
  return metacentricHeight > 0 ? Math.atan(offset / metacentricHeight) / DEGREE : Math.sign(offset) * 90;
}

/**
 * All persons crowded to one side, half of them on the tube (UK inland waters small passenger boat code, annex 8, with
 * their own masses); the side that leaves less.
 */
function crowdedOf({ hull }: Craft, load: Load, body: FloatBody, weight: Weight, density: number) {
  const people = peopleOf(hull, load);
  const mass = people.reduce((sum, person) => sum + person.mass, 0);
  if (mass === 0) return undefined;
  const rest = weight.y * weight.mass - people.reduce((sum, person) => sum + person.mass * person.place.y, 0);
  return crowdedTo(body, weight, density, { mass, rest });
}

/** Where people go from a chamber that has lost its air, shares of the wetted length (common practice, no source). */
const FAR_CORNER = { forward: 0.6, aft: 0.25 };

function chamberLost({ hull }: Craft, load: Load, body: FloatBody, weight: Weight, density: number): ChamberLost {
  const people = peopleOf(hull, load);
  const mass = people.reduce((sum, person) => sum + person.mass, 0);
  const x = weight.x * weight.mass - people.reduce((sum, person) => sum + person.mass * person.place.x, 0);
  const y = weight.y * weight.mass - people.reduce((sum, person) => sum + person.mass * person.place.y, 0);
  let worst: ChamberLost | undefined;
  for (const chamber of CHAMBERS) {
    const left = tubesAlone(body, chamber);
    const side = (chamber.startsWith('port') ? 1 : -1) * body.side.inner;
    const along = (chamber.endsWith('aft') ? FAR_CORNER.forward : FAR_CORNER.aft) * hull.wettedLength;
    const moved = { ...weight, x: (x + mass * along) / weight.mass, y: (y + mass * side) / weight.mass };
    const found = {
      chamber,
      floating: equilibrium(left, moved, density),
      margin: left.volume * density - weight.mass,
    };
    if (!worst || badness(found.floating) > badness(worst.floating)) worst = found;
  }
  return worst!;
}

function peopleOf(hull: Craft['hull'], load: Load) {
  return placed(hull, load).items.filter(({ kind }) => kind === 'adult' || kind === 'child');
}

function badness(floating: Floating): number {
  return floating.state === 'afloat' ? Math.abs(floating.heelDeg) + Math.abs(floating.trimDeg) : 1000;
}

function swamped(body: FloatBody, weight: Weight, density: number): Swamped {
  const tubes = tubesAlone(body);
  return { floating: equilibrium(tubes, weight, density), margin: tubes.volume * density - weight.mass };
}
