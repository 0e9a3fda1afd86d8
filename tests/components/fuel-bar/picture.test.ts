import { describe, expect, it } from 'vitest';
import { barLabels, tickLabels } from '../../../src/components/fuel-bar/bar-labels.ts';
import { barTexts } from '../../../src/components/fuel-bar/bar-texts.ts';
import { barPicture } from '../../../src/components/fuel-bar/picture.ts';
import { NAUTICAL } from '../../../src/components/units/default-measures.ts';
import type { Plan } from '../../../src/core/trip/shapes.ts';
import * as plans from '../answer/fixtures.ts';

const everyPlan: [string, Plan][] = Object.entries({
  go: plans.go,
  marginal: plans.marginal,
  noGo: plans.noGo,
  electric: plans.electric,
  overflow: plans.overflow,
  manyLegs: plans.manyLegs,
  dry: plans.dry,
  stuck: plans.stuck,
  oneWay: plans.oneWay,
});
const widths = [280, 358, 620, 1248];

describe('barPicture', () => {
  it.each(everyPlan)('is sound at every width: %s', (_, plan) => {
    for (const width of widths) {
      const picture = barPicture(plan, { width, height: 52, fontSize: 12 }, plan.full * 0.05);
      const paths = [
        picture.glass,
        picture.touched,
        ...Object.values(picture.hatches),
        ...picture.pieces.map((piece) => piece.path),
        ...picture.tears.flatMap((one) => [one.gap, one.edges]),
      ].join('');
      expect(paths).not.toMatch(/NaN|Infinity/);
      const places = [
        picture.home,
        picture.band.from,
        picture.band.to,
        ...picture.pieces.flatMap((piece) => [piece.from, piece.to]),
        ...picture.spans.flatMap((span) => [span.from, span.to]),
      ];
      for (const x of places) {
        expect(x).toBeGreaterThanOrEqual(0);
        expect(x).toBeLessThanOrEqual(width);
      }
      const inTank = picture.pieces.filter((piece) => piece.kind !== 'short');
      for (let i = 1; i < inTank.length; i++) expect(inTank[i]!.from).toBeCloseTo(inTank[i - 1]!.to, 6);
    }
  });

  it('names every leg once, joined where they are too thin to see', () => {
    const { pieces } = barPicture(plans.manyLegs, { width: 280, height: 52, fontSize: 12 });
    const legs = pieces.filter((piece) => piece.legs).map((piece) => piece.legs.split('–').map(Number));
    expect(legs[0]![0]).toBe(1);
    expect(legs.at(-1)!.at(-1)).toBe(200);
    for (let i = 1; i < legs.length; i++) expect(legs[i]![0]).toBe(legs[i - 1]!.at(-1)! + 1);
    for (const piece of pieces) if (piece.legs) expect(piece.to - piece.from).toBeGreaterThanOrEqual(6.9);
  });

  it('marks the turn between the way out and the way home, and none on a trip one way', () => {
    const box = { width: 620, height: 52, fontSize: 12 };
    const there = barPicture(plans.go, box);
    expect(there.turn).toBeCloseTo(there.spans.find((span) => span.kind === 'out')!.to, 9);
    expect(barPicture(plans.oneWay, box).turn).toBeUndefined();
  });

  it('puts home inside its band', () => {
    for (const [, plan] of everyPlan) {
      const { home, band } = barPicture(plan, { width: 620, height: 52, fontSize: 12 });
      expect(home).toBeGreaterThanOrEqual(band.from - 1e-9);
      expect(home).toBeLessThanOrEqual(band.to + 1e-9);
    }
  });

  it('paints the part that eats into the reserve, and only then', () => {
    const box = { width: 620, height: 52, fontSize: 12 };
    expect(barPicture(plans.go, box).touched).toBe('');
    expect(barPicture(plans.noGo, box).touched).not.toBe('');
  });
});

describe('barLabels', () => {
  it.each(everyPlan)('keeps its texts apart and inside the picture: %s', (_, plan) => {
    for (const width of widths) {
      for (const fontSize of [12, 14, 26]) {
        const picture = barPicture(plan, { width, height: 52, fontSize }, plan.full * 0.05);
        const texts = barTexts(plan, NAUTICAL, plan.full * 0.05, 8);
        for (const labels of [
          barLabels(picture, texts, width, fontSize).under,
          tickLabels(picture, texts, width, fontSize),
        ]) {
          for (const one of labels) {
            expect(one.left).toBeGreaterThanOrEqual(0);
            expect(one.left + one.width).toBeLessThanOrEqual(width);
            for (const other of labels) {
              if (one === other || one.row !== other.row) continue;
              expect(one.left + one.width <= other.left || other.left + other.width <= one.left).toBe(true);
            }
          }
        }
      }
    }
  });

  it('always finds room for what is left, even at 280 px', () => {
    const picture = barPicture(plans.go, { width: 280, height: 52, fontSize: 14 });
    const { under } = barLabels(picture, barTexts(plans.go, NAUTICAL, 0, 5), 280, 14);
    expect(under.map((label) => label.key)).toContain('left');
  });
});
