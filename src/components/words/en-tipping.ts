import type { TippingValue } from '../../core/trip/shapes.ts';
import type { Measures, StoreKind } from '../units/measures.ts';
import { holderOf } from './en-pieces.ts';
import { verdictWords } from './en-verdict.ts';
import { spoken } from './spoken.ts';

type TippingText = (side: string, tipping: TippingValue, m: Measures, store: StoreKind) => string;

export const tippingWords = spoken('tippingWords', {
  knobs: {
    'crew-mass': (side, { value, now }, m) =>
      `With ${m.show('mass', value)} of people and gear ${side} (now ${m.show('mass', now)})`,
    consumption: (_side, { value, now }, m, store) =>
      `If the engine uses ${m.show('share', Math.abs(value / now - 1))} ${value < now ? 'less' : 'more'} ${store} than expected`,
    wind: (side, { value, now }, m) => `In a wind of ${m.show('speed', value)} ${side} (now ${m.show('speed', now)})`,
    stream: (side, { value, now }, m) =>
      `In a stream of ${m.show('speed', value)} ${side} (now ${m.show('speed', now)})`,
    sea: (side, { value, now }, m) => `In waves of ${m.show('length', value)} ${side} (now ${m.show('length', now)})`,
    departure: (_side, { value, from, direction }, m) => {
      const way = direction === 'down' ? 'earlier' : 'later';
      if (value === 0) return `If you leave any ${way}`;
      return `If you leave ${from === 'no-go' ? '' : 'more than '}${m.time(Math.abs(value))} ${way}`;
    },
    fill: (side, { value, now }, m, store) =>
      `With the ${holderOf(store)} ${m.show('share', value)} full ${side} (now ${m.show('share', now)})`,
  } satisfies Record<TippingValue['knob'], TippingText>,
  sides: { up: 'or more', down: 'or less' } satisfies Record<TippingValue['direction'], string>,
  becomes: (what: string, verdict: string) => `${what}, the answer becomes: ${verdict}`,
});

/** "With 310 kg of people and gear or more (now 255 kg), the answer becomes: Not like this". */
export function tippingText(tipping: TippingValue, m: Measures, store: StoreKind): string {
  const { knobs, sides, becomes } = tippingWords;
  const text: TippingText = knobs[tipping.knob];
  return becomes(text(sides[tipping.direction], tipping, m, store), verdictWords[tipping.to]);
}
