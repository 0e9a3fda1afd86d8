import { numberText } from '../units/number-text.ts';
import { spoken, spokenNow } from './spoken.ts';

/** What the boats, engines, tanks, batteries and places that come with the project are called, piece by piece. */
export const dataWords = spoken('dataWords', {
  'Inflatable catamaran': 'Inflatable catamaran',
  'Rigid inflatable': 'Rigid inflatable',
  'Flat-floor inflatable': 'Flat-floor inflatable',
  'Rigid open boat with a V bottom': 'Rigid open boat with a V bottom',
  'Rigid open boat with a flat bottom': 'Rigid open boat with a flat bottom',
  'Displacement launch': 'Displacement launch',
  'Open hull': 'Open hull',
  'Electric launch': 'Electric launch',
  'Petrol outboard': 'Petrol outboard',
  'Electric outboard': 'Electric outboard',
  'two-stroke': 'two-stroke',
  'four-stroke': 'four-stroke',
  hp: 'hp',
  'kW input': 'kW input',
  'Tank under the engine cover': 'Tank under the engine cover',
  'Spare can': 'Spare can',
  'Portable tank': 'Portable tank',
  Battery: 'Battery',
  'AGM battery': 'AGM battery',
  'Two AGM batteries': 'Two AGM batteries',
  'Aft seat': 'Aft seat',
  'Forward seat': 'Forward seat',
  port: 'port',
  starboard: 'starboard',
  'starboard aft': 'starboard aft',
  Helm: 'Helm',
  'Helm at the console': 'Helm at the console',
  'Seat before the console': 'Seat before the console',
  'Middle thwart': 'Middle thwart',
  'Gear amidships': 'Gear amidships',
  'Gear in the bow': 'Gear in the bow',
  'Gear under the aft seat': 'Gear under the aft seat',
  'On the bow tube': 'On the bow tube',
  'On the foredeck': 'On the foredeck',
  Skipper: 'Skipper',
  Guest: 'Guest',
  'Anchor and line': 'Anchor and line',
  'Oars and safety bag': 'Oars and safety bag',
  'Anchor and warp': 'Anchor and warp',
  Bags: 'Bags',
  'Safety box and oars': 'Safety box and oars',
  Child: 'Child',
  Hirer: 'Hirer',
  'Lunch, water, dry clothes': 'Lunch, water, dry clothes',
  Mate: 'Mate',
  'Safety bag': 'Safety bag',
  'Second adult': 'Second adult',
  'Third adult': 'Third adult',
  'Oars, pump, repair kit': 'Oars, pump, repair kit',
  'Round Ward Island and through The Gut': 'Round Ward Island and through The Gut',
  'To Gut cove and back': 'To Gut cove and back',
  'Three-hour hire round Ward Island': 'Three-hour hire round Ward Island',
  'Ward jetty and back': 'Ward jetty and back',
  'Gut cove and back': 'Gut cove and back',
  'Tank or battery aft': 'Tank or battery aft',
  'Tank or battery in the bow': 'Tank or battery in the bow',
});

/** A name from the data in the language spoken, "Petrol outboard, 2.5 hp, four-stroke"; what somebody typed stays. */
export function dataName(name: string): string {
  const words: Readonly<Record<string, string>> = dataWords;
  if (words[name] !== undefined) return words[name];
  return name
    .split(', ')
    .map((piece) => {
      const [, figure, unit] = /^(\d+\.\d+|\d+) (.+)$/.exec(piece) ?? [];
      if (figure === undefined || unit === undefined) return words[piece] ?? piece;
      return `${numberText(spokenNow().tag, Number(figure))}\u00a0${words[unit] ?? unit}`;
    })
    .join(', ');
}
