import type { DesignCategory, Drive, EngineCycle, Fouling, HullForm, Plate } from '../../core/craft/shapes.ts';
import type { StoreKind } from '../units/measures.ts';
import { spoken } from './spoken.ts';

export const foulingWords = spoken<Readonly<Record<Fouling, string>>>('foulingWords', {
  clean: 'Clean',
  slime: 'Slime: a tenth more resistance',
  weed: 'Weed or light shell: a quarter more',
  shell: 'Heavy shell: half as much again',
});

export const craftWords = spoken('craftWords', {
  boat: 'Boat',
  engine: 'Engine',
  ownBoat: 'Own boat',
  ownEngine: 'Own engine',
  ownTank: 'Own tank',
  ownBattery: 'Own battery',
  tank: 'Tank',
  battery: 'Battery',
  examples: 'Examples of a type, not products. Pick the nearest, then set your own figures under "Fine-tune".',
  fineTune: 'Fine-tune the figures',
  changed: 'With your own figures.',
  reset: 'Back to the example',
  bottom: 'Bottom of the boat',
  length: 'Length overall',
  beam: 'Beam overall',
  hullMass: 'Weight, empty',
  hullMassHint: 'Without engine, fuel and gear',
  ratedPower: 'Rated power',
  ratedPowerHint: 'At the propeller shaft',
  engineMass: 'Engine weight',
  propeller: 'Propeller',
  propellerHint: 'Often stamped on it: diameter x pitch.',
  propellerDiameter: 'Diameter',
  propellerPitch: 'Pitch',
  shaft: 'Shaft length',
  tankCapacity: 'Tank capacity',
  batteryEnergy: 'Energy when new',
  batteryHealth: 'Battery health',
  batteryHealthHint: 'Share of that energy it still holds',
  batteryMass: 'Battery weight',
  place: (store: StoreKind) => `Where the ${store === 'fuel' ? 'tank' : 'battery'} sits`,
  placeKept: 'As it is now',
});

export const formWords = spoken<Record<HullForm, string>>('formWords', {
  'inflatable-catamaran': 'Inflatable catamarans',
  rib: 'Rigid inflatables',
  'flat-floor-inflatable': 'Flat-floor inflatables',
  'rigid-v': 'V-bottom boats',
  'rigid-flat': 'Flat-bottom boats',
  displacement: 'Displacement boats',
});

export const cycleWords = spoken<Record<EngineCycle | 'electric', string>>('cycleWords', {
  '4s-carb': 'Petrol, four-stroke, carburettor',
  '4s-efi': 'Petrol, four-stroke, fuel injection',
  '2s-carb': 'Petrol, two-stroke, carburettor',
  '2s-di': 'Petrol, two-stroke, direct injection',
  electric: 'Electric',
});

export const shaftWords = spoken<Record<NonNullable<Drive['shaft']>, string>>('shaftWords', {
  short: 'Short, 15 in',
  long: 'Long, 20 in',
  'extra-long': 'Extra long, 25 in',
});

export const plateWords = spoken('plateWords', {
  title: "Builder's plate",
  why: 'The plate on the boat says what it may carry. The figures below the fields are only what boats like this often have: read yours, and leave empty what it does not say.',
  none: 'This boat has no plate',
  noneWhy: 'Then nobody has said how much it may carry, and no answer here can.',
  maxLoad: 'Largest load',
  persons: 'Persons',
  maxPower: 'Engine power',
  maxEngineMass: 'Engine weight',
  category: 'Design category',
  scheme: 'Kind of plate',
  notRead: 'Not read',
  typical: (figure: string) => `Often about ${figure}`,
});

export const categoryWords = spoken<Record<DesignCategory, string>>('categoryWords', {
  A: 'A: beyond force 8, beyond 4 m',
  B: 'B: to force 8, to 4 m',
  C: 'C: to force 6, to 2 m',
  D: 'D: to force 4, to 0.3 m',
});

export const schemeWords = spoken<Record<Plate['scheme'], string>>('schemeWords', {
  eu: 'European (CE mark): engine not counted',
  us: 'United States: engine and fuel counted',
  unknown: 'Not known',
});
