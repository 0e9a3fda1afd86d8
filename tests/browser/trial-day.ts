import { readFileSync } from 'node:fs';
import petrolDay from '../../shared/trips/petrol-day.json' with { type: 'json' };
import { withProfile } from '../../src/components/planner/with-profile.ts';
import { readTracks } from '../../src/components/trials/track-reader.ts';
import { paired, runFrom, runsToBe } from '../../src/components/trials/track-work.ts';
import { boatOf } from '../../src/core/curve/boat.ts';
import { steady } from '../../src/core/curve/steady.ts';
import { fuelMass } from '../../src/core/drive/tank.ts';
import { readTrip } from '../../src/core/files/trip-schema.ts';
import { readWaters } from '../../src/core/files/waters-file.ts';
import { balance } from '../../src/core/load/balance.ts';
import type { Aboard, Load } from '../../src/core/load/shapes.ts';
import { prepareWaters } from '../../src/core/route/waters.ts';
import { calibrated } from '../../src/core/trials/calibrated.ts';
import { fitTrials } from '../../src/core/trials/fit.ts';
import type { Run, Trials } from '../../src/core/trials/shapes.ts';
import { planTrip } from '../../src/core/trip/plan-trip.ts';
import type { Trip, Verdict } from '../../src/core/trip/shapes.ts';
import { PETROL_DENSITY } from '../../src/core/units/constants.ts';
import { HOUR, KNOT } from '../../src/core/units/convert.ts';

/** One run as it is typed: knots, litres per hour, rpm. */
export interface TypedRun {
  readonly out: string;
  readonly back: string;
  readonly flow: string;
  readonly rpm: string;
}

export interface TrialDay {
  /** Flow and revs of the four runs that the sample tracks make, in their order. */
  readonly fromTracks: readonly { readonly flow: string; readonly rpm: string }[];
  readonly typed: readonly TypedRun[];
  /** A trip on which the boat, once measured, gets another answer than unmeasured. */
  readonly trip: Trip;
  readonly before: Verdict;
  readonly after: Verdict;
}

/** What the invented boat of the sample tracks is really like; see scripts/trials-demo.ts. */
const TRUTH = { factors: [1.05, 1.1, 1.4, 0.02, -0.008, 0.93, 0.05], covariance: [], runs: 0 };
const FILES = ['track-two-aboard.gpx', 'track-four-aboard.gpx'];

/** A day on the boat of the petrol example: readings as its meters would show them, and a fill at which they matter. */
export async function trialDay(): Promise<TrialDay> {
  const read = readTrip(petrolDay);
  if (!read.ok) throw new Error('the example trip cannot be read');
  const { craft } = read.value;
  const person = (id: string, station: string): Aboard => ({
    id,
    kind: 'adult',
    mass: 85,
    station,
    ...(station === 'helm' && { helm: true }),
  });
  const two: Load = { items: [person('p1', 'helm'), person('p2', 'seat-fore-port')] };
  const four: Load = { items: [...two.items, person('p3', 'seat-mid'), person('p4', 'seat-fore-starboard')] };
  const real = boatOf({ ...craft, calibration: TRUTH }, 'sea', 18);
  const readings = (load: Load, speed: number) => {
    const { allUpMass, lcg, airArea } = balance(
      craft,
      load,
      craft.store.kind === 'tank' ? fuelMass(craft.store.tanks, 0.5) : 0,
    );
    const { flow, drive } = steady(real, { mass: allUpMass, lcg, airArea }, speed);
    return { flow: ((flow / PETROL_DENSITY) * HOUR).toFixed(1), rpm: String(Math.round(drive.rpm / 10) * 10) };
  };

  const files = FILES.map((name) => ({
    name,
    text: async () => readFileSync(`shared/trials-demo/${name}`, 'utf8'),
  }));
  const tracks = await readTracks(
    files,
    Date.now() / 1000,
    () => {},
    () => true,
  );
  const passes = runsToBe(paired(tracks!.tracks));
  const { hull, drive, store } = craft;
  let trials: Trials = { hull, water: 'sea', setups: [{ id: 's1', drive, store }], runs: [], refills: [] };
  const rate = (flow: string) => ({ kind: 'rate' as const, rate: (Number(flow) * PETROL_DENSITY) / HOUR });
  const fromTracks = passes.map((toBe, i) => {
    const load = i < 2 ? two : four;
    const { flow, rpm } = readings(load, toBe.still.speed);
    const run = runFrom(
      toBe,
      { setup: 's1', load, rpm: Number(rpm), fullThrottle: false, reading: rate(flow) },
      trials,
    );
    trials = { ...trials, runs: [...trials.runs, run] };
    return { flow, rpm };
  });
  const typed = [7.5, 10, 13].map((speed, i): TypedRun => {
    const { flow, rpm } = readings(four, speed * KNOT);
    const [out, back] = [(speed + 0.3).toFixed(1), (speed - 0.3).toFixed(1)];
    const run: Run = {
      id: `t${i}`,
      day: '2026-06-27',
      setup: 's1',
      load: four,
      passes: [
        { over: Number(out) * KNOT, way: 'out' },
        { over: Number(back) * KNOT, way: 'back' },
      ],
      rpm: Number(rpm),
      consumed: rate(flow),
    };
    trials = { ...trials, runs: [...trials.runs, run] };
    return { out, back, flow, rpm };
  });

  const fit = fitTrials(trials);
  const waters = readWaters(JSON.parse(readFileSync('shared/waters/haven.geojson', 'utf8')));
  if (!waters.ok) throw new Error('the shipped waters cannot be read');
  const prepared = prepareWaters(waters.value);
  const verdict = (trip: Trip): Verdict | undefined => {
    const plan = planTrip(trip, prepared, { quick: true });
    return plan.ok ? plan.value.verdict : undefined;
  };
  for (let fill = 0.5; fill <= 1.001; fill += 0.01) {
    const trip: Trip = { ...read.value, load: { ...read.value.load, fill: Math.round(fill * 100) / 100 } };
    const measured = withProfile(trip, { format: 'homeleg-profile', version: 1, name: '', usual: 's1', trials });
    const [before, after] = [
      verdict(trip),
      verdict({ ...measured, craft: calibrated(measured.craft, trials, fit, trip.conditions.departure?.slice(0, 10)) }),
    ];
    if (before && after && before !== after) return { fromTracks, typed, trip, before, after };
  }
  throw new Error('at no fill do the trials change the answer');
}
