import type { Plan, ReasonCode, Trip } from '../../core/trip/shapes.ts';
import type { Measures } from '../units/measures.ts';
import { dataName } from '../words/en-data.ts';
import { plannerWords as words } from '../words/en-planner.ts';
import { reserveRuleText } from '../words/en-reserve-rule.ts';

/** What a closed card says of itself, and whether it still asks for something that matters. */
export interface CardState {
  readonly text: string;
  readonly asks: boolean;
}

/** What the plan says of the day that only the user can give. */
const ASKED: ReadonlySet<ReasonCode> = new Set<ReasonCode>([
  'wind-unknown',
  'stream-unknown',
  'sea-unknown',
  'swell-unknown',
  'departure-unknown',
  'temperature-unknown',
  'forecast-short',
  'streams-short',
]);

export function cardStates(
  trip: Trip,
  m: Measures,
  plan?: Plan,
): Record<'boat' | 'aboard' | 'route' | 'day' | 'kept', CardState> {
  const { craft, load, route, conditions, policy } = trip;
  const people = load.items.filter((item) => item.kind === 'adult' || item.kind === 'child').length;
  const mass = load.items.reduce((sum, item) => sum + item.mass, 0);
  const seatless = load.items.filter((item) => !item.station && !item.at).length;
  const plate = craft.hull.plate === undefined;
  const electric = craft.drive.kind === 'electric';
  const asked = plan?.reasons.filter(({ code }) => ASKED.has(code)).length;
  const ungiven = [
    conditions.wind === undefined,
    conditions.stream === undefined,
    conditions.sea === undefined,
    electric && conditions.batteryTemperatureC === undefined,
  ].filter(Boolean).length;
  const missing = asked ?? ungiven;
  const fill = load.fill === undefined ? words.fillMissing : m.show('share', load.fill);
  const rules = policy.reserve.length > 0 ? policy.reserve : [{ kind: 'thirds' } as const];
  return {
    boat: {
      text: join(dataName(craft.hull.name), dataName(craft.drive.name), plate && words.plateMissing),
      asks: plate,
    },
    aboard: {
      text: join(words.people(people), m.show('mass', mass), fill),
      asks: load.fill === undefined || seatless > 0 || people === 0,
    },
    route: {
      text: route.waypoints.length === 0 ? words.noRoute : words.points(route.waypoints.length),
      asks: route.waypoints.length < 2,
    },
    day: { text: missing > 0 ? words.open_questions(missing) : words.allGiven, asks: missing > 0 },
    kept: { text: rules.map((rule) => reserveRuleText(rule, m)).join('; '), asks: false },
  };
}

function join(...parts: readonly (string | false)[]): string {
  return parts.filter(Boolean).join(' · ');
}
