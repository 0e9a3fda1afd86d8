import type { Aboard } from '../load/shapes.ts';
import type { Waters } from '../route/waters.ts';
import { type Contingency, towsHome } from './contingencies.ts';
import { type Minimum, minimums } from './minimums.ts';
import { planTrip } from './plan-trip.ts';
import type { Plan, ReasonCode, Trip, Verdict } from './shapes.ts';
import { type Standing, standingOf } from './standing.ts';
import { oneMore } from './what-if.ts';

/** One boat of the company: its own craft, load and reserve; its route and day are those of the first boat. */
export interface Member {
  readonly name: string;
  readonly trip: Trip;
}

export interface Kept {
  readonly name: string;
  /** As sailed in company: the common route and day, at the common speed where this boat would go faster. */
  readonly trip: Trip;
  readonly plan: Plan;
  /** The same way at its own planned speed. */
  readonly alone: Plan;
  /** Left over the reserve, as a share of what the trip needs; the boat with the least runs short first. */
  readonly margin: number;
  readonly minimums: readonly Minimum[];
}

/** Whether one boat could bring home another, or everybody aboard it. */
export interface Help {
  readonly from: number;
  readonly to: number;
  /** From the turning point; undefined where the helper's own trip cannot be sailed. */
  readonly tow: Contingency | undefined;
  /** All people of the other aboard for the whole trip, which is more than a rescue asks. */
  readonly aboard: { readonly people: number; readonly verdict: Verdict; readonly against: readonly ReasonCode[] };
}

export interface Company {
  readonly boats: readonly Kept[];
  /** Index of the boat whose way takes longest alone, and the speed it sets, m/s through the water. */
  readonly slowest: number;
  readonly pace: number;
  /** Runs short first. */
  readonly shortest: number;
  readonly verdict: Verdict;
  /** s; the last boat home. */
  readonly time: number;
  readonly helps: readonly Help[];
}

/** Which boat cannot be planned, and why. */
export type CompanyAnswer =
  | { readonly ok: true; readonly value: Company }
  | { readonly ok: false; readonly boat: number; readonly message: string };

const RANK: Readonly<Record<Verdict, number>> = { go: 0, marginal: 1, 'no-go': 2 };

/**
 * Several boats on the passage of the first: the slowest sets the pace, and what that does to the others is told too,
 * since a boat held at its hump may need more than alone. At least one boat.
 */
export function company(members: readonly Member[], waters: Waters | undefined): CompanyAnswer {
  const lead = members[0]!.trip;
  const alone: Plan[] = [];
  const own: Trip[] = [];
  for (const [boat, member] of members.entries()) {
    const trip = onPassage(member.trip, lead);
    const planned = planTrip(trip, waters, { quick: true });
    if (!planned.ok) return { ok: false, boat, message: planned.problems[0]?.message ?? '' };
    alone.push(planned.value);
    own.push(trip);
  }
  const slowest = indexOfLeast(alone.map((plan) => -plan.time));
  const pace = paceOf(alone[slowest]!);
  const boats: Kept[] = [];
  const standings: Standing[] = [];
  for (const [boat, member] of members.entries()) {
    const trip = boat === slowest ? own[boat]! : notFaster(own[boat]!, pace);
    const planned = planTrip(trip, waters, { quick: true });
    const standing = standingOf(trip, waters);
    if (!planned.ok || !standing.ok) return { ok: false, boat, message: '' };
    const plan = planned.value;
    const { need, left, reserve } = plan;
    const margin = left.median === -Infinity ? -Infinity : (left.median - reserve) / need.median;
    boats.push({ name: member.name, trip, plan, alone: alone[boat]!, margin, minimums: minimums(standing.value) });
    standings.push(standing.value);
  }
  const helps = boats.flatMap((_, from) =>
    boats.flatMap((_, to) => (from === to ? [] : [helpOf(boats, standings, from, to, waters)])),
  );
  return {
    ok: true,
    value: {
      boats,
      slowest,
      pace,
      shortest: indexOfLeast(boats.map(({ margin }) => margin)),
      verdict: boats.map(({ plan }) => plan.verdict).reduce((a, b) => (RANK[b] > RANK[a] ? b : a)),
      time: Math.max(...boats.map(({ plan }) => plan.time)),
      helps,
    },
  };
}

/** A boat on the route and in the weather of the first; its own speed, fuel, battery and reserve stay. */
function onPassage(trip: Trip, lead: Trip): Trip {
  const { batteryTemperatureC } = trip.conditions;
  const { batteryTemperatureC: _, ...day } = lead.conditions;
  const waypoints = lead.route.waypoints.map(({ speed: _, ...point }) => point);
  return {
    ...trip,
    route: { ...lead.route, waypoints, speed: trip.route.speed },
    conditions: { ...day, ...(batteryTemperatureC !== undefined && { batteryTemperatureC }) },
  };
}

function notFaster(trip: Trip, pace: number): Trip {
  const { speed } = trip.route;
  return { ...trip, route: { ...trip.route, speed: typeof speed === 'number' ? Math.min(speed, pace) : pace } };
}

/** What the boat makes where no zone slows it, m/s through the water: the mean by distance. */
function paceOf({ legs }: Plan): number {
  const free = legs.filter(({ limit }) => limit === undefined);
  const counted = free.length > 0 ? free : legs;
  const distance = counted.reduce((sum, leg) => sum + leg.distance, 0);
  return counted.reduce((sum, leg) => sum + leg.speedThroughWater * leg.distance, 0) / distance;
}

function helpOf(
  boats: readonly Kept[],
  standings: readonly Standing[],
  from: number,
  to: number,
  waters: Waters | undefined,
): Help {
  const { trip } = boats[from]!;
  const helper = standings[from]!;
  const people = boats[to]!.trip.load.items.filter(person);
  const load = people.reduce(
    (all, { mass }) => oneMore({ ...trip, load: all }, mass, boats[from]!.plan.legs[0]?.speedThroughWater ?? 0),
    trip.load,
  );
  const full = planTrip({ ...trip, load }, waters, { quick: true });
  // What stands against the helper's own trip already does not stand against helping.
  const own = new Set(boats[from]!.plan.reasons.map(({ code, level }) => `${code} ${level}`));
  const against = full.ok
    ? full.value.reasons.filter(({ code, level }) => level === 'no-go' && !own.has(`${code} ${level}`))
    : [];
  const refused = !full.ok || against.length > 0;
  const verdict: Verdict = refused ? 'no-go' : full.value.verdict === 'go' ? 'go' : 'marginal';
  const aboard = { people: people.length, verdict, against: against.map(({ code }) => code) };
  return { from, to, tow: helper.fuel.run.possible ? towsHome(helper, standings[to]!) : undefined, aboard };
}

function person({ kind }: Aboard): boolean {
  return kind === 'adult' || kind === 'child';
}

function indexOfLeast(values: readonly number[]): number {
  return values.indexOf(Math.min(...values));
}
