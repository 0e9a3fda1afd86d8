import { describe, expect, it } from 'vitest';
import { trialsContradictions } from '../../../src/core/files/trip-contradictions.ts';
import type { Trials } from '../../../src/core/trials/shapes.ts';
import { ALONE, catamaran, planned, trialsOf } from '../trials/made-trials.ts';

const sound = trialsOf(catamaran, [planned('first', ALONE, 5)]);
const told = (trials: Trials) =>
  trialsContradictions(trials, 'trials').map(({ code, path, limit }) => [
    code,
    path,
    ...(limit === undefined ? [] : [limit]),
  ]);
const withPropeller = (share: number): Trials => {
  const propeller = { ...catamaran.drive.propeller, diameter: 0.25, pitch: share * 0.25 };
  return { ...sound, setups: [{ ...sound.setups[0]!, drive: { ...catamaran.drive, propeller } }] };
};
const withHull = (more: Partial<Trials['hull']>): Trials => ({ ...sound, hull: { ...sound.hull, ...more } });

describe('trialsContradictions', () => {
  it('finds nothing in sound trials', () => {
    expect(told(sound)).toEqual([]);
  });

  it('takes a pitch of 0.4 to 1.5 diameters, and names the limit that is passed in metres', () => {
    const path = 'trials.setups.0.drive.propeller.pitch';
    expect([0.4, 1, 1.5].flatMap((share) => told(withPropeller(share)))).toEqual([]);
    expect(told(withPropeller(0.39))).toEqual([['out-of-range', path, 0.1]]);
    expect(told(withPropeller(1.51))).toEqual([['out-of-range', path, 0.375]]);
  });

  it('has no hull wetted beyond its length, nor planing on more than its beam or its wetted length', () => {
    const { length, beam } = sound.hull;
    expect(told(withHull({ wettedLength: length, planingBeam: beam }))).toEqual([]);
    expect(told(withHull({ wettedLength: length + 0.1 }))).toEqual([['too-large', 'trials.hull.wettedLength', length]]);
    expect(told(withHull({ planingBeam: beam + 0.1 }))).toEqual([['too-large', 'trials.hull.planingBeam', beam]]);
    expect(told(withHull({ wettedLength: 0.5, planingBeam: 0.5 }))).toEqual([]);
    expect(told(withHull({ wettedLength: 0.5, planingBeam: 0.6 }))).toEqual([
      ['too-large', 'trials.hull.planingBeam', 0.5],
    ]);
  });

  it('lets the rest of a tank be all of it, and no more', () => {
    const tank = (unusableL: number): Trials => {
      const store = { kind: 'tank', tanks: [{ ...tankOf(), capacityL: 12, unusableL }] } as const;
      return { ...sound, setups: [{ ...sound.setups[0]!, store }] };
    };
    expect(told(tank(12))).toEqual([]);
    expect(told(tank(12.1))).toEqual([['too-large', 'trials.setups.0.store.tanks.0.unusableL', 12]]);
  });

  it('names runs, setups and places twice told, at the later one', () => {
    const twice = { ...sound, runs: [...sound.runs, planned('other', ALONE, 6), planned('first', ALONE, 7)] };
    expect(told(twice)).toEqual([['duplicate', 'trials.runs.2.id']]);
    expect(told({ ...sound, setups: [...sound.setups, ...sound.setups] })).toEqual([
      ['duplicate', 'trials.setups.1.id'],
    ]);
    const { stations } = sound.hull;
    expect(told(withHull({ stations: [...stations, stations[0]!] }))).toEqual([
      ['duplicate', `trials.hull.stations.${stations.length}.id`],
    ]);
  });

  it('names a run with a setup, a place or a helm that cannot be', () => {
    const run = (more: Parameters<typeof planned>[3]) => told({ ...sound, runs: [planned('first', ALONE, 5, more)] });
    expect(run({ setup: 'none' })).toEqual([['no-such-setup', 'trials.runs.0.setup']]);
    const adult = { kind: 'adult', mass: 80 } as const;
    expect(run({ load: { items: [{ id: 'a', ...adult, station: 'mast' }] } })).toEqual([
      ['no-such-station', 'trials.runs.0.load.items.0.station'],
    ]);
    for (const kind of ['gear', 'dog'] as const) {
      expect(run({ load: { items: [{ id: 'a', kind, mass: 20, helm: true }] } })).toEqual([
        ['helm-not-person', 'trials.runs.0.load.items.0.helm'],
      ]);
    }
    expect(
      run({
        load: {
          items: [
            { id: 'a', ...adult, helm: true },
            { id: 'b', ...adult, helm: true },
          ],
        },
      }),
    ).toEqual([['two-helms', 'trials.runs.0.load.items.1.helm']]);
    expect(
      run({
        load: {
          items: [
            { id: 'a', ...adult },
            { id: 'a', ...adult },
          ],
        },
      }),
    ).toEqual([['duplicate', 'trials.runs.0.load.items.1.id']]);
  });
});

function tankOf() {
  if (catamaran.store.kind !== 'tank') throw new Error('made with a tank');
  return catamaran.store.tanks[0]!;
}
