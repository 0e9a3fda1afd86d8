import { describe, expect, it } from 'vitest';
import { craftFrom } from '../../../src/core/files/catalogue.ts';
import { boatWith, engineKey, parametersOf } from '../../../src/core/trials/parameters.ts';
import { catamaran, trialsOf } from './made-trials.ts';

const plain = trialsOf(catamaran, []);
const { propeller } = catamaran.drive;
const flat = { ...catamaran.drive, propeller: { ...propeller, pitch: propeller.pitch / 2 } };
const electric = craftFrom('catamaran-4-3', 'electric-0-55kw', 'battery-1-0-nmc');
const both = {
  ...plain,
  setups: [
    ...plain.setups,
    { id: 'flat', drive: flat, store: catamaran.store },
    { id: 'quiet', drive: electric.drive, store: electric.store },
  ],
};
const petrolKey = engineKey(catamaran.drive);
const electricKey = engineKey(electric.drive);

describe('parametersOf', () => {
  it('gives the hull four unknowns, an engine its own and each propeller a pitch', () => {
    expect(parametersOf(both).list.map(({ factor, of }) => [factor, of])).toEqual([
      ['kd', 'hull'],
      ['kp', 'hull'],
      ['kh', 'hull'],
      ['lcgShift', 'hull'],
      ['fuel', petrolKey],
      ['friction', petrolKey],
      ['power', petrolKey],
      ['fuel', electricKey],
      ['friction', electricKey],
      ['pitchShift', 'usual'],
      ['pitchShift', 'flat'],
      ['pitchShift', 'quiet'],
    ]);
  });

  it('points each setup to the hull, its engine and its own propeller; a motor has no power to be found', () => {
    const { indexesOf } = parametersOf(both);
    const [usual, second, quiet] = both.setups;
    expect(indexesOf(usual!)).toEqual({ factors: [0, 1, 2, 3, 9, 4, 5], power: 6 });
    expect(indexesOf(second!)).toEqual({ factors: [0, 1, 2, 3, 10, 4, 5], power: 6 });
    expect(indexesOf(quiet!)).toEqual({ factors: [0, 1, 2, 3, 11, 7, 8], power: -1 });
  });

  it('holds a clean hull, engines and propellers to what is credible', () => {
    const { list } = parametersOf(both);
    const of = (at: number) => {
      const { mean, deviation, least, most } = list[at]!;
      return [mean, deviation, least, most];
    };
    expect([0, 1, 2, 3].map(of)).toEqual([
      [1, 0.4, 0.5, 2],
      [1, 0.2, 0.6, 1.6],
      [1, 1.3, 0, 4],
      [0, 0.1, -0.25, 0.25],
    ]);
    expect([4, 5, 6].map(of)).toEqual([
      [1, 0.2, 0.4, 2.5],
      [0, 0.3, -0.35, 1.5],
      [0, 0.07, -0.3, 0.3],
    ]);
    expect([7, 8].map(of)).toEqual([
      [1, 0.4, 0.4, 2.5],
      [0, 0.03, -0.008, 0.05],
    ]);
    const pitches = [propeller.pitch, propeller.pitch / 2, electric.drive.propeller.pitch];
    pitches.forEach((pitch, at) => {
      const [mean, deviation, least, most] = of(9 + at);
      expect(mean).toBe(0);
      expect(deviation).toBeCloseTo(0.1 * pitch, 12);
      expect(least).toBeCloseTo(-0.25 * pitch, 12);
      expect(most).toBeCloseTo(0.25 * pitch, 12);
    });
  });

  it('expects of a bottom with shell half as much resistance again, doubts half of that, and leaves the balance alone', () => {
    const { list } = parametersOf({ ...plain, fouling: 'shell' });
    expect(list.slice(0, 4).map(({ mean }) => mean)).toEqual([1.5, 1.5, 1.5, 0]);
    [0.4, 0.2, 1.3].forEach((clean, at) => {
      expect(list[at]!.deviation).toBeCloseTo(Math.sqrt((clean * 1.5) ** 2 + 0.25 ** 2), 12);
    });
    expect(list.slice(0, 4).map(({ most }) => most)).toEqual([3, 1.6 * 1.5, 6, 0.25]);
    expect(list.slice(0, 4).map(({ least }) => least)).toEqual([0.5, 0.6, 0, -0.25]);
    expect(list[3]!.deviation).toBe(0.1);
  });
});

describe('engineKey', () => {
  it('is the same with another propeller, and another for another power', () => {
    expect(engineKey(flat)).toBe(petrolKey);
    expect(engineKey({ ...catamaran.drive, ratedPower: catamaran.drive.ratedPower + 0.2 })).toBe(petrolKey);
    expect(engineKey({ ...catamaran.drive, ratedPower: catamaran.drive.ratedPower + 2 })).not.toBe(petrolKey);
    expect(engineKey({ ...catamaran.drive, name: 'Other' })).not.toBe(petrolKey);
  });
});

describe('boatWith', () => {
  const parameters = parametersOf(both);
  const values = parameters.list.map((_, at) => (at + 1) / 100);

  it('is the boat of these values, with the power of its engine by their logarithm', () => {
    const { factors } = boatWith(both, both.setups[1]!, parameters, values);
    expect(factors.hull).toEqual({ kd: 0.01, kp: 0.02, kh: 0.03, lcgShift: 0.04 });
    expect(factors.drive).toEqual({ pitchShift: 0.11, fuel: 0.05, friction: 0.06 });
    expect(factors.power.factor).toBeCloseTo(Math.exp(0.07), 12);
  });

  it('has a motor at its rated power', () => {
    expect(boatWith(both, both.setups[2]!, parameters, values).factors.power.factor).toBe(1);
  });

  it('is as foul as it was on trial, so that nothing is added twice', () => {
    const foul = { ...both, fouling: 'weed' } as const;
    expect(boatWith(foul, foul.setups[0]!, parameters, values).factors.hull.kd).toBeCloseTo(0.01, 12);
  });
});
