import type { Payload } from '../../core/trip/shapes.ts';
import type { Measures, StoreKind } from '../units/measures.ts';
import { spoken } from './spoken.ts';

/** How much more may come aboard; `even` is what still stands against it with hardly anything left aboard. */
export const payloadReasonWords = spoken('payloadReasonWords', {
  binds: {
    plate: () => "the boat's plate sets the limit",
    persons: () => 'the plate allows fewer people',
    rule: () => 'the strictest published rule for such a boat without a plate sets the limit',
    freeboard: () => 'with more the edge comes too close to the water',
    stability: () => 'with more the side goes under when everybody is on it',
    floating: () => 'with more the boat floats too low, or is heavier than the calculation was made for',
    planing: () => 'with more the boat does not plane',
    speed: () => 'with more the planned speed is not held',
    reserve: (what) => `with more the ${what} is not enough for the reserve or a bad day`,
    'search-limit': () => 'no more than that was tried',
    'no-plate': () => 'no plate was read, and no rule or figure of the boat gives a limit instead',
  } satisfies Record<Payload['binds'], (what: StoreKind) => string>,
  even: {
    plate: () => "the boat's plate sets the limit",
    persons: () => 'the plate allows fewer people',
    rule: () => 'the strictest published rule for such a boat without a plate sets the limit',
    freeboard: () => 'even then the edge comes too close to the water',
    stability: () => 'even then the side goes under when everybody is on it',
    floating: () => 'even then the boat floats too low, or is heavier than the calculation was made for',
    planing: () => 'even then the boat does not plane',
    speed: () => 'even then the planned speed is not held',
    reserve: (what) => `even then the ${what} is not enough for the reserve or a bad day`,
    'search-limit': () => 'no more than that was tried',
    'no-plate': () => 'no plate was read, and no rule or figure of the boat gives a limit instead',
  } satisfies Record<Payload['binds'], (what: StoreKind) => string>,
  notYet: 'How much more may come aboard has not been worked out yet.',
  unknown: (why: string) => `How much more may come aboard is not known: ${why}.`,
  hardly: (why: string) => `Less weight alone does not mend it: ${why}.`,
  ashore: (mass: string, why: string) => `Leave ${mass} ashore: ${why}.`,
  more: (mass: string, why: string) => `${mass} more may come aboard: ${why}.`,
});

/** To leave more than this share of all weight ashore is no advice. */
const HARDLY_ANYTHING = 0.75;

/** How much more may come aboard, or must stay ashore, and what decides it. */
export function payloadText(payload: Payload, m: Measures, store: StoreKind): string {
  const { binds, extra } = payload;
  const words = payloadReasonWords;
  const why = words.binds[binds](store);
  if (extra === undefined || Number.isNaN(extra)) {
    return binds === 'search-limit' ? words.notYet : words.unknown(why);
  }
  if (-extra > HARDLY_ANYTHING * payload.counted) return words.hardly(words.even[binds](store));
  if (extra < 0) return words.ashore(m.show('mass', -extra), why);
  return words.more(m.show('mass', extra), why);
}
