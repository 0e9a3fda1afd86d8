import type { LegPlan, Plan, Trip } from '../../core/trip/shapes.ts';
import { badCaseSentence, chanceSentence, leftSentence, timeSentence } from '../answer/sentences.ts';
import { conditionsLines } from '../conditions-form/conditions-lines.ts';
import type { Measures } from '../units/measures.ts';
import { assumptionText } from '../words/en-assumptions.ts';
import { cautions } from '../words/en-cautions.ts';
import { dataName } from '../words/en-data.ts';
import { dayWords } from '../words/en-day.ts';
import { fixText } from '../words/en-fixes.ts';
import { payloadText } from '../words/en-payload.ts';
import { planTextWords as words } from '../words/en-plan-text.ts';
import { reasonText } from '../words/en-reasons.ts';
import { regimeText } from '../words/en-regime.ts';
import { reserveRuleText } from '../words/en-reserve-rule.ts';
import { tippingText } from '../words/en-tipping.ts';
import { verdictWhy, verdictWords } from '../words/en-verdict.ts';

/** The whole plan as plain text, for a terminal, a message or a printer without pictures. */
export function planText(plan: Plan, trip: Trip, m: Measures): string {
  return [
    ...answer(plan, trip, m),
    '',
    words.why,
    ...bullets(reasons(plan, m), words.nothingAgainst),
    '',
    dayWords.title,
    ...bullets(conditionsLines(trip.conditions, m), ''),
    '',
    words.legs,
    ...legs(plan, m),
    '',
    words.margins,
    ...bullets(margins(plan, trip, m), ''),
    '',
    words.granted,
    ...bullets(
      plan.assumptions.map((a) => assumptionText(a, m, plan.store)),
      words.nothing,
    ),
    '',
    ...cautions(),
  ].join('\n');
}

function answer(plan: Plan, trip: Trip, m: Measures): string[] {
  const { store } = plan;
  const amount = (x: number): string => m.show('amount', x, store);
  const lines = [
    dataName(trip.name ?? words.trip),
    `${verdictWords[plan.verdict]}. ${verdictWhy(plan.verdict, store)}`,
    leftSentence(plan, m),
    timeSentence(plan, trip.conditions.departure, m),
  ];
  if (Number.isFinite(plan.need.median)) {
    const rule = reserveRuleText(plan.reserveRule, m);
    lines.push(
      words.amounts(store, amount(plan.usable), amount(plan.need.median), rule),
      chanceSentence(plan.probability),
    );
  }
  lines.push(badCaseSentence(plan, m), words.allUp(m.show('mass', plan.balance.allUpMass)));
  return lines;
}

function reasons(plan: Plan, m: Measures): string[] {
  return plan.reasons.map((reason) => {
    const fixes = (reason.fixes ?? []).map((fix) => fixText(fix, m, plan.store));
    return `[${words.levels[reason.level]}] ${reasonText(reason, m, plan.store)}${fixes.length > 0 ? ` ${fixes.join(words.or)}.` : ''}`;
  });
}

function legs(plan: Plan, m: Measures): string[] {
  const rows = plan.legs.map((leg) => [
    `${leg.leg + 1} ${words.parts[leg.part]}`,
    m.show('distance', leg.distance),
    words.steer(m.bearing(leg.steerDeg)),
    words.throughWater(m.show('speed', leg.speedThroughWater)),
    words.overGround(m.show('speed', leg.speedOverGround)),
    m.time(leg.time),
    words.uses(m.show('amount', leg.use, plan.store)),
    words.left(m.show('amount', leg.left.median, plan.store)),
    [regimeText(leg.regime), leg.limitName, seaOn(leg, m), streamOn(leg, m)].filter(Boolean).join(', '),
  ]);
  const widths = rows.reduce<number[]>((w, row) => row.map((cell, i) => Math.max(w[i] ?? 0, cell.length)), []);
  return rows.map((row) => `  ${row.map((cell, i) => cell.padEnd(widths[i] ?? 0)).join('  ')}`.trimEnd());
}

function seaOn({ waveHeight }: LegPlan, m: Measures): string {
  return waveHeight > 0 ? words.waves(m.show('length', waveHeight)) : '';
}

function streamOn({ stream }: LegPlan, m: Measures): string {
  return stream ? words.stream(m.show('speed', stream.rate), m.bearing(stream.setDeg)) : '';
}

function margins(plan: Plan, trip: Trip, m: Measures): string[] {
  if (!Number.isFinite(plan.need.median)) return [payloadText(plan.payload, m, plan.store)];
  const lines = [words.range(m.show('distance', plan.range.oneWay), m.show('distance', plan.range.outAndHome))];
  if (plan.turnBack) {
    const { turnBack } = plan;
    lines.push(
      turnBack.onRoute
        ? words.turnBack(m.show('distance', turnBack.distance), m.clock(trip.conditions.departure, turnBack.time))
        : words.turnBeyond(m.show('distance', turnBack.distance)),
    );
  }
  const slow = plan.turnBackSlow;
  if (slow) {
    const clock = m.clock(trip.conditions.departure, slow.time);
    lines.push(slow.onRoute ? words.turnSlow(m.show('distance', slow.distance), clock) : words.turnSlowAnywhere);
  }
  lines.push(payloadText(plan.payload, m, plan.store));
  if (plan.fillNeeded !== undefined) {
    lines.push(words.fillNeeded(plan.store, m.show('share', plan.fillNeeded)));
  } else {
    lines.push(words.fullNotEnough(plan.store));
  }
  for (const tipping of plan.tipping) lines.push(`${tippingText(tipping, m, plan.store)}.`);
  return lines;
}

function bullets(lines: readonly string[], none: string): string[] {
  return lines.length > 0 ? lines.map((line) => `- ${line}`) : none ? [none] : [];
}
