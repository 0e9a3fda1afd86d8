import { spoken } from './spoken.ts';

/** What is wrong with what a page gave an element; loaded only where a page gives something. */
export const givenWords = spoken('givenWords', {
  choices: (given: string, known: string) => `“${given}” is not one of the values known here: ${known}.`,
  position: (given: string) => `“${given}” is not a place. Write latitude and longitude, such as 46.0, -32.0.`,
  zoom: (given: string) => `“${given}” is not a zoom level. Write a number from 2 to 18.`,
  tiles: (given: string) =>
    `“${given}” is not an address of map pictures. Write one with {z}, {x} and {y} in it, or "none".`,
  forecast: (given: string) => `“${given}” is not an address of a forecast. Write one with {lat} and {lon} in it.`,
  reserve: (given: string) => `“${given}” is not a reserve rule. Write "thirds", a share such as "25 %", or "30 min".`,
  noBoat: (given: string, known: string) => `There is no boat “${given}”. Known here: ${known}.`,
  noFile: (address: string) => `The file at ${address} could not be loaded.`,
  fleetPast: (until: string) =>
    `The fleet file could be relied on until ${until}, and that day is over. Its boats are not used until somebody has looked them over.`,
  noJson: (why: string) => `The JSON inside the element cannot be read: ${why}.`,
  unknownPart: (name: string) => `The JSON inside the element names “${name}”. It may name trip, waters and fleet.`,
});
