import { describe, expect, it } from 'vitest';
import { judgeLight } from '../../../src/core/trip/judge-light.ts';
import type { Prepared } from '../../../src/core/trip/prepare.ts';
import { HOUR, MINUTE } from '../../../src/core/units/convert.ts';
import { secondsOf } from '../../../src/core/water/clock.ts';

// Here the sun rises at 06:19:49 and sets at 17:23:41 UTC on 10 October 2026.
const SOUTH_COAST = { lat: 50.77, lon: -1.3 };

interface Made {
  readonly departs?: string | undefined;
  readonly home?: string;
  readonly place?: { lat: number; lon: number };
  readonly possible?: boolean;
}

function judged({ departs, home = departs!, place = SOUTH_COAST, possible = true }: Made) {
  const trip = { conditions: { departure: departs }, route: { waypoints: [place] } };
  const slowest = departs === undefined ? HOUR : secondsOf(home) - secondsOf(departs);
  return judgeLight({ trip } as unknown as Prepared, { run: { possible }, slowest } as never);
}

const day = (time: string) => `2026-10-10T${time}Z`;

describe('the light of a trip', () => {
  it('says nothing without a date, of a trip that cannot be sailed, or with more than an hour in hand', () => {
    expect(judged({})).toEqual([]);
    expect(judged({ departs: day('08:00:00'), home: day('20:00:00'), possible: false })).toEqual([]);
    expect(judged({ departs: day('08:00:00'), home: day('16:00:00') })).toEqual([]);
  });

  it('is marginal within the hour before sunset, and mended by leaving as much earlier as is lacking', () => {
    // Home at 17:00: 23:41 in hand, 36:19 short.
    const [reason, ...more] = judged({ departs: day('08:00:00'), home: day('17:00:00') });
    expect(more).toEqual([]);
    expect(reason).toMatchObject({ code: 'near-dark', level: 'marginal', measure: 'time', limit: HOUR });
    expect(Math.abs(reason!.value! - (23 * MINUTE + 41))).toBeLessThan(30);
    const [earlier, shorter] = reason!.fixes!;
    expect(earlier).toEqual({ code: 'leave-earlier', measure: 'time', value: HOUR - reason!.value! });
    expect(shorter).toEqual({ code: 'shorten-route' });
  });

  it('is a no-go after sunset, and needs the whole hour more to be right', () => {
    const [reason] = judged({ departs: day('12:00:00'), home: day('17:33:41') });
    expect(reason).toMatchObject({ code: 'after-dark', level: 'no-go', measure: 'time', limit: 0 });
    expect(Math.abs(reason!.value! + 10 * MINUTE)).toBeLessThan(30);
    expect(reason!.fixes![0]).toEqual({ code: 'leave-earlier', measure: 'time', value: HOUR - reason!.value! });
  });

  it('does not advise to leave before sunrise', () => {
    const fixes = (departs: string) =>
      judged({ departs: day(departs), home: day('17:00:00') })[0]!.fixes!.map(({ code }) => code);
    // 36:19 earlier than 07:00 the sun is just up, than 06:54 it is not.
    expect(fixes('07:00:00')).toEqual(['leave-earlier', 'shorten-route']);
    expect(fixes('06:54:00')).toEqual(['shorten-route']);
  });

  it('is a no-go without a figure where the trip starts in the dark: wait', () => {
    const wait = [{ code: 'after-dark', level: 'no-go', fixes: [{ code: 'wait' }] }];
    expect(judged({ departs: day('05:00:00'), home: day('12:00:00') })).toEqual(wait);
    const north = { lat: 69.65, lon: 18.96 };
    expect(judged({ departs: '2026-12-21T11:00:00Z', home: '2026-12-21T12:00:00Z', place: north })).toEqual(wait);
  });

  it('is never wanting in the polar day', () => {
    const north = { lat: 69.65, lon: 18.96 };
    expect(judged({ departs: '2026-06-21T22:00:00Z', home: '2026-06-22T00:30:00Z', place: north })).toEqual([]);
  });
});
