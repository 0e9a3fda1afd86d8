import { describe, expect, it } from 'vitest';
import { measuresFor } from '../../../src/components/units/measures.ts';
import { assumptionText } from '../../../src/components/words/en-assumptions.ts';
import { badCaseText } from '../../../src/components/words/en-bad-case.ts';
import { cautions } from '../../../src/components/words/en-cautions.ts';
import { compassPoint } from '../../../src/components/words/en-compass.ts';
import { fixText } from '../../../src/components/words/en-fixes.ts';
import { payloadText } from '../../../src/components/words/en-payload.ts';
import { problemText } from '../../../src/components/words/en-problems.ts';
import { reasonText } from '../../../src/components/words/en-reasons.ts';
import { regimeText } from '../../../src/components/words/en-regime.ts';
import { reserveRuleText } from '../../../src/components/words/en-reserve-rule.ts';
import { tippingText } from '../../../src/components/words/en-tipping.ts';
import { verdictWhy, verdictWords } from '../../../src/components/words/en-verdict.ts';
import type {
  Assumption,
  BadCaseKind,
  FixCode,
  Measure,
  Payload,
  ReasonCode,
  TippingValue,
  Verdict,
} from '../../../src/core/trip/shapes.ts';

/** Lists every member of a union: the compiler refuses the record when one is missing. */
function everyOne<Code extends string>(codes: Record<Code, true>): Code[] {
  return Object.keys(codes) as Code[];
}

const REASON_CODES = everyOne<ReasonCode>({
  'reserve-broken': true,
  'runs-dry': true,
  'on-bow-tube': true,
  'outside-boat': true,
  'low-in-water': true,
  'low-freeboard': true,
  'water-comes-in': true,
  'one-side-under': true,
  'helm-far': true,
  'too-few-seats': true,
  'odd-weight': true,
  'no-adult': true,
  'bad-case-dry': true,
  'reserve-unsure': true,
  'nothing-usable': true,
  'over-plate-load': true,
  'over-plate-persons': true,
  'over-plate-power': true,
  'over-plate-engine-mass': true,
  'over-category': true,
  'plate-unknown': true,
  'no-plate': true,
  'speed-not-held': true,
  'speed-uncertain': true,
  'hump-not-crossed': true,
  'hump-thin': true,
  'stuck-in-stream': true,
  'outside-method': true,
  'beyond-trials': true,
  porpoising: true,
  'off-balance': true,
  overtrimmed: true,
  'forecast-short': true,
  gusty: true,
  'streams-short': true,
  'wind-against-stream': true,
  'too-shallow': true,
  'shoal-covered': true,
  'swell-unknown': true,
  'departure-unknown': true,
  'refill-not-known': true,
  'crosses-land': true,
  'crosses-keep-out': true,
  'crosses-shoal': true,
  'outside-waters': true,
  'waters-unknown': true,
  'waters-expired': true,
  'waters-not-yet': true,
  'too-rough': true,
  rough: true,
  'over-wind-limit': true,
  'over-wave-limit': true,
  late: true,
  'late-likely': true,
  'after-dark': true,
  'near-dark': true,
  'fill-unknown': true,
  'wind-unknown': true,
  'stream-unknown': true,
  'sea-unknown': true,
  'seat-unknown': true,
  'temperature-unknown': true,
  'nobody-aboard': true,
  'no-helm': true,
});
const FIX_CODES = everyOne<FixCode>({
  'add-fuel': true,
  'shorten-route': true,
  'slow-down': true,
  'leave-behind': true,
  'give-value': true,
  'move-forward': true,
  'move-across': true,
  'draw-round': true,
  wait: true,
  'read-plate': true,
  'smaller-engine': true,
  'ease-speed': true,
  'leave-earlier': true,
});
const ASSUMPTION_CODES = everyOne<Assumption['code']>({
  manoeuvring: true,
  'drawn-factor': true,
  wind: true,
  stream: true,
  sea: true,
  fill: true,
  'fill-gauge': true,
  seat: true,
  'battery-temperature': true,
  'unmeasured-boat': true,
  'measured-boat': true,
  'petrol-density': true,
  'reserve-rule': true,
  'keep-out-season': true,
  'waters-unanswered': true,
  'waters-undated': true,
  'waters-date-unknown': true,
  daylight: true,
  'extra-load-at-centre': true,
  'speed-in-waves': true,
  'sea-from-wind': true,
  'stream-by-tide': true,
  'stream-spread': true,
  refilled: true,
});
const KINDS = everyOne<BadCaseKind>({
  'home-slow': true,
  'home-headwind': true,
  'wind-fresher': true,
  'home-foul-stream': true,
  'home-on-hump': true,
  'less-in-tank': true,
  'cold-battery': true,
});
const MEASURES: Measure[] = [
  'amount',
  'mass',
  'speed',
  'power',
  'time',
  'length',
  'distance',
  'count',
  'share',
  'angle',
];
const STORES = ['fuel', 'charge'] as const;
const SYSTEMS = (['nautical', 'metric', 'imperial'] as const).map((system) => measuresFor(system, 'en'));
const nautical = SYSTEMS[0]!;
const plain = (text: string) => text.replaceAll('\u00a0', ' ');

