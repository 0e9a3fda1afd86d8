import { describe, expect, it } from 'vitest';
import { placed } from '../../../src/core/load/placing.ts';
import { aboard, hull } from './made-craft.ts';

describe('placed', () => {
  it('seats people where they said, a free spot before a station', () => {
    const { items, unknownSeats } = placed(hull(), {
      items: [aboard('a', 80, { station: 'bow' }), aboard('b', 70, { station: 'bow', at: { x: 1, y: 0.1 } })],
    });
    expect(items.map(({ place }) => [place.x, place.y])).toEqual([
      [2.2, 0],
      [1, 0.1],
    ]);
    expect(unknownSeats).toEqual([]);
  });

  it('assumes an unknown seat aft, on the side the boat leans to already', () => {
    const leaningPort = placed(hull(), { items: [aboard('a', 80, { station: 'aft' }), aboard('b', 70)] });
    expect(leaningPort.items[1]!.place).toMatchObject({ x: 0.8, y: -0.5 });
    const leaningStarboard = placed(hull(), { items: [aboard('b', 70), aboard('a', 80, { station: 'helm' })] });
    expect(leaningStarboard.items.find(({ id }) => id === 'b')!.place).toMatchObject({ x: 0.8, y: 0.5 });
    expect(leaningStarboard.unknownSeats).toEqual(['b']);
  });

  it('takes a bag without a place for one in the stern locker, and a person for one on a seat', () => {
    const locker = { id: 'stern', label: 'Stern locker', use: 'gear', x: 0.2, y: 0, z: 0.2 } as const;
    const boat = { ...hull(), stations: [...hull().stations, locker] };
    const { items } = placed(boat, { items: [aboard('a', 80), { ...aboard('bag', 20), kind: 'gear' }] });
    expect(items.map(({ place }) => place.x)).toEqual([0.8, 0.2]);
  });

  it('does not believe a station that the boat does not have', () => {
    expect(placed(hull(), { items: [aboard('a', 80, { station: 'flybridge' })] }).unknownSeats).toEqual(['a']);
  });

  it('puts people at the aft end of a boat without stations', () => {
    const bare = { ...hull(), stations: [] };
    expect(placed(bare, { items: [aboard('a', 80)] }).items[0]!.place).toMatchObject({ x: 0, y: 0 });
  });

  it('never seats anybody on the bow tube by itself', () => {
    const { items } = placed(hull(), { items: [aboard('a', 80)] });
    expect(items[0]!.place.x).toBe(0.8);
  });
});
