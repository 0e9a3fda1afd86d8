import type { Plan, TurnBack } from '../../core/trip/shapes.ts';
import type { Measures } from '../units/measures.ts';
import { payloadText } from '../words/en-payload.ts';
import { reserveRuleText } from '../words/en-reserve-rule.ts';
import { detailWords as words } from './words.ts';

export interface KeyFigure {
  readonly title: string;
  readonly figure: string;
  readonly notes: readonly string[];
  /** Nothing to read yet, or a bad sign. */
  readonly tone?: 'waiting' | 'stop';
}

/** A plan made in a hurry has no payload, tipping values or fill needed; they follow. */
export function unsettled({ payload }: Pick<Plan, 'payload'>): boolean {
  return payload.binds === 'search-limit' && payload.extra === undefined;
}

/** The four figures most asked for: how much more, how far back, how far at all, how full. */
export function keyFigures(plan: Plan, departure: string | undefined, m: Measures): readonly KeyFigure[] {
  return [payloadFigure(plan, m), turnFigure(plan, departure, m), rangeFigure(plan, m), fillFigure(plan, m)];
}

function payloadFigure(plan: Plan, m: Measures): KeyFigure {
  const { payload, store } = plan;
  const { extra, counted, allowed } = payload;
  const over = extra !== undefined && extra < 0;
  const title = over ? words.payloadOver : words.payload;
  if (unsettled(plan)) return { title, figure: words.unsettled, notes: [], tone: 'waiting' };
  const plate =
    allowed === undefined
      ? words.countedOnly(m.show('mass', counted))
      : words.counted(m.show('mass', counted), m.show('mass', allowed));
  const notes = [payloadText(payload, m, store), plate];
  if (extra === undefined || Number.isNaN(extra)) return { title, figure: words.notKnown, notes };
  const figure = extra === Infinity ? words.endless : m.show('mass', Math.abs(extra));
  return over ? { title, figure, notes, tone: 'stop' } : { title, figure, notes };
}

function turnFigure(plan: Plan, departure: string | undefined, m: Measures): KeyFigure {
  const { turnBack, turnBackSlow, halfway, time, left, reserve } = plan;
  const title = words.turnBack;
  if (!turnBack || !Number.isFinite(time)) return { title, figure: '–', notes: [words.turnNone], tone: 'stop' };
  const figure = m.show('distance', turnBack.distance);
  const slow = slowNote(turnBackSlow, departure, m);
  if (turnBack.onRoute && turnBack.distance <= 0) {
    return { title, figure, notes: [words.turnAtStart, ...slow], tone: 'stop' };
  }
  const at = m.clock(departure, turnBack.time);
  // Round a loop there comes a point from which the way on is the short one.
  const fits = left.median >= reserve;
  const notes = [
    turnBack.onRoute ? (fits ? words.turnGoOn(at) : words.turnOnRoute(at)) : words.turnBeyond(at),
    ...slow,
  ];
  if (halfway?.onRoute) {
    notes.push(words.halfway(m.show('distance', halfway.distance), m.clock(departure, halfway.time)));
  }
  return { title, figure, notes };
}

function slowNote(slow: TurnBack | undefined, departure: string | undefined, m: Measures): readonly string[] {
  if (!slow) return [];
  if (!slow.onRoute) return [words.turnSlowAnywhere];
  return [words.turnSlow(m.show('distance', slow.distance), m.clock(departure, slow.time))];
}

function rangeFigure({ range, reserve, reserveRule, store }: Plan, m: Measures): KeyFigure {
  const far = (distance: number) =>
    distance === Infinity ? words.endless : distance > 0 ? m.show('distance', distance) : words.nowhere;
  const kept = words.reserve(m.show('amount', reserve, store), reserveRuleText(reserveRule, m));
  return { title: words.range, figure: far(range.outAndHome), notes: [words.rangeOneWay(far(range.oneWay)), kept] };
}

function fillFigure(plan: Plan, m: Measures): KeyFigure {
  const { fillNeeded, store } = plan;
  const title = words.fill[store];
  if (unsettled(plan)) return { title, figure: words.unsettled, notes: [], tone: 'waiting' };
  if (fillNeeded === undefined) {
    return { title, figure: words.fillTooMuch, notes: [words.fillNoHelp[store]], tone: 'stop' };
  }
  const figure = `${m.show('share', fillNeeded)}, ${m.show('amount', fillNeeded * plan.full, store)}`;
  return { title, figure, notes: [words.fillEnough[store]] };
}

/** Weight and balance as names and figures. */
export function balanceFigures({ balance }: Plan, m: Measures): readonly (readonly [string, string])[] {
  const { allUpMass, lcg, lcgShare, lateral, persons, peopleAndGear } = balance;
  const side = m.show('length', Math.abs(lateral));
  const off = Math.abs(lateral) < 0.005 ? words.middle : lateral > 0 ? words.starboard(side) : words.port(side);
  const people = words.people[new Intl.PluralRules('en').select(persons) === 'one' ? 'one' : 'other'];
  return [
    [words.allUp, m.show('mass', allUpMass)],
    [words.persons, words.personsOf(`${persons} ${people}`, m.show('mass', peopleAndGear))],
    [words.lcg, words.lcgAt(m.show('length', lcg), m.show('share', lcgShare))],
    [words.lateral, off],
  ];
}
