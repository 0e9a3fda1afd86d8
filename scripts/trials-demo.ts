/** node scripts/trials-demo.ts: writes the invented trial days of shared/trials-demo from a seeded simulation. */

import { writeFileSync } from 'node:fs';
import { type Afloat, type Boat, boatOf } from '../src/core/curve/boat.ts';
import { curve } from '../src/core/curve/curve.ts';
import { steady } from '../src/core/curve/steady.ts';
import { fuelMass } from '../src/core/drive/tank.ts';
import { craftFrom } from '../src/core/files/catalogue.ts';
import { writeProfile } from '../src/core/files/profile-file.ts';
import { balance } from '../src/core/load/balance.ts';
import type { Aboard, Load } from '../src/core/load/shapes.ts';
import { destination } from '../src/core/route/distance.ts';
import type { LatLon } from '../src/core/route/shapes.ts';
import type { BoatProfile, Pass, Run } from '../src/core/trials/shapes.ts';
import { seededChance } from '../src/core/trip/chance.ts';
import { KNOT } from '../src/core/units/convert.ts';

const random = seededChance(20270619);
/** Box and Muller 1958: a normal figure from two even ones. */
const normal = () => Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());

const craft = craftFrom('catamaran-3-6', 'petrol-15hp-4s', 'tank-12');
/** What the invented boat is really like: a little more planing drag, a thriftier engine, a propeller worn by 0.3 in. */
const truth = { factors: [1.05, 1.1, 1.4, 0.02, -0.008, 0.93, 0.05], covariance: [], runs: 0 };
const boat: Boat = boatOf({ ...craft, calibration: truth }, 'sea', 18);

/** As the trials page takes people aboard: 85 kg each, seated where the boat is steadiest. */
const person = (id: string, name: string, station: string): Aboard => ({
  id,
  kind: 'adult',
  name,
  mass: 85,
  station,
  ...(station === 'helm' && { helm: true }),
});
const helm = person('helm', 'Helm', 'helm');
const loadOf = (...others: readonly Aboard[]): Load => ({
  items: [helm, ...others],
  fill: 0.5,
  fillKnownBy: 'measured',
});
const loads: Record<'one' | 'two' | 'four', Load> = {
  one: loadOf(),
  two: loadOf(person('mate', 'Mate', 'seat-fore-port')),
  four: loadOf(
    person('mate', 'Mate', 'seat-mid'),
    person('third', 'Third', 'seat-fore-port'),
    person('fourth', 'Fourth', 'seat-fore-starboard'),
  ),
};

function afloat(load: Load): Afloat {
  const tanks = craft.store.kind === 'tank' ? craft.store.tanks : [];
  const { allUpMass, lcg, airArea } = balance(craft, load, fuelMass(tanks, load.fill ?? 0.5));
  return { mass: allUpMass, lcg, airArea };
}

const full = (load: Load) => curve(boat, afloat(load), 0).topSpeed.median;

/** Passes over ground in a stream with the way out; the GPS mean of a minute errs by 0.05 m/s (published, see still-water). */
function passes(speed: number, stream: number, count: number): readonly Pass[] {
  return Array.from({ length: count }, (_, i): Pass => {
    const way = i % 2 === 0 ? 'out' : 'back';
    const over = speed + (way === 'out' ? stream : -stream) + 0.05 * normal();
    return { way, over: Math.round(over * 1000) / 1000 };
  });
}

let number = 0;
/** A run as somebody would note it: revs to 10 rpm within 1 %, flow within 4 %. */
function run(day: string, load: Load, speed: number, more: Partial<Run> = {}, stream = 0.2): Run {
  const { flow, drive } = steady(boat, afloat(load), speed);
  number++;
  return {
    id: `r${number}`,
    day,
    setup: 's1',
    load,
    passes: passes(speed, stream, 2),
    rpm: Math.round((drive.rpm * (1 + 0.01 * normal())) / 10) * 10,
    consumed: { kind: 'rate', rate: Number((flow * (1 + 0.04 * normal())).toPrecision(3)) },
    ...more,
  };
}

const FIRST_DAY = '2026-06-20';
const SECOND_DAY = '2026-06-27';
const runs: Run[] = [
  run(FIRST_DAY, loads.two, 4.5 * KNOT),
  run(FIRST_DAY, loads.two, 7.5 * KNOT),
  run(FIRST_DAY, loads.two, 15 * KNOT),
  run(FIRST_DAY, loads.two, full(loads.two), { fullThrottle: true }),
  run(SECOND_DAY, loads.one, 5.5 * KNOT, {}, -0.3),
  run(SECOND_DAY, loads.one, 17 * KNOT, {}, -0.3),
  run(SECOND_DAY, loads.four, 4.5 * KNOT, {}, -0.1),
  run(SECOND_DAY, loads.four, full(loads.four), { fullThrottle: true }, -0.1),
];
const wrong = run(SECOND_DAY, loads.one, 13 * KNOT, { note: 'Flow read in a hurry: gallons?' });
runs.push({
  ...wrong,
  consumed: { kind: 'rate', rate: Number((steadyFlow(loads.one, 13 * KNOT) / 3.785).toPrecision(3)) },
});

