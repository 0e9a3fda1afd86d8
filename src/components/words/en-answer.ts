import type { Reason } from '../../core/trip/shapes.ts';
import type { StoreKind } from '../units/measures.ts';
import { spoken } from './spoken.ts';

/** The sentences of the answer; `home` is false for a trip that ends elsewhere. */
export const answerWords = spoken('answerWords', {
  none: 'No answer yet',
  noneHint: 'Give the boat, the load and a route, and it shows here.',
  levels: { 'no-go': 'What stands against it', marginal: 'What leaves doubt', note: 'Good to know' } satisfies Record<
    Reason['level'],
    string
  >,
  more: (count: string) => `${count} more`,
  announced: (verdict: string, left: string) => `${verdict}: ${left} left at home.`,
  kept: (reserve: string) => `reserve ${reserve}.`,
  noAmount: (store: StoreKind, home: boolean) =>
    `No amount of ${store} gets this trip ${home ? 'home' : 'to its end'}.`,
  shortOf: (amount: string, home: boolean, kept: string) =>
    `${amount} short of getting ${home ? 'home' : 'there'}; ${kept}`,
  upTo: (amount: string) => `anything up to ${amount}`,
  shortTo: (short: string, left: string) => `from ${short} short to ${left}`,
  left: (amount: string, home: boolean, band: string, kept: string) =>
    `${amount} left ${home ? 'at home' : 'at the end'}, ${band} likely; ${kept}`,
  noWayHome: 'no way home',
  leftShort: (amount: string) => `${amount} left`,
  missingShort: (amount: string) => `${amount} short`,
  tooFar: (distance: string) => `${distance} in all, more than can be sailed as planned.`,
  took: (time: string, distance: string) => `${time} and ${distance}`,
  inAll: (took: string) => `${took} in all.`,
  arrives: (clock: string, home: boolean, took: string) => `${home ? 'Home' : 'There'} at ${clock}, after ${took}.`,
  nearlyAll: 'In nearly all such trips the reserve would be touched.',
  touched: (ofHundred: number) => `In about ${ofHundred} of 100 such trips the reserve would be touched.`,
  badDay: 'On a bad day',
  badDayOf: (what: string) => `On a bad day, ${what}`,
  badNever: (when: string, home: boolean) => `${when}: the boat does not get ${home ? 'home' : 'there'} at all.`,
  badShort: (when: string, amount: string) => `${when}: ${amount} short, so it does not last.`,
  badLeft: (when: string, amount: string) => `${when}: ${amount} left.`,
  badLeftAfter: (when: string, amount: string, time: string) => `${when}: ${amount} left after ${time}.`,
});
