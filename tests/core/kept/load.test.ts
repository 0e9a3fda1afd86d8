import { ends, fullness, inflatable, tubeDiameter } from '../../../src/core/craft/plan-form.ts';
import type { Craft, Hull, HullForm } from '../../../src/core/craft/shapes.ts';
import { hulls } from '../../../src/core/files/catalogue.ts';
import { balance, balanceAt, balanceBase } from '../../../src/core/load/balance.ts';
import { capacityOf } from '../../../src/core/load/capacity.ts';
import { crowdedTo } from '../../../src/core/load/crowded.ts';
import { equilibrium } from '../../../src/core/load/equilibrium.ts';
import { floatBody, tubesAlone } from '../../../src/core/load/float-body.ts';
import { heaviestAtFreeboard, sideTestMass, spareOnOneSide } from '../../../src/core/load/float-limit.ts';
import { floatOf } from '../../../src/core/load/float-of.ts';
import { helmReaches } from '../../../src/core/load/helm-reach.ts';
import { iso14946Covers, isoCrewMass, isoLoad, isoTankContents } from '../../../src/core/load/iso14946.ts';
import { lengthWidthCovers, lengthWidthPersons } from '../../../src/core/load/length-width.ts';
import { liferaftPersons, liferaftSanityCovers } from '../../../src/core/load/liferaft-sanity.ts';
import { mayBeAt, placed } from '../../../src/core/load/placing.ts';
import { categoryCovers, categoryLimits, plateFindings } from '../../../src/core/load/plate.ts';
import { shaftFit } from '../../../src/core/load/shaft-fit.ts';
import type { Load } from '../../../src/core/load/shapes.ts';
import { sidewards } from '../../../src/core/load/sidewards.ts';
import { tubesAtRest, tubesCover, tubesHeeled, tubesTrimmed } from '../../../src/core/load/tube-hydrostatics.ts';
import {
  usMaxLoad,
  usMaxPower,
  usPersons,
  usPersonsMass,
  usPersonsMassBySide,
  usPersonsMassOutboard,
  usRuleCovers,
} from '../../../src/core/load/us-capacity.ts';
import { weightOf } from '../../../src/core/load/weight-of.ts';
import { digest } from './digest.ts';
import { keeping } from './keeping.ts';
import { craft, crew, two } from './made-trips.ts';

const plateless = (hull: string, engine: string, store: string): Craft => craft(hull, engine, store, 'none');

const crafts: Readonly<Record<string, Craft>> = {
  catamaran: craft('catamaran-3-6', 'petrol-15hp-4s', 'tank-12-can-5'),
  'catamaran without a plate': plateless('catamaran-2-9', 'petrol-6hp-4s', 'tank-built-in-1-1'),
  rib: plateless('rib-3-4', 'petrol-20hp-4s', 'tank-25-25'),
  'large rib': craft('rib-4-7', 'petrol-40hp-4s', 'tank-25', {
    scheme: 'us',
    maxLoad: 600,
    persons: 5,
    maxPower: 25000,
    maxEngineMass: 90,
  }),
  'flat floor': plateless('flat-floor-2-7', 'electric-1-1kw', 'battery-1-3-lfp'),
  'v bottom': plateless('rigid-v-4-2', 'petrol-30hp-2s', 'tank-25'),
  'flat bottom': plateless('rigid-flat-3-8', 'petrol-2-5hp-4s', 'tank-12'),
  launch: plateless('launch-4-9', 'electric-2-2kw', 'battery-agm-100-100'),
  'launch, plate unread': craft('launch-4-9', 'petrol-4hp-4s', 'tank-12', undefined),
};

const loads: Readonly<Record<string, Load>> = {
  two: crew(two),
  'all to starboard': crew([
    ['adult', 95, 'helm'],
    ['adult', 90, 'seat-aft-starboard'],
    ['child', 30, 'seat-fore-starboard'],
    ['gear', 25, 'gear-aft'],
  ]),
  'far too many': crew(
    Array.from(
      { length: 9 },
      (_, i) => ['adult', 80 + i, ['helm', 'seat-aft-port', 'seat-mid', 'bow-tube'][i % 4]!] as const,
    ),
  ),
  'seats unknown': crew([
    ['adult', 80],
    ['dog', 20],
    ['child', 25],
    ['gear', 12],
  ]),
  nobody: { items: [] },
};

