import type { LatestStart } from '../../core/trip/latest-start.ts';
import type { Minimum } from '../../core/trip/minimums.ts';
import type { Plan, Trip } from '../../core/trip/shapes.ts';
import { offsetOf, secondsOf, timeAt } from '../../core/water/clock.ts';
import { endsAtHome } from '../answer/sentences.ts';
import type { Measures } from '../units/measures.ts';
import { cautions } from '../words/en-cautions.ts';
import { minimumsWords } from '../words/en-further.ts';
import { passageSheetWords as words } from '../words/en-passage.ts';
import { reserveRuleText } from '../words/en-reserve-rule.ts';
import { verdictWords } from '../words/en-verdict.ts';
import type { PassageNotes } from './passage-notes.ts';

/** Between the latest time back and calling the boat, and calling for help, s (common practice of shore contacts). */
export const CALL_THEM = 30 * 60;
export const CALL_HELP = 60 * 60;
/** Clock times told to others are full ones, min. */
const FULL = 5;

export interface Passage {
  /** As planned: measured, and with the limits of the host. */
  readonly trip: Trip;
  readonly plan: Plan;
  readonly minimums: readonly Minimum[];
  readonly latest: LatestStart | undefined;
  readonly notes: PassageNotes;
  readonly measures: Measures;
}

/** What a passage plan says, for paper, screen and text alike. */
export interface PassageSheet {
  readonly title: string;
  readonly verdict: Plan['verdict'];
  readonly rows: readonly { readonly label: string; readonly text: string }[];
  readonly points: {
    readonly caption: string;
    readonly heads: readonly string[];
    readonly rows: readonly (readonly string[])[];
  };
  readonly overdue: string;
  readonly steps: readonly string[];
  readonly cautions: readonly string[];
}

/** The latest time back, s after departure: the planned one and what was added, on a full five minutes of the clock. */
export function dueBack({ trip, plan, notes }: Pick<Passage, 'trip' | 'plan' | 'notes'>): number {
  const { departure } = trip.conditions;
  const start = departure === undefined ? 0 : secondsOf(departure) + offsetOf(departure);
  const full = FULL * 60;
  return Math.ceil((start + plan.time + notes.margin * 60) / full) * full - start;
}

export function passageSheet(passage: Passage): PassageSheet {
  const { trip, plan, notes, measures: m } = passage;
  const { departure } = trip.conditions;
  const clock = (s: number) => m.clock(departure, s);
  const due = dueBack(passage);
  const rows: [label: string, text: string | undefined][] = [
    [words.answer, verdictWords[plan.verdict]],
    [words.boat, boatText(trip)],
    [words.marks, notes.marks],
    [words.aboard, words.aboardOf(plan.balance.persons, m.show('mass', plan.balance.peopleAndGear))],
    [words.names, notes.who],
    [words.reach, notes.reach],
    [words.gear, notes.gear],
    [words.vehicle, notes.vehicle],
    [words.route, `${m.show('distance', plan.distance)}: ${routeText(trip)}`],
    [words.leaves, departure && `${dayText(departure, 0, m.lang)}, ${clock(0)} (${words.clock(zoneText(departure))})`],
    [words.goodUntil, goodUntil(passage)],
    [words.turn, turnText(passage)],
    [
      words.fuel[plan.store],
      `${words.fuelOf(m.show('amount', plan.usable, plan.store), m.show('amount', plan.need.median, plan.store), m.show('amount', plan.reserve, plan.store))} (${reserveRuleText(plan.reserveRule, m)})`,
    ],
    [endsAtHome(plan) ? words.home : words.there, clock(plan.time)],
    [words.due, departure ? `${dayText(departure, due, m.lang)}, ${clock(due)}` : clock(due)],
    [words.contact, notes.contact],
  ];
  const { steps } = words;
  return {
    title: words.title(trip.name || words.trip),
    verdict: plan.verdict,
    rows: rows.flatMap(([label, text]) => (text ? [{ label, text }] : [])),
    points: pointsOf(passage),
    overdue: words.overdue,
    steps: [
      steps.due(clock(due)),
      steps.phone(clock(due + CALL_THEM), notes.reach),
      steps.rescue(clock(due + CALL_HELP), notes.rescue),
      steps.changed,
    ],
    cautions: [words.turnedOut, ...cautions()],
  };
}

