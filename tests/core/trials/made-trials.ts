import type { Craft } from '../../../src/core/craft/shapes.ts';
import { craftFrom } from '../../../src/core/files/catalogue.ts';
import type { Load } from '../../../src/core/load/shapes.ts';
import { boatWith, parametersOf } from '../../../src/core/trials/parameters.ts';
import { readRun } from '../../../src/core/trials/readings.ts';
import type { Run, Trials } from '../../../src/core/trials/shapes.ts';

export { seededChance as seeded } from '../../../src/core/trip/chance.ts';

/** Normal deviates by Box and Muller. */
export function normals(random: () => number): () => number {
  return () => Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
}

export const catamaran: Craft = craftFrom('catamaran-3-6', 'petrol-15hp-4s', 'tank-25');

export const crewOf = (stations: readonly string[], fill = 0.5): Load => ({
  items: stations.map((station, i) => ({
    id: `p${i}`,
    kind: 'adult',
    mass: 85,
    station,
    ...(i === 0 && { helm: true }),
  })),
  fill,
});

export const ALONE = crewOf(['helm']);
export const TWO = crewOf(['helm', 'seat-fore-port']);
export const THREE = crewOf(['helm', 'seat-fore-port', 'seat-fore-starboard']);

/** What was read is filled in by `sailed`. */
export function planned(id: string, load: Load, speed: number, more: Partial<Run> = {}): Run {
  return {
    id,
    setup: 'usual',
    load,
    passes: [
      { over: speed, way: 'out' },
      { over: speed, way: 'back' },
    ],
    rpm: 1,
    consumed: { kind: 'rate', rate: 1 },
    ...more,
  };
}

export function trialsOf(craft: Craft, runs: readonly Run[], more: Partial<Trials> = {}): Trials {
  const setups = [{ id: 'usual', drive: craft.drive, store: craft.store }];
  return { hull: craft.hull, water: 'sea', setups, runs, refills: [], ...more };
}

/** Six speeds with two crews: what a morning's trial has. */
export function morning(): Run[] {
  const speeds = [1.5, 2.2, 5.5, 6.5, 7.5, 9];
  return [
    ...speeds.map((speed, i) => planned(`one ${i}`, ALONE, speed)),
    ...speeds.map((speed, i) => planned(`three ${i}`, THREE, speed)),
  ];
}

/** True values of the parameters, in their order: drawn from the priors, inside the bounds. */
export function drawn(trials: Trials, normal: () => number): number[] {
  return parametersOf(trials).list.map(({ mean, deviation, least, most }) => {
    for (;;) {
      const value = mean + deviation * normal();
      if (value > least && value < most) return value;
    }
  });
}

/**
 * The runs with what they would have read on a boat of these true parameter values; each reading off by its deviation
 * times a normal deviate.
 */
export function sailed(trials: Trials, truth: readonly number[], normal: () => number = () => 0): Trials {
  const parameters = parametersOf(trials);
  const runs = trials.runs.map((run) => {
    const read = readRun(trials, run);
    const logs = read.predict(boatWith(trials, read.setup, parameters, truth));
    const reads = Object.fromEntries(
      read.readings.map(({ kind, deviation }, k) => [kind, Math.exp(logs[k]! + deviation * normal())]),
    );
    return {
      ...run,
      ...(run.rpm !== undefined && { rpm: reads.rpm! }),
      ...(run.consumed && { consumed: { kind: 'rate' as const, rate: reads.consumed! } }),
    };
  });
  return { ...trials, runs };
}
