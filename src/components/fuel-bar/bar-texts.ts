import type { Plan } from '../../core/trip/shapes.ts';
import { roundTicks } from '../curve-plot/round-ticks.ts';
import type { Measures } from '../units/measures.ts';
import type { BlockKind } from './blocks.ts';
import type { Span } from './picture.ts';
import { fuelBarWords as words } from './words.ts';

export interface LegendLine {
  readonly kind: BlockKind | 'touched';
  readonly term: string;
  readonly figure: string;
  /** 10th to 90th percentile, where it says something. */
  readonly band?: string | undefined;
}

/** Every figure of the bar as the screen writes it. */
export interface BarTexts {
  readonly spans: Readonly<Record<Span['kind'], string>>;
  readonly likely: string;
  readonly legend: readonly LegendLine[];
  /** Round amounts left, SI, with their texts. */
  readonly ticks: readonly { readonly value: number; readonly text: string }[];
}

/** Shares of a full tank below these are rounding, and for parts that decide nothing too thin to draw. */
const NOTHING = 1e-6;
const THIN = 2e-3;
const MINOR: readonly LegendLine['kind'][] = ['manoeuvring', 'unusable', 'unfilled'];

/** `unusable` is undefined where nobody told which part of `full` cannot be drawn. */
export function barTexts(plan: Plan, measures: Measures, unusable: number | undefined, mostTicks: number): BarTexts {
  const { store } = plan;
  const show = (amount: number) => (amount === Infinity ? words.endless : measures.show('amount', amount, store));
  const roundTrip = plan.legs.some((leg) => leg.part === 'home');
  const out = roundTrip ? words.out : words.underWay;
  const short = Math.max(plan.need.median - plan.usable, 0);
  const left = Math.max(plan.left.median, 0);
  const likely = likelyText(plan, measures);
  const unfilled = plan.full - plan.usable - (unusable ?? 0);

  const lines: (LegendLine & { readonly amount: number })[] = [
    { kind: 'out', term: out, amount: plan.needOut, figure: show(plan.needOut) },
    { kind: 'home', term: words.home, amount: roundTrip ? plan.needHome : 0, figure: show(plan.needHome) },
    { kind: 'manoeuvring', term: words.manoeuvring, amount: plan.manoeuvring, figure: show(plan.manoeuvring) },
    { kind: 'short', term: words.shortBy, amount: short, figure: show(short), band: likely },
    {
      kind: 'spare',
      term: roundTrip ? words.leftAtHome : words.leftAtEnd,
      amount: short > 0 ? 0 : Infinity,
      figure: show(left),
      band: likely,
    },
    reserveLine(plan, show(plan.reserve)),
    { kind: 'unusable', term: words.unusable, amount: unusable ?? 0, figure: show(unusable ?? 0) },
    {
      kind: 'unfilled',
      term: words.unfilled[store],
      amount: unfilled,
      figure: show(unfilled),
    },
  ];
  return {
    spans: {
      out: `${out} ${show(plan.needOut)}`,
      home: !Number.isFinite(plan.needHome) ? words.home : `${words.home} ${show(plan.needHome)}`,
      left: `${words.left} ${show(left)}`,
      reserve: `${words.reserve} ${show(plan.reserve)}`,
      short: short === Infinity ? words.short : `${words.short} ${show(short)}`,
    },
    likely,
    legend: lines.filter(({ kind, amount }) => amount > (MINOR.includes(kind) ? THIN : NOTHING) * plan.full),
    ticks: amountTicks(plan, measures, mostTicks),
  };
}

function reserveLine({ left, reserve }: Plan, figure: string) {
  const kind = left.median >= reserve ? ('reserve' as const) : ('touched' as const);
  const gone = left.median <= 0 ? words.reserveGone : words.reserveTouched;
  return { kind, term: kind === 'reserve' ? words.reserveKept : gone, amount: reserve, figure };
}

/** The band of what is left, or of what is missing where even its good end falls short. */
function likelyText({ left, store }: Plan, measures: Measures): string {
  if (!Number.isFinite(left.low)) return '';
  if (left.high >= 0) return words.likely(measures.band('amount', left, store));
  const missing = { low: -left.high, median: -left.median, high: -left.low };
  return words.likelyShort(measures.band('amount', missing, store));
}

/** Round amounts from 0 to all that is usable, the unit at the largest. */
function amountTicks({ usable, store }: Plan, measures: Measures, most: number): BarTexts['ticks'] {
  const large = store === 'charge' && usable >= 3.6e6;
  const one = large ? 3.6e6 : measures.toSi('amount', 1, store);
  const unit = large ? 'kWh' : measures.unit('amount', store);
  const format = new Intl.NumberFormat(measures.lang, { maximumFractionDigits: 3 });
  const values = roundTicks([0, usable / one], most);
  return values.map((value, i) => ({
    value: value * one,
    text: i === values.length - 1 ? `${format.format(value)}\u00a0${unit}` : format.format(value),
  }));
}