/** The sheet as plain text. */
export function sheetText({ title, rows, points, overdue, steps, cautions: warnings }: PassageSheet): string {
  const widths = points.heads.map((head, i) => Math.max(head.length, ...points.rows.map((row) => row[i]?.length ?? 0)));
  const line = (cells: readonly string[]) =>
    cells
      .map((cell, i) => cell.padEnd(widths[i] ?? 0))
      .join('  ')
      .trimEnd();
  return [
    title,
    '',
    ...rows.map(({ label, text }) => `${label}: ${text}`),
    '',
    ...(points.rows.length > 0 ? [points.caption, line(points.heads), ...points.rows.map(line), ''] : []),
    overdue,
    ...steps.map((step, i) => `${i + 1}. ${step}`),
    '',
    ...warnings,
    '',
  ].join('\n');
}

/** Places by name; those without one are counted. */
export function routeText({ route }: Trip): string {
  const named = route.waypoints.flatMap(({ name }) => name ?? []);
  const rest = route.waypoints.length - named.length;
  const way = route.shape === 'out-and-home' ? words.outAndHome : route.shape === 'loop' ? words.loop : '';
  return [named.join(' – '), rest > 0 ? words.unnamed(rest) : '', way].filter(Boolean).join(', ');
}

export function boatText({ craft: { hull, drive } }: Trip): string {
  return `${hull.name}, ${drive.name}`;
}

/** The day on the clock of the departure, some seconds later. */
export function dayText(departure: string, after: number, lang: string): string {
  const local = new Date((secondsOf(departure) + offsetOf(departure) + after) * 1000);
  return new Intl.DateTimeFormat(lang, { dateStyle: 'full', timeZone: 'UTC' }).format(local);
}

function zoneText(departure: string): string {
  const zone = timeAt(0, offsetOf(departure)).slice(19);
  return zone === 'Z' ? 'UTC' : `UTC${zone.replace('-', '\u2212')}`;
}

function goodUntil({ trip, latest, measures }: Passage): string | undefined {
  return latest && `${measures.clock(trip.conditions.departure, latest.later)}: ${words.ends[latest.ends]}`;
}

function turnText({ trip, plan: { turnBack, legs }, measures: m }: Passage): string | undefined {
  if (!endsAtHome({ legs }) || !turnBack) return undefined;
  if (!turnBack.onRoute) return words.noTurn;
  return words.turnAt(m.clock(trip.conditions.departure, turnBack.time), m.show('distance', turnBack.distance));
}

function pointsOf({ trip, plan, minimums, measures: m }: Passage): PassageSheet['points'] {
  const { departure } = trip.conditions;
  const timed = minimums.some(({ latest }) => latest !== undefined);
  const home = endsAtHome(plan);
  return {
    caption: words.points,
    heads: [words.point, words.arrives, words.below[plan.store], ...(timed ? [words.latest] : [])],
    rows: minimums.map(({ waypoint, name, part, arrives, goOn, latest }, i) => {
      const own = name ?? minimumsWords.waypoint(waypoint + 1);
      const end = i === minimums.length - 1 && home;
      return [
        end ? minimumsWords.end : part === 'home' ? `${own}, ${minimumsWords.parts.home}` : own,
        m.clock(departure, arrives),
        m.show('amount', Math.max(goOn, 0), plan.store),
        ...(timed ? [latest === undefined ? '' : m.clock(departure, latest)] : []),
      ];
    }),
  };
}
