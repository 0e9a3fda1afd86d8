import { describe, expect, it } from 'vitest';
import electricTender from '../../../shared/trips/electric-tender.json' with { type: 'json' };
import petrolDay from '../../../shared/trips/petrol-day.json' with { type: 'json' };
import { tripConditions } from '../../../src/components/checklist/trip-conditions.ts';
import { firstDraft } from '../../../src/components/planner/first-trip.ts';
import { planTrip } from '../../../src/core/trip/plan-trip.ts';
import type { Trip } from '../../../src/core/trip/shapes.ts';

const petrol = petrolDay as unknown as Trip;
const electric = electricTender as unknown as Trip;

const given = (change: Partial<Trip['conditions']>, trip = petrol): Trip => ({
  ...trip,
  conditions: { ...trip.conditions, ...change },
});
const withPeople = (...kinds: ('adult' | 'child' | 'dog')[]): Trip => ({
  ...petrol,
  load: { ...petrol.load, items: kinds.map((kind, at) => ({ id: `p${at}`, kind, mass: 70 })) },
});
const plannedAt = (departure: string | undefined) => {
  const trip = given({ departure });
  const plan = planTrip(trip, undefined, { quick: true });
  if (!plan.ok) throw new Error('the trip has no plan');
  return tripConditions(trip, plan.value);
};

describe('tripConditions', () => {
  it('knows a petrol boat with its tank from an electric one with its battery', () => {
    expect(tripConditions(petrol)).toMatchObject({ petrol: true, electric: false, lithium: false, 'lead-acid': false });
    expect(tripConditions(electric)).toMatchObject({ petrol: false, electric: true, 'portable-tank': false });
    expect(tripConditions(electric).lithium).not.toBe(tripConditions(electric)['lead-acid']);
  });

  it('asks for oil in the petrol of a two-stroke only', () => {
    const twoStroke = { ...petrol, craft: { ...petrol.craft, drive: { ...petrol.craft.drive, cycle: '2s-carb' } } };
    expect(tripConditions(twoStroke as Trip)).toMatchObject({ 'two-stroke': true, 'four-stroke': false });
    expect(tripConditions(electric)).toMatchObject({ 'two-stroke': false, 'four-stroke': false });
  });

  it('counts people for alone and crew; a dog is no crew', () => {
    expect(tripConditions(withPeople('adult', 'dog'))).toMatchObject({ alone: true, crew: false, dog: true });
    expect(tripConditions(withPeople('adult', 'child'))).toMatchObject({ alone: false, crew: true, children: true });
  });

  it('does not know the crew while nobody has been entered, or only the adult that the planner starts with', () => {
    const asFirstShown = { ...petrol, load: firstDraft().trip.load };
    for (const trip of [withPeople(), asFirstShown]) {
      expect(tripConditions(trip)).toMatchObject({ alone: undefined, crew: undefined, children: undefined });
    }
  });

  it('takes wind, stream and cold from what was given, and from nothing else', () => {
    const none = { wind: undefined, stream: undefined, waterTemperatureC: undefined };
    const unknown = { 'fresh-wind': undefined, stream: undefined, 'cold-water': undefined };
    expect(tripConditions(given(none))).toMatchObject(unknown);
    const calm = given({ wind: 'calm', stream: 'slack', waterTemperatureC: 22 });
    expect(tripConditions(calm)).toMatchObject({ 'fresh-wind': false, stream: false, 'cold-water': false });
    const rough = given({ wind: { fromDeg: 0, speed: 6 }, stream: { setDeg: 0, rate: 0.5 }, waterTemperatureC: 9 });
    expect(tripConditions(rough)).toMatchObject({ 'fresh-wind': true, stream: true, 'cold-water': true });
  });

  it('heeds the strongest wind of a forecast, at whatever hour it blows', () => {
    const at = (hour: string, speed: number) => ({ time: `2031-05-04T${hour}:00:00+01:00`, fromDeg: 240, speed });
    const rising = given({ wind: { forecast: [at('09', 3), at('18', 8)] } });
    const steady = given({ wind: { forecast: [at('09', 3), at('18', 4)] } });
    expect(tripConditions(rising)['fresh-wind']).toBe(true);
    expect(tripConditions(steady)['fresh-wind']).toBe(false);
  });

  it('rules no river out because sea water still stands in the planner', () => {
    expect(tripConditions(given({ water: 'sea' }))).toMatchObject({ sea: true, fresh: undefined });
    expect(tripConditions(given({ water: 'fresh' }))).toMatchObject({ sea: false, fresh: true });
  });

  it('sees the dark in the plan of a trip with an hour, and does not guess without one', () => {
    const day = (petrol.conditions.departure as string).slice(0, 10);
    expect(plannedAt(`${day}T09:00:00+01:00`).dark).toBe(false);
    expect(plannedAt(`${day}T23:00:00+01:00`).dark).toBe(true);
    expect(plannedAt(undefined).dark).toBeUndefined();
    expect(tripConditions(petrol).dark).toBeUndefined();
  });
});