function about(one: Craft, load: Load): unknown {
  const storeMass = one.store.kind === 'tank' ? 11 : 0;
  const now = balance(one, load, storeMass);
  const body = floatBody(one.hull);
  const density = 1025;
  const sides = sidewards(one, load, now);
  const float = floatOf(one, load, { storeMass, density });
  return {
    now,
    capacity: capacityOf(one, load, { storeMass, density }),
    sides,
    rest: typeof float === 'string' ? float : float.rest.state,
    plate: plateFindings(one, now),
    ...(digest({ float, later: balanceAt(balanceBase(one, load), 4), placed: placed(one.hull, load) }) as object),
    ...(typeof body !== 'string' && {
      crowded: crowdedTo(body, weightOf(now), 1000, { mass: sides.people, rest: sides.rest }),
      spare: spareOnOneSide(body, weightOf(now), density, sides),
      atFreeboard: heaviestAtFreeboard(body, weightOf(now), density, 0.1),
    }),
  };
}

const tubes = { diameter: 0.42, spacing: 1.2, length: 3 };
const afloat = (mass: number) => ({ mass, centreHeight: 0.5, density: 1025 });
const forms: readonly HullForm[] = [
  'inflatable-catamaran',
  'rib',
  'flat-floor-inflatable',
  'rigid-v',
  'rigid-flat',
  'displacement',
];

/** A body tilted by a weight off its middle. */
function tilted(hull: Hull, mass: number, x: number, y: number): unknown {
  const body = floatBody(hull);
  if (typeof body === 'string') return body;
  const weight = { mass, x, y, z: 0.45 };
  return [
    equilibrium(body, weight, 1025),
    equilibrium(tubesAlone(body), weight, 1025),
    equilibrium(tubesAlone(body, 'port-aft'), weight, 1000),
  ];
}