/** What no sentence on the screen may hold: gaps in a template, words of the code, doubled or lost signs. */
const BROKEN = /undefined|NaN|Infinity|null|\[object|\bstore\b|\( | {2}|\(\)|,\)|\.\.| \.|:\.|: ?$|, ?$/;

describe('every code of a plan', () => {
  const values = [undefined, 0, 1, -0.4, 7.3, 1234, Infinity, -Infinity, Number.NaN];

  it('has a whole sentence for a reason, whatever figures come with it', () => {
    const broken: string[] = [];
    for (const code of REASON_CODES) {
      for (const measure of [undefined, ...MEASURES]) {
        for (const value of values) {
          for (const store of STORES) {
            for (const m of SYSTEMS) {
              for (const more of [{}, { name: 'Gull Ledge', legs: [1], limit: 3 }, { legs: [0, 2, 3], limit: value }]) {
                const reason = { code, level: 'no-go' as const, measure, value, ...more };
                const text = plain(reasonText(reason, m, store));
                if (!/^[A-Z].{8,}\.$/.test(text) || BROKEN.test(text))
                  broken.push(`${code} ${measure} ${value}: ${text}`);
              }
            }
          }
        }
      }
    }
    expect(broken).toEqual([]);
  });

  it('has an order for a fix and a sentence for an assumption', () => {
    for (const measure of [undefined, ...MEASURES]) {
      for (const value of values) {
        for (const store of STORES) {
          for (const code of FIX_CODES) {
            const text = plain(fixText({ code, measure, value }, nautical, store));
            expect(text).toMatch(/^[A-Z].{4,}[^.]$/);
            expect(text).not.toMatch(BROKEN);
          }
          for (const code of ASSUMPTION_CODES) {
            const text = plain(assumptionText({ code, measure, value }, nautical, store));
            expect(text).toMatch(/^[A-Z].{8,}\.$/);
            expect(text).not.toMatch(BROKEN);
          }
        }
      }
    }
  });

  it('has words for verdicts, regimes and bad cases', () => {
    for (const verdict of ['go', 'marginal', 'no-go'] as Verdict[]) {
      expect(verdictWords[verdict]).toMatch(/^[A-Z]/);
      for (const store of STORES) expect(verdictWhy(verdict, store)).toMatch(/\.$/);
    }
    for (const regime of ['displacement', 'hump', 'planing'] as const) expect(regimeText(regime)).not.toBe('');
    for (const kind of KINDS) expect(badCaseText([kind])).not.toMatch(BROKEN);
    expect(cautions()).toHaveLength(3);
  });
});

describe('reasonText', () => {
  it('gives the fuel left and the reserve it is held against', () => {
    const reason = {
      code: 'reserve-broken',
      level: 'no-go',
      measure: 'amount',
      value: 3.1 * 0.745,
      limit: 4 * 0.745,
    } as const;
    expect(plain(reasonText(reason, nautical, 'fuel'))).toBe(
      'The trip is likely to eat into your reserve of fuel (left at home 3.1 L, reserve 4.0 L).',
    );
    expect(plain(reasonText({ ...reason, value: -1.2 * 0.745 }, nautical, 'fuel'))).toBe(
      'The fuel is unlikely to last to the end (short by 1.2 L, reserve 4.0 L).',
    );
  });

  it('speaks of charge aboard an electric boat', () => {
    const reason = {
      code: 'runs-dry',
      level: 'no-go',
      measure: 'amount',
      value: 1.9 * 3.6e6,
      limit: 1.5 * 3.6e6,
    } as const;
    expect(plain(reasonText(reason, nautical, 'charge'))).toBe(
      'More than one such trip in ten would run out of charge (needs 1.90 kWh, usable 1.50 kWh).',
    );
  });

  it('names legs from one, the zone, and the side of a list', () => {
    expect(
      plain(reasonText({ code: 'crosses-land', level: 'no-go', name: 'Otter Holm', legs: [1, 3] }, nautical, 'fuel')),
    ).toBe('The route crosses land (Otter Holm) on legs 2 and 4.');
    const bounce = { code: 'porpoising', level: 'note', legs: [6, 0, 1, 2, 3, 5] } as const;
    expect(reasonText(bounce, nautical, 'fuel')).toMatch(/on legs 1 to 4, 6 and 7\.$/);
    const list = { code: 'off-balance', level: 'note', measure: 'length', value: -0.12, limit: 0.08 } as const;
    expect(plain(reasonText(list, nautical, 'fuel'))).toBe('The load sits too far to port (0.12 m, limit 0.08 m).');
    const shoal = { code: 'crosses-shoal', level: 'marginal', measure: 'length', legs: [0] } as const;
    expect(plain(reasonText({ ...shoal, value: 0.3 }, nautical, 'fuel'))).toMatch(
      /on leg 1; dries 0.3 m at low water\.$/,
    );
    expect(plain(reasonText({ ...shoal, value: -0.6 }, nautical, 'fuel'))).toMatch(/; 0.6 m deep at low water\.$/);
  });

  it('tells the bad case in words', () => {
    const reason = { code: 'bad-case-dry', level: 'marginal', name: 'home-slow home-headwind less-in-tank' } as const;
    expect(reasonText(reason, nautical, 'fuel')).toBe(
      'On a bad day, home at low speed, against a headwind and with less aboard to start with, the fuel does not last to the end.',
    );
  });

  it('tells a force of wind from a height of waves', () => {
    const wind = { code: 'over-category', level: 'no-go', measure: 'count', value: 6, limit: 4, name: 'wind' } as const;
    expect(reasonText(wind, nautical, 'fuel')).toMatch(/\(force 6, limit force 4\)\.$/);
  });
});

describe('fixText, tippingText and payloadText', () => {
  it('say what to change, to how much', () => {
    expect(plain(fixText({ code: 'add-fuel', measure: 'amount', value: 3.2 * 0.745 }, nautical, 'fuel'))).toBe(
      'Take 3.2 L more',
    );
    expect(plain(fixText({ code: 'leave-behind', measure: 'count', value: 2 }, nautical, 'fuel'))).toBe(
      'Leave 2 people ashore',
    );
    expect(plain(fixText({ code: 'move-across', measure: 'length', value: -0.1 }, nautical, 'fuel'))).toBe(
      'Move weight to port until the balance shifts 0.1 m',
    );
    expect(plain(fixText({ code: 'slow-down', measure: 'speed', value: 1852 / 600 }, nautical, 'fuel'))).toBe(
      'Plan 6.0 kn through the water',
    );
  });

  it('say where the answer tips', () => {
    const knobs: TippingValue['knob'][] = ['crew-mass', 'consumption', 'wind', 'fill'];
    for (const knob of knobs) {
      for (const direction of ['up', 'down'] as const) {
        const text = tippingText(
          { knob, from: 'go', to: 'marginal', value: 1.2, now: 1, direction },
          nautical,
          'charge',
        );
        expect(plain(text)).toMatch(/^(With|If|In) .+, the answer becomes: Not sure enough$/);
        expect(plain(text)).not.toMatch(BROKEN);
      }
    }
    expect(
      plain(
        tippingText(
          { knob: 'consumption', from: 'go', to: 'marginal', value: 1.18, now: 1, direction: 'up' },
          nautical,
          'fuel',
        ),
      ),
    ).toBe('If the engine uses 18% more fuel than expected, the answer becomes: Not sure enough');
  });

  it('say how much may still come aboard, and that nobody knows without a plate', () => {
    const binds: Payload['binds'][] = [
      'plate',
      'persons',
      'rule',
      'floating',
      'freeboard',
      'stability',
      'planing',
      'speed',
      'reserve',
      'search-limit',
      'no-plate',
    ];
    for (const bound of binds) {
      for (const extra of [undefined, -34, 0, 85, Infinity, Number.NaN]) {
        const text = payloadText({ extra, binds: bound, counted: 210 }, nautical, 'fuel');
        expect(plain(text)).not.toMatch(BROKEN);
      }
    }
    expect(plain(payloadText({ extra: -34, binds: 'plate', counted: 434, allowed: 400 }, nautical, 'fuel'))).toBe(
      "Leave 34 kg ashore: the boat's plate sets the limit.",
    );
    expect(plain(payloadText({ extra: -200, binds: 'reserve', counted: 210 }, nautical, 'fuel'))).toBe(
      'Less weight alone does not mend it: even then the fuel is not enough for the reserve or a bad day.',
    );
    expect(payloadText({ extra: undefined, binds: 'no-plate', counted: 210 }, nautical, 'fuel')).toMatch(/not known/);
  });
});

it('names reserve rules, compass points and problems', () => {
  expect(reserveRuleText({ kind: 'share', share: 0.25 }, nautical)).toBe('25% kept');
  expect(plain(reserveRuleText({ kind: 'minutes', minutes: 30 }, nautical))).toBe('30 min of running kept');
  expect([0, 45, 200, 359, -45, 720].map(compassPoint)).toEqual(['N', 'NE', 'SSW', 'N', 'NW', 'N']);
  expect(problemText({ code: 'x', path: 'load', message: 'The load is missing.' })).toBe('The load is missing.');
});
