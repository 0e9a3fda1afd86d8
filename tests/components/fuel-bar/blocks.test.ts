import { describe, expect, it } from 'vitest';
import { barBlocks, mergeThin } from '../../../src/components/fuel-bar/blocks.ts';
import * as plans from '../answer/fixtures.ts';

const { litre } = plans;
const everyPlan = Object.entries({
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

describe('barBlocks', () => {
  it.each(everyPlan)('fills the bar from full to empty without a gap: %s', (_, plan) => {
    for (const unusable of [0, plan.full * 0.05]) {
      const inTank = barBlocks(plan, unusable).filter((block) => block.kind !== 'short');
      let at = 0;
      for (const block of inTank) {
        expect(block.from).toBe(at);
        expect(block.to).toBeGreaterThan(block.from);
        at = block.to;
      }
      expect(at).toBe(plan.full);
    }
  });

  it('starts with what is not filled: a 12 L tank with 8.1 L usable and 0.6 L out of reach has 3.3 L of it', () => {
    const [first] = barBlocks(plans.marginal, litre(0.6));
    expect(first!.kind).toBe('unfilled');
    expect(first!.to).toBeCloseTo(litre(3.3), 9);
  });

  it('follows the trip: out, then home, then what is left, then the reserve, then what cannot be used', () => {
    const kinds = barBlocks(plans.go, litre(0.6)).map((block) => block.kind);
    expect(kinds.filter((kind, i) => kind !== kinds[i - 1])).toEqual([
      'unfilled',
      'manoeuvring',
      'out',
      'home',
      'manoeuvring',
      'spare',
      'reserve',
      'unusable',
    ]);
  });

  it('gives each leg its own use', () => {
    const third = barBlocks(plans.go).find((block) => block.legs?.[0] === 2)!;
    // 2.4 NM out at 0.385 L/NM.
    expect(third.to - third.from).toBeCloseTo(litre(2.4 * 0.385), 9);
  });

  it('puts the level at home where plan and last block agree', () => {
    const spare = barBlocks(plans.go).find((block) => block.kind === 'spare')!;
    expect(plans.go.full - spare.from).toBeCloseTo(plans.go.left.median, 9);
  });

  it('shows only what is left of a reserve that the trip eats into', () => {
    const blocks = barBlocks(plans.noGo);
    const reserve = blocks.find((block) => block.kind === 'reserve')!;
    expect(blocks.some((block) => block.kind === 'spare')).toBe(false);
    expect(reserve.to - reserve.from).toBeCloseTo(plans.noGo.left.median, 9);
  });

  it('puts a shortfall past the empty end', () => {
    const short = barBlocks(plans.overflow, litre(0.6)).at(-1)!;
    expect(short.kind).toBe('short');
    expect(short.from).toBe(plans.overflow.full);
    expect(short.to - short.from).toBeCloseTo(-plans.overflow.left.median, 9);
  });

  it('makes a need without end a shortfall without end', () => {
    expect(barBlocks(plans.stuck).at(-1)).toMatchObject({ kind: 'short', to: Infinity });
  });

  it('shows nothing of a trip that cannot start, but what it lacks', () => {
    expect(barBlocks(plans.dry).map((block) => block.kind)).toEqual(['unfilled', 'short']);
  });
});

describe('mergeThin', () => {
  const blocks = barBlocks(plans.manyLegs);
  const least = plans.manyLegs.full / 100;
  const merged = mergeThin(blocks, least);

  it('joins thin stretches and loses none of them', () => {
    expect(blocks.filter((block) => block.legs)).toHaveLength(200);
    const legs = merged.flatMap((block) => (block.legs ? [block.legs] : []));
    expect(legs.length).toBeLessThan(60);
    expect(legs[0]![0]).toBe(0);
    expect(legs.at(-1)![1]).toBe(199);
    for (let i = 1; i < legs.length; i++) expect(legs[i]![0]).toBe(legs[i - 1]![1] + 1);
  });

  it('leaves no stretch thinner than asked', () => {
    for (const block of merged) if (block.legs) expect(block.to - block.from).toBeGreaterThanOrEqual(least);
  });

  it('keeps the way out apart from the way home', () => {
    const [out, home] = mergeThin(blocks, plans.manyLegs.full).filter((block) => block.legs);
    expect([out!.kind, home!.kind]).toEqual(['out', 'home']);
    expect(out!.legs).toEqual([0, 99]);
    expect(home!.legs).toEqual([100, 199]);
  });
});