keeping('load', {
  ...Object.fromEntries(
    Object.entries(crafts).flatMap(([of, one]) =>
      Object.entries(loads)
        .filter((_, i) => of === 'catamaran' || of === 'v bottom' || i < 2)
        .map(([name, load]) => [`${of}, ${name}`, () => about(one, load)] as const),
    ),
  ),
  'bodies of all hulls': () =>
    hulls.map(({ hull }) => {
      const body = floatBody(hull);
      if (typeof body === 'string') return body;
      const { slices, edges, middle, side, tubeVolume, volume } = body;
      return {
        slices: slices.length,
        thickness: slices.map(({ thickness }) => thickness),
        x: slices.map((slice) => slice.x),
        rings: slices.flatMap(({ ring, round }) => (ring ? [...ring] : round ? [round.radius] : [])),
        edges: edges.length,
        middle,
        side,
        tubeVolume,
        volume,
        sideTest: sideTestMass(body, { mass: hull.mass, ...hull.centre, z: hull.centre.z ?? 0.4 }, 1025),
      };
    }),
  'thin tubes, and tubes close together': () => {
    const { catamaran } = crafts;
    const capacity = (tube: { readonly diameter: number; readonly spacing: number; readonly length: number }) =>
      capacityOf({ ...catamaran!, hull: { ...catamaran!.hull, tube } }, loads.two!, { storeMass: 5, density: 1025 })
        .rules;
    return [
      capacity({ diameter: 0.28, spacing: 1.7, length: 3.1 }),
      capacity({ diameter: 0.5, spacing: 0.45, length: 3 }),
      capacity({ diameter: 0.36, spacing: 1.3, length: 2.9 }),
    ];
  },
  'bodies that lack a figure': () => {
    const { hull } = crafts['v bottom']!;
    const { hull: cat } = crafts.catamaran!;
    return [
      floatBody({ ...hull, transomHeight: undefined }),
      floatBody({ ...cat, tube: undefined }),
      floatBody({ ...cat, transomHeight: undefined }),
    ].map((body) => (typeof body === 'string' ? body : body.volume));
  },
  'tilted every way': () =>
    [crafts.catamaran!, crafts['v bottom']!, crafts.rib!].map(({ hull }) => [
      tilted(hull, 320, 1.4, 0),
      tilted(hull, 320, 0.8, 0.25),
      tilted(hull, 260, 2.2, -0.3),
      tilted(hull, 900, 1.2, 0.1),
      tilted(hull, 250, 1.2, 0.9),
      tilted(hull, 250, -0.5, 0),
    ]),
  'twin tubes': () => [
    tubesAtRest(tubes, afloat(280)),
    tubesAtRest(tubes, afloat(1200)),
    tubesHeeled(tubes, afloat(280), 300),
    tubesHeeled(tubes, afloat(280), 2500),
    tubesTrimmed(tubes, afloat(280), 200),
    tubesTrimmed(tubes, afloat(280), -150),
    tubesTrimmed(tubes, afloat(1200), 200),
    forms.map((form) => tubesCover(form, 3)),
  ],
  'rules for other boats': () => [
    forms.map((form) => [
      usRuleCovers(form, 5),
      usRuleCovers(form, 6.2),
      lengthWidthCovers(form, 5),
      lengthWidthCovers(form, 6.1),
      liferaftSanityCovers(form, 3),
      iso14946Covers(form, 3),
      inflatable(form),
    ]),
    (['outboard', '2hp-or-less', 'manual'] as const).map((rating) => [
      usMaxLoad(1400, 300, rating),
      usMaxLoad(200, 300, rating),
    ]),
    [
      usPersonsMassOutboard({ maxLoad: 300, motorMass: 60 }),
      usPersonsMassOutboard({ maxLoad: 300, motorMass: 60, sideMass: 120 }),
      usPersonsMassOutboard({ maxLoad: 30, motorMass: 60 }),
    ],
    [
      usPersonsMassBySide(100),
      usPersonsMass(300, 'manual'),
      usPersonsMass(300, '2hp-or-less'),
      usPersons(240),
      usPersons(0),
      usPersons(400),
    ],
    [2.5, 3, 3.3, 3.6, 3.9, 4.3, 5.5].flatMap((length) =>
      [true, false].flatMap((flag) =>
        [0.38, 0.51].map((transomHeight) =>
          usMaxPower({ length, transomWidth: 1.3, remoteSteering: flag, transomHeight, flatBottomHardChine: !flag }),
        ),
      ),
    ),
    [lengthWidthPersons(4.2, 1.7), lengthWidthPersons(3, 1.5), liferaftPersons(0.9, 2.4), liferaftPersons(0.3, 2.4)],
    [isoCrewMass(3, 1), isoLoad(3, 1, 40), isoTankContents(25, 745)],
    (['A', 'B', 'C', 'D'] as const).map(categoryLimits),
    [2.4, 2.5, 24, 25].map(categoryCovers),
  ],
  'shafts and transoms': () =>
    (['short', 'long', 'extra-long', undefined] as const).flatMap((shaft) =>
      [0.33, 0.41, 0.5, 0.6, undefined].map((transomHeight) =>
        shaftFit({
          ...crafts.rib!,
          hull: { ...crafts.rib!.hull, transomHeight },
          drive: { ...crafts.rib!.drive, shaft },
        }),
      ),
    ),
  'who may be where, and whom the helm reaches': () =>
    hulls.map(({ hull }) => [
      (['adult', 'dog'] as const).map((kind) => mayBeAt(hull.stations, kind).length),
      mayBeAt(
        hull.stations.filter(({ use }) => use === 'store' || use === 'bow-tube'),
        'child',
      ).length,
      hull.stations.map((place) => helmReaches(hull, place)),
      helmReaches({ ...hull, stations: hull.stations.filter(({ use }) => use !== 'helm') }, { x: 1, y: 0.2 }),
    ]),
  'outlines from above': () =>
    hulls.map(({ hull }) => [
      tubeDiameter(hull),
      ends(hull),
      [0, 0.2, 0.5, 0.8, 1].map((along) =>
        hull.form.startsWith('inflatable-c') ? 0 : fullness(hull.form as Parameters<typeof fullness>[0], along),
      ),
    ]),
});
