import havenFile from '../../../shared/waters/haven.geojson?raw';
import { chartDoubts } from '../../../src/core/route/chart-doubts.ts';
import { courseToSteer, findStream, trackMade } from '../../../src/core/route/current-triangle.ts';
import {
  chartable,
  compass,
  destination,
  interpolate,
  legBetween,
  lonBetween,
} from '../../../src/core/route/distance.ts';
import { edgeTree, visitEdges } from '../../../src/core/route/edge-tree.ts';
import { visitEdgesNear } from '../../../src/core/route/edges-near.ts';
import { firstShore } from '../../../src/core/route/first-shore.ts';
import { meetsLand } from '../../../src/core/route/in-sight.ts';
import { knownFetch, openToSea } from '../../../src/core/route/known-fetch.ts';
import { ringsOf } from '../../../src/core/route/rings-of.ts';
import { sailedLegs } from '../../../src/core/route/sailed-legs.ts';
import { inSeason } from '../../../src/core/route/season.ts';
import { selfCrossings } from '../../../src/core/route/self-crossings.ts';
import type { LatLon, Route, WatersFile } from '../../../src/core/route/shapes.ts';
import { splitLegs } from '../../../src/core/route/split-legs.ts';
import { streamPlaces } from '../../../src/core/route/stream-places.ts';
import {
  equalTimeAlong,
  equalTimePoint,
  lastReturnPoint,
  pointOfNoReturn,
  pointOfNoReturnByAmount,
} from '../../../src/core/route/turn-point.ts';
import { boundsOf, unfolded } from '../../../src/core/route/water-bounds.ts';
import { insideWaters, prepareWaters, zonesAlong } from '../../../src/core/route/waters.ts';
import { effectiveFetch, fetchAt, meanFetch } from '../../../src/core/route/wind-fetch.ts';
import { worstFetches } from '../../../src/core/route/worst-fetch.ts';
import { holds } from '../../../src/core/route/zone-meetings.ts';
import { zoneOverlaps } from '../../../src/core/route/zone-overlaps.ts';
import { haven, shipped } from '../../trips.ts';
import { box, circleWaters, waters, zone } from '../route/made-waters.ts';
import { Drawn } from './drawn.ts';
import { keeping } from './keeping.ts';

const drawn = new Drawn(9);
const spots: readonly LatLon[] = Array.from({ length: 30 }, () => ({
  lat: drawn.between(45.955, 46.05),
  lon: drawn.between(-32.095, -31.91),
}));
const pairs = spots.slice(1).map((to, i) => [spots[i]!, to] as const);
const far: readonly (readonly [LatLon, LatLon])[] = [
  [
    { lat: 46, lon: -32 },
    { lat: 46, lon: -32 },
  ],
  [
    { lat: 60, lon: 179.9 },
    { lat: 60.2, lon: -179.8 },
  ],
  [
    { lat: 10, lon: 20 },
    { lat: 13, lon: 24 },
  ],
  [
    { lat: -84, lon: 0 },
    { lat: -84.5, lon: 9 },
  ],
];
const islands = circleWaters(6, 40);
const doubtful: WatersFile = waters(
  [
    zone({ kind: 'land', name: 'Bow tie' }, [
      [0, 0],
      [0.02, 0.02],
      [0.02, 0],
      [0, 0.02],
      [0, 0],
    ]),
    zone({ kind: 'shoal', name: 'Bank', dries_m: -1 }, box(0.03, 0, 0.06, 0.03)),
    zone({ kind: 'land', name: 'Over the bank' }, box(0.05, 0.01, 0.08, 0.02), box(0.055, 0.012, 0.06, 0.015)),
    zone({ kind: 'keep-out', name: 'Farm', season: '11-01/02-15' }, box(0.1, 0.1, 0.2, 0.2)),
    {
      type: 'Feature',
      properties: { kind: 'landing', name: 'On land', id: 'l' },
      geometry: { type: 'Point', coordinates: [0.07, 0.015] },
    },
    {
      type: 'Feature',
      properties: { kind: 'stream', name: 'Beyond', hours: [] },
      geometry: { type: 'Point', coordinates: [0.9, 0.015] },
    },
    {
      type: 'Feature',
      properties: {
        kind: 'stream',
        name: 'Gap',
        hours: [
          { h: -1, set_deg: 400, spring_kn: 2, neap_kn: 1 },
          { h: 1, set_deg: 40, spring_kn: 2, neap_kn: 1 },
        ],
      },
      geometry: { type: 'Point', coordinates: [0.01, 0.1] },
    },
    {
      type: 'Feature',
      properties: { kind: 'route', name: 'Passage' },
      geometry: {
        type: 'LineString',
        coordinates: [
          [0.04, 0.05],
          [0.07, 0.014],
          [0.15, 0.15],
        ],
      },
    },
  ],
  [0, 0, 0.3, 0.3],
);
const datelined = waters([
  zone({ kind: 'land', name: 'East' }, box(179.9, 0, 179.95, 0.1)),
  zone({ kind: 'land', name: 'West' }, box(-179.95, 0, -179.9, 0.1)),
]);

