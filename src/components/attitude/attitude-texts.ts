import type { Floating } from '../../core/load/equilibrium.ts';
import type { Float } from '../../core/load/float-of.ts';
import type { Attitude } from '../../core/trip/attitude.ts';
import type { Plan } from '../../core/trip/shapes.ts';
import type { Measures } from '../units/measures.ts';
import { attitudeWords as words } from '../words/en-load.ts';

export interface Figure {
  readonly name: string;
  readonly term: string;
  readonly figure: string;
  readonly note?: string;
  readonly tone: 'good' | 'plain' | 'doubt' | 'over';
}

/** Static trim and freeboard that are good, and heel (common practice, no source). */
const GOOD = { heel: 3, heelMost: 10, trim: 3, edge: 0.1 };

/** Whole degrees are shown: less than half of one is none. */
const SEEN = 0.5;

/** "2° bow up", or level. */
export function bowText(trimDeg: number, m: Measures): string {
  if (Math.abs(trimDeg) < SEEN) return words.level;
  return words.bow(m.show('angle', Math.abs(trimDeg)), trimDeg > 0);
}

export function heelText(heelDeg: number, m: Measures): string {
  return Math.abs(heelDeg) < SEEN ? words.upright : words.heelTo(m.show('angle', Math.abs(heelDeg)), heelDeg > 0);
}

export function edgeText(rest: Floating, m: Measures): string {
  if (rest.state !== 'afloat') return words.lost[rest.state];
  const size = m.show('length', Math.abs(rest.freeboard));
  const part = words.parts[rest.lowest.part];
  return rest.freeboard < 0 ? words.under(size, part) : words.over(size, part);
}

/** What changes as somebody moves: heel, trim, edge, planing, top speed, reserve. */
export function attitudeFigures(attitude: Attitude, plan: Plan | undefined, m: Measures): readonly Figure[] {
  const { float, curve, planned, planesFrom } = attitude;
  const figures: Figure[] = [];
  if (typeof float !== 'string') figures.push(...restFigures(float, m));
  figures.push(
    {
      name: 'running',
      term: words.trimRunning(m.show('speed', planned.speed)),
      figure: bowText(planned.trimDeg, m),
      tone: 'plain',
    },
    {
      name: 'planes',
      term: words.planes,
      figure: planesFrom === undefined ? words.never : m.show('speed', planesFrom),
      tone: planesFrom === undefined && planned.planes ? 'over' : 'plain',
    },
    { name: 'top', term: words.top, figure: m.show('speed', curve.topSpeed.median), tone: 'plain' },
  );
  if (plan) {
    const kept = plan.left.median >= plan.reserve;
    figures.push({
      name: 'left',
      term: words.left,
      figure: Number.isFinite(plan.left.median) ? m.show('amount', plan.left.median, plan.store) : '–',
      note: words.reserve(kept),
      tone: kept ? 'good' : 'over',
    });
  }
  return figures;
}

function restFigures({ rest, heelDeg }: Float, m: Measures): Figure[] {
  if (rest.state !== 'afloat') {
    return [{ name: 'edge', term: words.freeboard, figure: words.lost[rest.state], tone: 'over' }];
  }
  const heel = heelDeg ?? 0;
  return [
    {
      name: 'heel',
      term: words.heel,
      figure: heelText(heel, m),
      tone: tone(Math.abs(heel) <= GOOD.heel, Math.abs(heel) > GOOD.heelMost),
    },
    {
      name: 'rest',
      term: words.trimRest,
      figure: bowText(rest.trimDeg, m),
      tone: tone(Math.abs(rest.trimDeg) <= GOOD.trim, false),
    },
    {
      name: 'edge',
      term: words.freeboard,
      figure: edgeText(rest, m),
      tone: tone(rest.freeboard >= GOOD.edge, rest.freeboard < 0),
    },
  ];
}

function tone(good: boolean, over: boolean): Figure['tone'] {
  return over ? 'over' : good ? 'good' : 'doubt';
}

/** What is not seen at a glance: stiffness, reserve, and what happens if it goes wrong. */
export function floatFigures(float: Float, m: Measures): readonly (readonly [string, string])[] {
  const { rest, crowded, chamberLost, swamped } = float;
  const rows: [string, string][] = [];
  if (rest.state === 'afloat') rows.push([words.draft, m.show('length', rest.draft)]);
  if (float.massPerMetre !== undefined) rows.push([words.sinkage, m.show('mass', float.massPerMetre / 100)]);
  if (float.metacentricHeight !== undefined && float.longitudinalMetacentricHeight !== undefined) {
    rows.push([words.stiffAcross, m.show('length', float.metacentricHeight)]);
    rows.push([words.stiffAlong, m.show('length', float.longitudinalMetacentricHeight)]);
  }
  if (float.simpleHeelDeg !== undefined && float.exactHeelDeg !== undefined) {
    const [simple, exact] = [float.simpleHeelDeg, float.exactHeelDeg].map((deg) => m.show('angle', Math.abs(deg)));
    rows.push([words.heelBoth, words.heelPair(simple!, exact!)]);
  }
  const share = m.show('share', Math.max(float.reserve, 0) / float.buoyancy);
  rows.push([words.reserveBuoyancy, words.reserveOf(m.show('mass', float.reserve), share)]);
  if (crowded) rows.push([words.crowded, crowdedText(crowded, m)]);
  if (chamberLost) {
    const margin = m.show('mass', chamberLost.margin);
    const { floating } = chamberLost;
    rows.push([
      words.chamber,
      floating.state === 'afloat'
        ? words.chamberFloats(m.show('angle', Math.abs(floating.heelDeg)), bowText(floating.trimDeg, m), margin)
        : words.chamberLost(words.lost[floating.state], margin),
    ]);
  }
  if (swamped) {
    const size = m.show('mass', Math.abs(swamped.margin));
    rows.push([words.swamped, swamped.margin >= 0 ? words.swampedFloats(size) : words.swampedSinks(size)]);
  } else rows.push([words.swamped, words.noFoam]);
  return rows;
}

function crowdedText(crowded: Floating, m: Measures): string {
  if (crowded.state !== 'afloat') return words.lost[crowded.state];
  const size = m.show('length', Math.abs(crowded.freeboard));
  const edge = crowded.freeboard < 0 ? words.below(size) : words.clear(size);
  return words.crowdedFloats(m.show('angle', Math.abs(crowded.heelDeg)), edge);
}
