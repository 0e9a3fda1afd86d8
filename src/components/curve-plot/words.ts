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
  notHeld: 'not held',
});