function steadyFlow(load: Load, speed: number): number {
  return steady(boat, afloat(load), speed).flow;
}

const spent = [
  { speed: 2.3, seconds: 2400 },
  { speed: 7.6, seconds: 3300 },
];
const used = spent.reduce((sum, { speed, seconds }) => sum + steadyFlow(loads.two, speed) * seconds, 0);
const profile: BoatProfile = {
  format: 'homeleg-profile',
  version: 1,
  name: 'Invented sample boat',
  usual: 's1',
  trials: {
    hull: craft.hull,
    water: 'sea',
    measuredBy: 'nobody (invented figures)',
    fouling: 'clean',
    setups: [{ id: 's1', drive: craft.drive, store: craft.store }],
    runs,
    refills: [
      {
        id: 'f1',
        day: '2026-07-04',
        setup: 's1',
        load: loads.two,
        spent,
        amount: Number((used * (1 + 0.08 * normal())).toPrecision(3)),
        note: 'Invented trip',
      },
    ],
  },
};
writeFileSync('shared/trials-demo/sample-boat.json', writeProfile(profile));

/** One part of a trial as sailed: m/s through the water, a heading, s. */
interface Part {
  readonly speed: number;
  readonly headingDeg: number;
  readonly seconds: number;
}

/** Every 2 s where a boat is that sails these parts in a stream, with the scatter of a hand-held GPS. */
function track(
  name: string,
  start: string,
  from: LatLon,
  parts: readonly Part[],
  stream: { setDeg: number; rate: number },
): string {
  const step = 2;
  let at = from;
  let time = Date.parse(start);
  let speed = 0;
  let heading = parts[0]!.headingDeg;
  let [driftNorth, driftEast] = [0, 0];
  const lines: string[] = [];
  for (const part of parts) {
    for (let passed = 0; passed < part.seconds; passed += step) {
      // Throttle and helm take some seconds.
      speed += (part.speed - speed) * 0.3;
      const turn = ((part.headingDeg - heading + 540) % 360) - 180;
      heading += Math.min(Math.max(turn, -24), 24);
      at = destination(at, heading, (speed + 0.06 * normal()) * step);
      at = destination(at, stream.setDeg, stream.rate * step);
      driftNorth = 0.97 * driftNorth + 0.12 * normal();
      driftEast = 0.97 * driftEast + 0.12 * normal();
      const seen = destination(destination(at, 0, driftNorth), 90, driftEast);
      time += step * 1000;
      const clock = new Date(time).toISOString().replace('.000Z', 'Z');
      lines.push(
        `      <trkpt lat="${seen.lat.toFixed(6)}" lon="${seen.lon.toFixed(6)}"><time>${clock}</time></trkpt>`,
      );
    }
  }
  return `<?xml version="1.0" encoding="UTF-8"?>
<gpx version="1.1" creator="Homeleg, invented" xmlns="http://www.topografix.com/GPX/1/1">
  <trk>
    <name>${name}</name>
    <trkseg>
${lines.join('\n')}
    </trkseg>
  </trk>
</gpx>
`;
}

/** Passes out and back at one throttle, with the turns between. */
function there(speed: number, headingDeg: number, seconds: number, count: number): readonly Part[] {
  return Array.from({ length: count }, (_, i) => {
    const way = (headingDeg + (i % 2) * 180) % 360;
    return [
      { speed: speed * 0.7, headingDeg: way, seconds: 24 },
      { speed, headingDeg: way, seconds },
    ];
  }).flat();
}

const idle = (headingDeg: number, seconds: number): Part => ({ speed: 1.2, headingDeg, seconds });
const OFFING: LatLon = { lat: 45.982, lon: -32.05 };
writeFileSync(
  'shared/trials-demo/track-two-aboard.gpx',
  track(
    'Invented trial, two aboard',
    '2026-06-20T09:30:00Z',
    OFFING,
    [idle(250, 90), ...there(4.5 * KNOT, 70, 150, 2), idle(70, 40), ...there(15 * KNOT, 70, 110, 4), idle(160, 60)],
    { setDeg: 60, rate: 0.25 },
  ),
);
writeFileSync(
  'shared/trials-demo/track-four-aboard.gpx',
  track(
    'Invented trial, four aboard',
    '2026-06-27T14:10:00Z',
    OFFING,
    [
      idle(240, 60),
      ...there(5.5 * KNOT, 80, 150, 2),
      idle(80, 40),
      ...there(full(loads.four), 80, 100, 4),
      idle(170, 60),
    ],
    { setDeg: 255, rate: 0.3 },
  ),
);
