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

it('reaches to the very end of the cord, from the grip and from any helm seat of a console', () => {
  // The grip is at the origin.
  const tiller = { ...boat, engine: { x: -0.45, y: 0 }, stations: [seat] };
  expect(helmReaches(tiller, { x: 1.4, y: 0 })).toBe(true);
  // A helm seat just within the cord is steered by tiller, however far ahead somebody else sits.
  const near = { ...tiller, stations: [helm('helm', 1.4)] };
  expect(helmReaches(near, { x: -1, y: 0 })).toBe(true);
  const two = { ...boat, stations: [helm('port', 2.5, -0.4), helm('starboard', 2.5, 0.4)] };
  expect(helmReaches(two, { x: 2.5, y: 0.9 })).toBe(true);
  expect(helmReaches(two, { x: 2.5, y: 1.2 })).toBe(false);
});

it('takes nobody a hand beside a far helm seat for sitting on it', () => {
  const far = { ...boat, engine: { x: 3, y: 0 }, stations: [helm('aft', 3.3), helm('far', 0)] };
  expect(helmReaches(far, { x: 0.009, y: 0 })).toBe(true);
  expect(helmReaches(far, { x: 0.01, y: 0 })).toBe(false);
});

it('counts a boat with one helm seat near the engine as steered by tiller, though another is far', () => {
  const both = { ...boat, stations: [helm('aft', 1), helm('console', 2.6)] };
  expect(helmReaches(both, { x: 1.6, y: 0 })).toBe(true);
  expect(helmReaches(both, { x: 2.6, y: 0 })).toBe(true);
  expect(helmReaches(both, { x: 2.6, y: 0.3 })).toBe(false);
});
