import { expect, it } from 'vitest';
import type { Station } from '../../../src/core/craft/shapes.ts';
import { helmReaches } from '../../../src/core/load/helm-reach.ts';
import { hull } from './made-craft.ts';

/** The engine's grip is then at 0.45 m on the middle line. */
const boat = { ...hull(), engine: { x: 0, y: 0 } };
const helm = (id: string, x: number, y = 0): Station => ({ id, label: id, use: 'helm', x, y });
const seat: Station = { id: 'seat', label: 'Seat', use: 'seat', x: 2.6, y: 0 };

it('reaches a tiller as far as the kill cord, to all sides', () => {
  const tiller = { ...boat, stations: [seat] };
  expect(helmReaches(tiller, { x: 0.45 + 1.39, y: 0 })).toBe(true);
  expect(helmReaches(tiller, { x: 0.45 + 1.41, y: 0 })).toBe(false);
  expect(helmReaches(tiller, { x: 0.45, y: -1.39 })).toBe(true);
  expect(helmReaches(tiller, { x: 0.45, y: 1.41 })).toBe(false);
  expect(helmReaches(tiller, { x: 0.45 + 1, y: 1 })).toBe(false);
});

it('is always given on the helm seat itself, and round a console within half the cord of that seat', () => {
  const console = { ...boat, stations: [seat, helm('helm', 2.5)] };
  expect(helmReaches(console, { x: 2.5, y: 0 })).toBe(true);
  expect(helmReaches(console, { x: 2.5, y: 0.69 })).toBe(true);
  expect(helmReaches(console, { x: 2.5, y: 0.71 })).toBe(false);
  // The engine is steered from the console, so nobody steers at the engine.
  expect(helmReaches(console, { x: 0.45, y: 0 })).toBe(false);
});

it('counts a boat with one helm seat near the engine as steered by tiller, though another is far', () => {
  const both = { ...boat, stations: [helm('aft', 1), helm('console', 2.6)] };
  expect(helmReaches(both, { x: 1.6, y: 0 })).toBe(true);
  expect(helmReaches(both, { x: 2.6, y: 0 })).toBe(true);
  expect(helmReaches(both, { x: 2.6, y: 0.3 })).toBe(false);
});
