import { describe, expect, it } from 'vitest';
import { deskFindings, deskVerdict } from '../../../src/core/hire/desk-findings.ts';
import { hireState, nextChange, outFirst } from '../../../src/core/hire/hire-state.ts';
import { departed, dueBack, fleetEnd, slipEnd } from '../../../src/core/hire/hire-times.ts';
import { conditionsNow } from '../../../src/core/hire/morning-now.ts';
import { aHire, aMorning, MORNING, NOON } from './examples.ts';

const MINUTE = 60;
const HOUR = 3600;

describe('dueBack', () => {
  it('counts hours from the actual departure, not from the check', () => {
    expect(dueBack({ kind: 'after', seconds: 2 * HOUR }, NOON + 20 * MINUTE, undefined)).toBe(NOON + 140 * MINUTE);
  });

  it('is the agreed time, however late the boat leaves', () => {
    const rule = { kind: 'at', time: NOON + 3 * HOUR } as const;
    expect(dueBack(rule, NOON + HOUR, undefined)).toBe(NOON + 3 * HOUR);
  });

  it('is never after the last return', () => {
    expect(dueBack({ kind: 'after', seconds: 6 * HOUR }, NOON, NOON + 4 * HOUR)).toBe(NOON + 4 * HOUR);
  });
});

describe('slipEnd', () => {
  const asked = { now: NOON, morning: aMorning(), fleet: { until: '2027-12-31' }, dayEnd: NOON + 12 * HOUR };

  it('is as long as the desk says a slip may wait', () => {
    expect(slipEnd(asked)).toBe(NOON + 30 * MINUTE);
  });

  it('is cut where the morning expires, at the last return and at the end of the day', () => {
    expect(slipEnd({ ...asked, morning: aMorning({ until: NOON + 5 * MINUTE }) })).toBe(NOON + 5 * MINUTE);
    expect(slipEnd({ ...asked, morning: aMorning({ lastReturn: NOON + 4 * MINUTE }) })).toBe(NOON + 4 * MINUTE);
    expect(slipEnd({ ...asked, dayEnd: NOON + 3 * MINUTE })).toBe(NOON + 3 * MINUTE);
  });

  it('still gives time to leave when the morning has expired already', () => {
    expect(slipEnd({ ...asked, morning: aMorning({ until: NOON - 1 }) })).toBeGreaterThan(NOON);
  });
});

describe('departed', () => {
  it('starts the clock at the actual departure', () => {
    const left = departed(aHire(), NOON + 10 * MINUTE);
    expect(left).toMatchObject({ leftAt: NOON + 10 * MINUTE, due: NOON + 10 * MINUTE + 2 * HOUR });
  });

  it('refuses a slip past its time and a boat that has left', () => {
    expect(departed(aHire(), NOON + 30 * MINUTE)).toBeDefined();
    expect(departed(aHire(), NOON + 30 * MINUTE + 1)).toBeUndefined();
    expect(departed(aHire({ leftAt: NOON, due: NOON + HOUR }), NOON)).toBeUndefined();
  });
});

describe('fleetEnd', () => {
  it('is the end of that day where the desk lies', () => {
    expect(fleetEnd({ until: '2027-06-19' }, -2 * HOUR)).toBe(Date.parse('2027-06-19T23:59:59-02:00') / 1000);
  });
});

describe('hireState', () => {
  const out = aHire({ leftAt: NOON, due: NOON + 2 * HOUR });

  it('waits for its departure until the slip runs out', () => {
    expect(hireState(aHire(), NOON).is).toBe('checked');
    expect(hireState(aHire(), NOON + 31 * MINUTE).is).toBe('stale');
  });

  it('is out, then due soon, then overdue from the minute it was due', () => {
    expect(hireState(out, NOON + HOUR).is).toBe('out');
    expect(hireState(out, NOON + 110 * MINUTE).is).toBe('due-soon');
    expect(hireState(out, NOON + 2 * HOUR)).toEqual({ is: 'overdue', seconds: 0, step: 'call' });
  });

  it('asks round after half an hour and raises the alarm after one', () => {
    expect(hireState(out, NOON + 150 * MINUTE)).toMatchObject({ step: 'ask-round' });
    expect(hireState(out, NOON + 180 * MINUTE)).toMatchObject({ step: 'raise-alarm' });
  });

  it('changes at the very second: of the slip, a quarter of an hour before it is due, and of each step', () => {
    const slip = aHire();
    expect(hireState(slip, slip.validUntil)).toEqual({ is: 'checked', seconds: 0 });
    expect(hireState(slip, slip.validUntil + 1)).toEqual({ is: 'stale' });
    const due = NOON + 2 * HOUR;
    expect(hireState(out, due - 15 * MINUTE - 1)).toEqual({ is: 'out', seconds: 15 * MINUTE + 1 });
    expect(hireState(out, due - 15 * MINUTE)).toEqual({ is: 'due-soon', seconds: 15 * MINUTE });
    expect(hireState(out, due - 1)).toEqual({ is: 'due-soon', seconds: 1 });
    expect(hireState(out, due + 30 * MINUTE - 1)).toMatchObject({ step: 'call' });
    expect(hireState(out, due + 60 * MINUTE - 1)).toMatchObject({ step: 'ask-round', seconds: 60 * MINUTE - 1 });
  });

  it('is over once the boat is back, late or not', () => {
    expect(hireState({ ...out, returnedAt: NOON + 4 * HOUR }, NOON + 5 * HOUR).is).toBe('returned');
  });
});

