import type { Plan, Trip } from '../../core/trip/shapes.ts';
import { badCaseSentence, chanceSentence, leftSentence, timeSentence } from '../answer/sentences.ts';
import type { Measures } from '../units/measures.ts';
import {
  assumptionText,
  cautions,
  fixText,
  payloadText,
  reasonText,
  regimeText,
  reserveRuleText,
  tippingText,
  verdictWhy,
  verdictWords,
} from '../words/en.ts';

/** The whole plan as plain text, for a terminal, a message or a printer without pictures. */
export function planText(plan: Plan, trip: Trip, m: Measures): string {
  return [
    ...answer(plan, trip, m),
    '',
    'Why',
    ...bullets(reasons(plan, m), 'Nothing stands against it.'),
    '',
    'Legs',
    ...legs(plan, m),
    '',
    'How far, how much, what if',
    ...bullets(margins(plan, trip, m), ''),
    '',
    'Taken for granted',
    ...bullets(
      plan.assumptions.map((a) => assumptionText(a, m, plan.store)),
      'Nothing.',
    ),
    '',
    ...cautions(),
  ].join('\n');
}

function answer(plan: Plan, trip: Trip, m: Measures): string[] {
  const { store } = plan;
  const amount = (x: number): string => m.show('amount', x, store);
  const lines = [
    trip.name ?? 'Trip',
    `${verdictWords[plan.verdict]}. ${verdictWhy(plan.verdict, store)}`,
    leftSentence(plan, m),
    timeSentence(plan, trip.conditions.departure, m),
  ];
  if (Number.isFinite(plan.need.median)) {
    const rule = reserveRuleText(plan.reserveRule, m);
    lines.push(
      `${capital(store)} usable at departure ${amount(plan.usable)}, needed ${amount(plan.need.median)}; reserve: ${rule}.`,
      chanceSentence(plan.probability),
    );
  }
  lines.push(badCaseSentence(plan, m), `All-up ${m.show('mass', plan.balance.allUpMass)}.`);
  return lines;
}

function reasons(plan: Plan, m: Measures): string[] {
  return plan.reasons.map((reason) => {
    const fixes = (reason.fixes ?? []).map((fix) => fixText(fix, m, plan.store));
    return `[${reason.level}] ${reasonText(reason, m, plan.store)}${fixes.length > 0 ? ` ${fixes.join('; or ')}.` : ''}`;
  });
}

function legs(plan: Plan, m: Measures): string[] {
  const rows = plan.legs.map((leg) => [
    `${leg.leg + 1} ${leg.part}`,
    m.show('distance', leg.distance),
    `steer ${m.bearing(leg.steerDeg)}`,
    `${m.show('speed', leg.speedThroughWater)} through water`,
    `${m.show('speed', leg.speedOverGround)} over ground`,
    m.time(leg.time),
    `uses ${m.show('amount', leg.use, plan.store)}`,
    `left ${m.show('amount', leg.left.median, plan.store)}`,
    [regimeText(leg.regime), leg.limitName].filter(Boolean).join(', '),
  ]);
  const widths = rows.reduce<number[]>((w, row) => row.map((cell, i) => Math.max(w[i] ?? 0, cell.length)), []);
  return rows.map((row) => `  ${row.map((cell, i) => cell.padEnd(widths[i] ?? 0)).join('  ')}`.trimEnd());
}

function margins(plan: Plan, trip: Trip, m: Measures): string[] {
  if (!Number.isFinite(plan.need.median)) return [payloadText(plan.payload, m, plan.store)];
  const lines = [
    `Range at this speed with the reserve kept: ${m.show('distance', plan.range.oneWay)} one way, or ${m.show('distance', plan.range.outAndHome)} out and the same home.`,
  ];
  if (plan.turnBack) {
    const { turnBack } = plan;
    lines.push(
      turnBack.onRoute
        ? `Last point to turn back the way you came: after ${m.show('distance', turnBack.distance)}, ${m.clock(trip.conditions.departure, turnBack.time)}.`
        : `You could go on to ${m.show('distance', turnBack.distance)} from the start before you must turn.`,
    );
  }
  lines.push(payloadText(plan.payload, m, plan.store));
  if (plan.fillNeeded !== undefined) {
    lines.push(`Least ${plan.store} for this trip: ${m.show('share', plan.fillNeeded)} of full.`);
  } else {
    lines.push(`A full ${plan.store === 'fuel' ? 'tank' : 'battery'} is not enough for this trip.`);
  }
  for (const tipping of plan.tipping) lines.push(`${tippingText(tipping, m, plan.store)}.`);
  return lines;
}

function bullets(lines: readonly string[], none: string): string[] {
  return lines.length > 0 ? lines.map((line) => `- ${line}`) : none ? [none] : [];
}

function capital(word: string): string {
  return word.charAt(0).toUpperCase() + word.slice(1);
}
