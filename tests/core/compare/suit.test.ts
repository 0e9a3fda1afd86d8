import { describe, expect, it } from 'vitest';
import { ranked, suited } from '../../../src/core/compare/suit.ts';
import { goTogether } from '../../../src/core/compare/suit-pairs.ts';
import type { Suited, Use } from '../../../src/core/compare/suit-shapes.ts';
import { tripOfUse, windFor } from '../../../src/core/compare/suit-trip.ts';
import * as catalogue from '../../../src/core/files/catalogue.ts';
import { planTrip } from '../../../src/core/trip/plan-trip.ts';

const couple: Use = {
  crew: [85, 75],
  gear: 20,
  distance: 20_000,
  water: 'sea',
  waveHeight: 0.2,
  speed: 7,
  energy: 'either',
  batteryTemperatureC: 10,
};
const all = (use: Use): readonly Suited[] => [...suited(use, catalogue)];
const planing = all(couple);
const RANK = { fits: 0, doubtful: 1, out: 2 } as const;
const key = ({ hullId, engineId }: Suited) => `${hullId} ${engineId}`;

describe('what would suit', () => {
  it('looks at every hull with every engine and gives each that is no fit a reason', () => {
    expect(planing).toHaveLength(catalogue.hulls.length * catalogue.engines.length);
    expect(new Set(planing.map(key)).size).toBe(planing.length);
    for (const { standing, reasons } of planing) expect(reasons.length > 0).toBe(standing !== 'fits');
    expect(planing.some(({ standing }) => standing === 'fits')).toBe(true);
  });

  it('ranks those that fit first, the lightest first among them', () => {
    const order = ranked(planing);
    const fitting = order.filter(({ standing }) => standing === 'fits');
    expect(order.slice(0, fitting.length)).toEqual(fitting);
    for (let i = 1; i < fitting.length; i++) {
      expect(fitting[i]!.mass).toBeGreaterThanOrEqual(fitting[i - 1]!.mass);
    }
    expect(RANK[order.at(-1)!.standing]).toBe(2);
  });

  it('lets only those fit that plan the trip as a go, with everybody aboard and the plate kept', () => {
    for (const { craft, standing } of planing.filter((found) => found.standing === 'fits').slice(0, 12)) {
      const plan = planTrip(tripOfUse(craft!, couple), undefined);
      if (!plan.ok) throw new Error('no plan');
      const serious = plan.value.reasons.filter(({ code, level }) => level !== 'note' && code !== 'waters-unknown');
      expect(serious).toEqual([]);
      expect(plan.value.left.median).toBeGreaterThanOrEqual(plan.value.reserve);
      expect(craft!.drive.ratedPower).toBeLessThanOrEqual((craft!.hull.plate as { maxPower: number }).maxPower);
      expect(standing).toBe('fits');
    }
  });

  it('never finds more that fits for more people, a longer trip, a higher speed, rougher water or weaker arms', () => {
    const fitting = (use: Use) =>
      new Set(
        all(use)
          .filter(({ standing }) => standing === 'fits')
          .map(key),
      );
    const now = new Set(planing.filter(({ standing }) => standing === 'fits').map(key));
    for (const harder of [
      { crew: [85, 75, 80] },
      { distance: 40_000 },
      { carry: 30 },
      { waveHeight: 0.3 },
      { energy: 'petrol' as const },
    ]) {
      const then = fitting({ ...couple, ...harder });
      for (const pair of then) expect(now.has(pair), `${pair} with ${JSON.stringify(harder)}`).toBe(true);
      expect(then.size).toBeLessThanOrEqual(now.size);
    }
  });

  it('keeps to petrol or electric when asked', () => {
    for (const kind of ['petrol', 'electric'] as const) {
      const ids = new Set(catalogue.engines.filter(({ drive }) => drive.kind === kind).map(({ id }) => id));
      for (const { engineId } of all({ ...couple, energy: kind })) expect(ids.has(engineId)).toBe(true);
    }
  });

  it('drops what one person cannot carry, and says which piece', () => {
    const light = all({ ...couple, carry: 25 });
    for (const { standing, heaviest, hullShare, reasons } of light) {
      if (heaviest > 25 || hullShare > 25) {
        expect(standing).toBe('out');
      } else {
        expect(reasons.some(({ kind }) => kind === 'carry')).toBe(false);
      }
    }
  });

  it('needs no planing boat for a slow trip, and finds electric ones for it', () => {
    const { speed: _, ...slow } = couple;
    const found = all({ ...slow, distance: 8000, waveHeight: 0, energy: 'electric' });
    const fits = found.filter(({ standing }) => standing === 'fits');
    expect(fits.length).toBeGreaterThan(0);
    for (const { trip } of fits) expect(trip!.planing).toBe(false);
  });

  it('puts everybody out of boats with fewer seats than people', () => {
    for (const { standing, reasons } of all({ ...couple, crew: Array(8).fill(70) })) {
      expect(standing).toBe('out');
      expect(
        reasons.some((r) => r.kind === 'seats' || (r.kind === 'plan' && r.reason.code === 'over-plate-persons')),
      ).toBe(true);
    }
  });
});

it('takes the wind that raises such waves on open water, more for more', () => {
  expect(windFor(0)).toBe(0);
  expect(windFor(0.2)).toBeCloseTo(2.45, 2);
  for (let height = 0.05; height < 3; height += 0.05) expect(windFor(height)).toBeGreaterThan(windFor(height - 0.05));
});

it('puts small motors on small batteries and a can under no large engine', () => {
  const drive = (id: string) => catalogue.engines.find((engine) => engine.id === id)!.drive;
  const store = (id: string) => catalogue.stores.find((one) => one.id === id)!.store;
  expect(goTogether(drive('petrol-2-5hp-4s'), store('tank-built-in-1-1'))).toBe(true);
  expect(goTogether(drive('petrol-15hp-4s'), store('tank-built-in-1-1'))).toBe(false);
  expect(goTogether(drive('petrol-15hp-4s'), store('battery-5-nmc'))).toBe(false);
  expect(goTogether(drive('electric-0-55kw'), store('battery-10-nmc'))).toBe(false);
  expect(goTogether(drive('electric-10-6kw'), store('battery-1-0-nmc'))).toBe(false);
  for (const { drive: each } of catalogue.engines) {
    expect(catalogue.stores.some(({ store: one }) => goTogether(each, one))).toBe(true);
  }
});