describe('nextChange', () => {
  const out = aHire({ leftAt: NOON, due: NOON + 2 * HOUR });

  it('is never further than the next state', () => {
    let now = NOON;
    const seen: string[] = [];
    for (let next: number | undefined = now; next !== undefined; next = nextChange([out], now)) {
      now = next;
      const state = hireState(out, now);
      seen.push(state.is === 'overdue' ? state.step : state.is);
    }
    expect(seen).toEqual(['out', 'due-soon', 'call', 'ask-round', 'raise-alarm']);
  });

  it('of a slip comes the second after it runs out, and of several hires the first to come counts', () => {
    const slip = aHire();
    expect(nextChange([slip], NOON)).toBe(slip.validUntil + 1);
    expect(nextChange([slip], slip.validUntil + 1)).toBeUndefined();
    expect(nextChange([out, slip], NOON)).toBe(Math.min(NOON + 105 * MINUTE, slip.validUntil + 1));
  });

  it('is nothing for boats that are back', () => {
    expect(nextChange([{ ...out, returnedAt: NOON }], NOON)).toBeUndefined();
  });
});

describe('outFirst', () => {
  it('lists who is due first, without those back or still ashore', () => {
    const late = aHire({ id: 'late', leftAt: NOON, due: NOON + HOUR });
    const later = aHire({ id: 'later', leftAt: NOON, due: NOON + 2 * HOUR });
    const back = aHire({ id: 'back', leftAt: NOON, due: NOON + HOUR, returnedAt: NOON + HOUR });
    expect(outFirst([later, back, aHire(), late]).map(({ id }) => id)).toEqual(['late', 'later']);
  });
});

describe('the morning', () => {
  it('counts until it expires, and then wind, stream and sea are not known', () => {
    const morning = aMorning();
    expect(conditionsNow(morning, NOON)).toEqual(MORNING);
    expect(conditionsNow(morning, morning.until + 1)).toEqual({ water: 'sea' });
    expect(conditionsNow(morning, morning.setAt - 1)).toEqual({ water: 'sea' });
    expect(conditionsNow(undefined, NOON)).toEqual({ water: 'sea' });
  });
});

describe('what a desk knows against an answer', () => {
  const fleet = { surveyed: '2027-04-01', until: '2027-10-31', area: 'The bay' };
  const situation = {
    now: NOON,
    offset: 0,
    fleet,
    morning: aMorning(),
    allowed: 2 * HOUR,
    boatOut: false,
    routeSet: false,
  };

  it('counts the morning and the fleet to their last second, and from their first', () => {
    const morning = aMorning();
    expect(conditionsNow(morning, morning.until)).toEqual(MORNING);
    expect(conditionsNow(morning, morning.setAt)).toEqual(MORNING);
    const day = { ...fleet, surveyed: '2027-06-19', until: '2027-06-19' };
    const codes = (now: number) =>
      deskFindings({ ...situation, now, offset: HOUR, fleet: day, morning: aMorning({ setAt: now, until: now }) }).map(
        ({ code }) => code,
      );
    const midnight = Date.parse('2027-06-19T00:00:00+01:00') / 1000;
    expect(codes(midnight - 1)).toEqual(['fleet-not-yet']);
    expect(codes(midnight)).toEqual([]);
    expect(codes(midnight + 24 * HOUR - 1)).toEqual([]);
    expect(codes(midnight + 24 * HOUR)).toEqual(['fleet-expired']);
  });

  it('lets a set route do without a named area, and the worse of two findings rules', () => {
    expect(deskFindings({ ...situation, routeSet: true, fleet: { ...fleet, area: undefined } })).toEqual([]);
    expect(deskFindings({ ...situation, allowed: 1 })).toEqual([]);
    expect(deskVerdict('marginal', [])).toBe('marginal');
    expect(deskVerdict('go', [{ code: 'area-unnamed', level: 'note' }])).toBe('go');
  });

  it('is nothing when all was set and is in date', () => {
    expect(deskFindings(situation)).toEqual([]);
    expect(deskVerdict('go', [])).toBe('go');
  });

  it.each([
    ['morning-missing', { morning: undefined }, 'marginal'],
    ['morning-expired', { morning: aMorning({ until: NOON - 1 }) }, 'marginal'],
    ['fleet-expired', { fleet: { ...fleet, until: '2027-05-31' } }, 'marginal'],
    ['fleet-not-yet', { fleet: { ...fleet, surveyed: '2027-08-01' } }, 'marginal'],
    ['area-unnamed', { fleet: { ...fleet, area: undefined } }, 'marginal'],
    ['no-time-left', { allowed: 0 }, 'no-go'],
    ['boat-out', { boatOut: true }, 'no-go'],
  ] as const)('%s is told and keeps the answer from being a plain go', (code, change, level) => {
    const found = deskFindings({ ...situation, ...change });
    expect(found).toEqual([{ code, level }]);
    expect(deskVerdict('go', found)).toBe(level);
    expect(deskVerdict('no-go', found)).toBe('no-go');
  });
});
