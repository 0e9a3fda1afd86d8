import { describe, expect, it } from 'vitest';
import { balanceFigures, keyFigures, unsettled } from '../../../src/components/trip-details/key-figures.ts';
import { NAUTICAL } from '../../../src/components/units/default-measures.ts';
import type { Plan } from '../../../src/core/trip/shapes.ts';
import { electric, go, marginal, noGo, stuck } from '../answer/fixtures.ts';

const plain = (text: string) => text.replaceAll('\u00a0', ' ');
const departure = '2026-07-15T09:30:00+01:00';

function figures(plan: Plan) {
  return keyFigures(plan, departure, NAUTICAL).map((key) => ({
    ...key,
    figure: plain(key.figure),
    notes: plain(key.notes.join(' ')),
  }));
}

describe('keyFigures', () => {
  it('tells how much more may come aboard and what the plate counts', () => {
    const [payload] = figures(go);
    expect(payload).toMatchObject({ title: 'Still to come aboard', figure: '64 kg' });
    expect(payload!.notes).toContain('242 kg of 480 kg');
  });

  it('tells what to leave ashore as a weight, not as a negative one', () => {
    const [payload] = figures(noGo);
    expect(payload).toMatchObject({ title: 'To leave ashore', figure: '32 kg', tone: 'stop' });
  });

  it('does not guess a payload nobody knows', () => {
    expect(figures(marginal)[0]!.figure).toBe('not known');
  });

  it('gives the latest time to turn where the trip does not fit, and says where it does', () => {
    // 2100 s after 09:30 it is 10:05.
    expect(figures(noGo)[1]).toMatchObject({ figure: '7.9 NM' });
    expect(figures(noGo)[1]!.notes).toContain('Turn by 10:05 at the latest');
    expect(figures(go)[1]!.notes).toContain('the whole trip fits');
  });

  it('tells from where the most economical speed still brings the boat home with the reserve', () => {
    const slow = { distance: 18_520, time: 3600, at: { lat: 10, lon: 20 }, onRoute: true };
    expect(figures({ ...noGo, turnBackSlow: slow })[1]!.notes).toContain(
      'At the most economical speed the reserve still lasts home from 10.0 NM, at 10:30.',
    );
    const anywhere = figures({ ...noGo, turnBackSlow: { ...slow, onRoute: false } })[1]!.notes;
    expect(anywhere).toContain('from anywhere on this route');
    expect(figures(noGo)[1]!.notes).not.toContain('economical');
  });

  it('does not send a crew back round a loop whose way on keeps the reserve', () => {
    const loop = { ...go, turnBack: { distance: 9000, time: 1700, at: { lat: 10, lon: 20 }, onRoute: true } };
    expect(figures(loop)[1]!.notes).toContain(
      'From 09:58 on, going back the same way would break the reserve; going on keeps it.',
    );
  });

  it('gives the range both ways and survives one without end or of nothing', () => {
    expect(figures(go)[2]).toMatchObject({ figure: '9.3 NM' });
    expect(figures(go)[2]!.notes).toContain('19.4 NM one way');
    expect(figures(electric)[2]!.notes).toContain('no end to it one way');
    expect(figures(stuck)[2]!.figure).toBe('none');
  });

  it('tells how full it must be, or that full is not enough', () => {
    // 82 % of 12 L.
    expect(figures(go)[3]!.figure).toBe('82%, 9.8 L');
    expect(figures(noGo)[3]).toMatchObject({ figure: 'more than fits', tone: 'stop' });
  });

  it('waits for what a plan in a hurry leaves out instead of calling it impossible', () => {
    const quick: Plan = {
      ...go,
      payload: { extra: undefined, binds: 'search-limit', counted: 242 },
      tipping: [],
      fillNeeded: undefined,
    };
    expect(unsettled(quick)).toBe(true);
    expect(figures(quick).map((key) => key.tone)).toEqual(['waiting', undefined, undefined, 'waiting']);
  });
});

describe('balanceFigures', () => {
  const side = (lateral: number) =>
    plain(Object.fromEntries(balanceFigures({ ...go, balance: { ...go.balance, lateral } }, NAUTICAL))['To one side']!);

  it('names the side the load leans to', () => {
    expect(side(0.12)).toBe('0.12 m to starboard');
    expect(side(-0.12)).toBe('0.12 m to port');
    expect(side(0.001)).toBe('in the middle');
  });

  it('counts one person as one', () => {
    const alone = { ...go, balance: { ...go.balance, persons: 1 } };
    expect(plain(balanceFigures(alone, NAUTICAL)[1]![1])).toBe('1 person, 198 kg with gear');
  });
});
