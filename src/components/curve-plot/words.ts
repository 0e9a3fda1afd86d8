import type { Curve } from '../../core/curve/shapes.ts';
import type { StoreKind } from '../units/measures.ts';
import { spoken } from '../words/spoken.ts';

/** What this element says, in English. */
export const curveWords = spoken('curveWords', {
  empty: 'How much fuel or charge each speed takes shows here once there is a boat and a load.',
  title: (mode: 'distance' | 'hour', store: string) =>
    mode === 'distance'
      ? `${store} per distance against speed through the water`
      : `${store} per hour against speed through the water`,
  store: { fuel: 'Fuel', charge: 'Charge' },
  perDistance: 'Per distance',
  perHour: 'Per hour',
  shown: 'What is drawn',
  trim: 'Trim',
  trimTitle: (from: string, to: string) => `Trim from ${from} to ${to} over the same speeds`,
  reader: 'Speed to read off',
  readerHelp: 'Point at the curve, or move along it with the arrow keys.',
  table: 'The curve as a table',
  speed: 'Speed through water',
  use: 'Use',
  likely: 'Likely',
  flow: 'Flow',
  rpm: 'rpm',
  regime: 'Regime',
  /** Short, as they stand in the plot. */
  zones: { displacement: 'displacement', hump: 'hump', planing: 'planing' },
  notHeld: 'not held',
  limits: { power: 'full throttle', revs: 'the rev limit', battery: 'what the battery gives' } satisfies Record<
    Curve['topSpeed']['limit'],
    string
  >,
  likelyBand: (median: string, low: string, high: string) => `${median} (${low} to ${high})`,
  rpmOf: (figure: string) => `${figure}\u00a0rpm`,
  trimOf: (angle: string) => `trim ${angle}`,
  cannotHold: '; this engine cannot hold it',
  least: (store: StoreKind, use: string, speed: string) => `Least ${store} per distance: ${use} at ${speed}.`,
  leastPlaning: (use: string, speed: string) => `Least while planing: ${use} at ${speed}.`,
  top: (speed: string, band: string, limit: string) => `Top speed ${speed} (${band}), where it meets ${limit}.`,
  topBeyond: (speed: string, band: string) => `Once over the hump it would hold up to ${speed} (${band}).`,
  stuck: (hump: string, speed: string) =>
    `The engine does not lift this load over the hump at ${hump}: the boat stays at ${speed}.`,
  noPlaning: 'With this load the boat does not plane.',
  planingFrom: (speed: string) => `planing from ${speed}`,
  humpThin: (hump: string, planes: string) => `The hump at ${hump} is only just crossed, ${planes}.`,
  humpCrossed: (hump: string, share: string, planes: string) =>
    `The hump at ${hump} is crossed with ${share} more thrust than it takes, ${planes}.`,
  marks: {
    least: (speed: string) => `least use ${speed}`,
    leastPlaning: (speed: string) => `least planing ${speed}`,
    stuck: (speed: string) => `stays at ${speed}`,
    top: (speed: string) => `top ${speed}`,
    limit: (speed: string, name: string) => (name ? `limit, ${name}, ${speed}` : `limit ${speed}`),
  },
});