const day = shipped('petrol-day').route;
const shapes: readonly Route[] = [
  day,
  { ...day, shape: 'one-way' },
  { ...day, shape: 'out-and-home', waypoints: day.waypoints.slice(0, 7) },
  {
    shape: 'loop',
    speed: 'best',
    waypoints: [
      { lat: 46, lon: -32 },
      { lat: 46, lon: -32 },
    ],
  },
  {
    shape: 'loop',
    speed: 4,
    waypoints: [
      { lat: 46, lon: -32, speed: 2, stop: 9 },
      { lat: 46.01, lon: -32, refill: 0.8, stop: 60 },
      { lat: 46.01, lon: -32.02, streamPlace: 'G' },
      { lat: 46, lon: -32 },
    ],
  },
  {
    shape: 'out-and-home',
    speed: 4,
    waypoints: [
      { lat: 46, lon: -32, stop: 30 },
      { lat: 46.01, lon: -32, speed: 'best-planing', stop: 60, refill: 1 },
      { lat: 46.02, lon: -32.02, stop: 90 },
    ],
  },
];

keeping('route', {
  distances: () => [
    [...pairs.slice(0, 8), ...far].map(([a, b]) => [legBetween(a, b), interpolate(a, b, 0.3)]),
    far.map(([from]) =>
      [0, 77, 200].map((bearing) => [
        destination(from, bearing, 900),
        destination(from, bearing, 90_000),
        destination(from, bearing, -40),
      ]),
    ),
    [-361, -180, -0, 179, 180, 540, 725].map((angle) => [
      compass(angle),
      lonBetween(10, angle),
      lonBetween(-170, angle),
    ]),
    [
      { lat: 85, lon: 0 },
      { lat: 85.1, lon: 0 },
      { lat: 0, lon: Infinity },
    ].map(chartable),
  ],
  'courses in a stream': () => [
    [0, 80, 200].flatMap((track) =>
      [0, 1, 3].flatMap((speed) =>
        [
          { setDeg: 0, rate: 0 },
          { setDeg: 60, rate: 1.2 },
          { setDeg: 260, rate: 2.4 },
        ].map((stream) => courseToSteer(track, speed, stream)),
      ),
    ),
    trackMade(40, 3, { setDeg: 300, rate: 1 }),
    findStream(40, 3, { trackDeg: 30, speedOverGround: 2.5 }),
  ],
  'zones along legs': () =>
    pairs.map(([a, b]) => {
      const { crossings, outside } = zonesAlong(haven(), a, b);
      return {
        outside,
        crossings: crossings.map(({ kind, zone: { name }, from, to, at }) => ({ kind, name, from, to, at })),
      };
    }),
  'inside and in sight': () => [
    spots.map((spot) => insideWaters(haven(), spot)),
    pairs.map(([a, b]) => meetsLand(haven(), a, b)),
    meetsLand(undefined, spots[0]!, spots[1]!),
    insideWaters(haven(), { lat: 46.3, lon: -32 }),
  ],
  fetches: () =>
    spots
      .slice(0, 12)
      .map((spot) => [
        [0, 100, 215].map((from) => fetchAt(haven(), spot, from)),
        knownFetch(haven(), spot, 100).length,
        knownFetch(undefined, spot, 100).length,
        openToSea(haven(), spot),
      ]),
  'worst fetches': () => {
    const worst = worstFetches(
      haven(),
      pairs.slice(0, 7).map(([from, to]) => ({ from, to })),
    );
    return [...Array(7).keys()].map((leg) => [[10, 240].map((from) => worst(leg, from)), worst.open(leg)]);
  },
  'means of fetches': () => [
    meanFetch([1, 2, 6]),
    effectiveFetch([100, 900, 2000, 800, 50], 10),
    fetchAt(undefined, spots[0]!, 40),
    fetchAt(haven(), { lat: 47, lon: -32 }, 40),
  ],
  'legs sailed': () => shapes.map((one) => sailedLegs(one)),
  'legs cut at zones': () =>
    shapes.slice(0, 3).map((one) => {
      const { stretches, hazards } = splitLegs(sailedLegs(one).legs, haven());
      return {
        stretches: stretches.map(({ leg, part, distance, trackDeg, limit, limitName, stop }) => ({
          leg,
          part,
          distance,
          trackDeg,
          limit,
          limitName,
          stop,
        })),
        hazards: hazards.map(({ kind, leg, at, length, name }) => ({ kind, leg, at, length, name })),
        bare: splitLegs(sailedLegs(one).legs, undefined).stretches.length,
      };
    }),
  seasons: () =>
    ['05-15/09-15', '11-01/02-15', 'all year', '', undefined, ' 05-15/05-15 '].map((season) =>
      ['2027-05-14', '2027-05-15', '2027-09-15T10:00:00Z', '2027-12-31', undefined, 'soon'].map((date) =>
        inSeason(season, date),
      ),
    ),
  'charts in doubt': () => [
    chartDoubts(doubtful),
    chartDoubts(waters([])),
    chartDoubts(JSON.parse(havenFile) as WatersFile),
    chartDoubts(datelined),
  ],
  'zones that overlap': () =>
    zoneOverlaps([
      zone({ kind: 'land', name: 'a' }, box(0, 0, 0.02, 0.02)),
      zone({ kind: 'land', name: 'b' }, box(0.01, 0.01, 0.03, 0.03)),
      zone({ kind: 'land', name: 'c' }, box(0.02, 0, 0.04, 0.01)),
      zone({ kind: 'shoal', name: 'd' }, box(0, 0, 0.04, 0.04), box(0.015, 0.015, 0.02, 0.02)),
    ]),
  'rings that cross themselves': () => [
    selfCrossings([
      [
        [0, 0],
        [2, 2],
        [2, 0],
        [0, 2],
        [0, 0],
      ],
    ]),
    selfCrossings([
      [
        [0, 0],
        [4, 0],
        [4, 4],
        [0, 4],
        [0, 0],
      ],
      [
        [1, 1],
        [5, 2],
        [1, 3],
        [1, 1],
      ],
    ]),
    selfCrossings([
      [
        [0, 0],
        [4, 0],
        [4, 4],
        [2, 0],
        [0, 4],
        [0, 0],
      ],
    ]),
    selfCrossings(
      [Array.from({ length: 40 }, (_, i) => [Math.cos((i * 17 * Math.PI) / 20), Math.sin((i * 17 * Math.PI) / 20)])],
      3,
    ),
  ],
  'edges under a tree of boxes': () => {
    const rings = islands.features.flatMap(({ geometry }) => (geometry.type === 'Polygon' ? geometry.coordinates : []));
    const tree = edgeTree(rings, (lon) => lon);
    const seen = (from: number, to: number) => {
      const edges: number[] = [];
      visitEdges(tree, { minX: from, minY: 46.02, maxX: to, maxY: 46.09 }, (...edge) => edges.push(...edge));
      return edges;
    };
    const near: number[] = [];
    visitEdgesNear(tree, { x0: -31.95, y0: 46.05, x1: -31.88, y1: 46.12 }, { x: 0.01, y: 0.02 }, (...edge) => {
      near.push(...edge);
      return near.length > 90;
    });
    return {
      starts: tree.starts,
      numbers: tree.numbers,
      seen: [seen(-32, -31.9), seen(-31.95, -31.94), seen(-30, -29)],
      near,
      rings: ringsOf(tree).map((ring) => [...ring]),
      holds: spots.map(({ lat, lon }) => holds(tree, lon, lat + 0.1)),
      shores: [0, 1, 2, 3, 4].map((i) =>
        firstShore(tree, { x: -31.9, y: 46.1, dx: Math.cos(i), dy: Math.sin(i) }, 0.3),
      ),
    };
  },
  'rays from outside and within': () => {
    const square = edgeTree([box(0, 0, 1, 1)], (lon) => lon);
    const spots = [
      { x: -1, y: 0.4 },
      { x: 0.4, y: -1 },
      { x: 2, y: 2 },
      { x: 0.4, y: 0.3 },
      { x: 0.4, y: 1.5 },
    ];
    return spots.map((spot) =>
      Array.from({ length: 16 }, (_, i) => {
        const [dx, dy] = [
          Math.round(1000 * Math.cos((i * Math.PI) / 8)),
          Math.round(1000 * Math.sin((i * Math.PI) / 8)),
        ];
        return firstShore(square, { ...spot, dx: dx / 1000, dy: dy / 1000 }, 9);
      }),
    );
  },
  'bounds of waters': () => [
    boundsOf(datelined, [
      [
        [
          [179.9, 0],
          [-179.9, 1],
        ],
      ],
    ]),
    boundsOf(waters([], [170, -5, -170, 5]), []),
    boundsOf(waters([], [1, 2, -9, 3, 4, 9]), []),
    boundsOf(waters([]), []),
    [-180, -179, 0, 179].map((lon) => unfolded(lon, { minX: 170, maxX: 190, minY: 0, maxY: 1 })),
    prepareWaters(datelined).bounds,
    prepareWaters(islands).zones.length,
  ],
  'streams of waters': () => [streamPlaces(JSON.parse(havenFile) as WatersFile), streamPlaces(doubtful)],
  'points to turn at': () => {
    const stretches = [
      { distance: 900, needOnward: 1, needBack: 2, timeOnward: 300, timeBack: 400 },
      { distance: 500, needOnward: 1.5, needBack: 1, timeOnward: 200, timeBack: 150 },
      { distance: 100, needOnward: 1, needBack: Infinity, timeOnward: 100, timeBack: Infinity },
    ];
    return [
      pointOfNoReturn(9000, 4, 3),
      pointOfNoReturn(9000, 0, 0),
      pointOfNoReturnByAmount(8, { flow: 0.001, speed: 4 }, { flow: 0.0012, speed: 3 }),
      pointOfNoReturnByAmount(8, { flow: 0.001, speed: 0 }, { flow: 0.0012, speed: 3 }),
      pointOfNoReturnByAmount(8, { flow: 0, speed: 1 }, { flow: 0, speed: 3 }),
      equalTimePoint(9000, 4, 3),
      equalTimePoint(9000, 0, 3),
      [0, 2, 4, 5, 6, 99].map((available) => lastReturnPoint(stretches, available)),
      equalTimeAlong(stretches),
      equalTimeAlong([]),
    ];
  },
});
