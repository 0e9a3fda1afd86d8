import { expect, it } from 'vitest';
import { legDepth, shaftFor, withDeepLeg, withShaft } from '../../../src/core/compare/shaft.ts';
import { craftFrom, hulls } from '../../../src/core/files/catalogue.ts';

it('names the shaft for a transom: 15, 20 and 25 in', () => {
  expect(shaftFor(0.4)).toBe('short');
  expect(shaftFor(0.53)).toBe('long');
  expect(shaftFor(0.65)).toBe('extra-long');
});

it('hangs a matched engine neither too deep nor too high on any shipped hull', () => {
  for (const { id, hull } of hulls) {
    const { drive } = craftFrom(id, 'petrol-8hp-4s', 'tank-12');
    expect(legDepth(hull, withShaft(drive, shaftFor(hull.transomHeight!)))).toBe(0);
  }
});

it('drags more the deeper the leg, and not less for one that hangs high', () => {
  const { drive } = craftFrom('catamaran-3-6', 'petrol-8hp-4s', 'tank-12');
  expect(withDeepLeg(drive, 0.127).legDragArea).toBeGreaterThan(drive.legDragArea);
  // The area stands for an eighth of a metre too deep.
  expect(withDeepLeg(drive, 0.25, 0.004).legDragArea).toBeCloseTo(drive.legDragArea + 0.008, 9);
  expect(withDeepLeg(drive, -0.127)).toBe(drive);
  expect(withDeepLeg(drive, 0)).toBe(drive);
});

it('knows nothing where the transom or the shaft is not known', () => {
  const { hull, drive } = craftFrom('catamaran-3-6', 'petrol-8hp-4s', 'tank-12');
  const { transomHeight: _, ...bare } = hull;
  expect(legDepth(bare, drive)).toBeUndefined();
  const { shaft: __, ...unknown } = drive;
  expect(legDepth(hull, unknown)).toBeUndefined();
});

it('weighs two kilograms more for each longer shaft', () => {
  const { drive } = craftFrom('catamaran-3-6', 'petrol-8hp-4s', 'tank-12');
  const short = withShaft({ ...drive, shaft: undefined }, 'short');
  expect(short.mass).toBe(drive.mass);
  expect(withShaft(short, 'extra-long')).toMatchObject({ shaft: 'extra-long', mass: drive.mass + 4 });
  expect(withShaft(withShaft(short, 'long'), 'short').mass).toBe(drive.mass);
});
