import type { Reason } from '../../core/trip/shapes.ts';
import type { StoreKind } from '../units/measures.ts';
import { spoken } from './spoken.ts';

/** Words of a plan as plain text. */
export const planTextWords = spoken('planTextWords', {
  trip: 'Trip',
  why: 'Why',
  nothingAgainst: 'Nothing stands against it.',
  legs: 'Legs',
  margins: 'How far, how much, what if',
  granted: 'Taken for granted',
  nothing: 'Nothing.',
  amounts: (store: StoreKind, usable: string, needed: string, rule: string) =>
    `${store === 'fuel' ? 'Fuel' : 'Charge'} usable at departure ${usable}, needed ${needed}; reserve: ${rule}.`,
  allUp: (mass: string) => `All-up ${mass}.`,
  levels: { 'no-go': 'no-go', marginal: 'marginal', note: 'note' } satisfies Record<Reason['level'], string>,
  or: '; or ',
  parts: { out: 'out', home: 'home' },
  steer: (bearing: string) => `steer ${bearing}`,
  throughWater: (speed: string) => `${speed} through water`,
  overGround: (speed: string) => `${speed} over ground`,
  waves: (height: string) => `waves ${height}`,
  stream: (rate: string, set: string) => `stream ${rate} to ${set}`,
  uses: (amount: string) => `uses ${amount}`,
  left: (amount: string) => `left ${amount}`,
  range: (oneWay: string, outAndHome: string) =>
    `Range at this speed with the reserve kept: ${oneWay} one way, or ${outAndHome} out and the same home.`,
  turnBack: (distance: string, clock: string) =>
    `Last point to turn back the way you came: after ${distance}, ${clock}.`,
  turnSlow: (distance: string, clock: string) =>
    `At the most economical speed the reserve still lasts home from ${distance}, ${clock}.`,
  turnSlowAnywhere: 'At the most economical speed the reserve still lasts home from anywhere on this route.',
  turnBeyond: (distance: string) => `You could go on to ${distance} from the start before you must turn.`,
  fillNeeded: (store: StoreKind, share: string) => `Least ${store} for this trip: ${share} of full.`,
  fullNotEnough: (store: StoreKind) => `A full ${store === 'fuel' ? 'tank' : 'battery'} is not enough for this trip.`,
});
