import type { Floating } from '../../core/load/equilibrium.ts';
import type { Move, SeatingAdvice, SeatingFigures } from '../../core/trip/seating-advice.ts';
import type { Trip } from '../../core/trip/shapes.ts';
import { bowText, heelText } from '../attitude/attitude-texts.ts';
import type { Measures, StoreKind } from '../units/measures.ts';
import { commonWords } from '../words/en-common.ts';
import { dataName } from '../words/en-data.ts';
import { spotText, whoIs } from '../words/en-deck.ts';
import { seatWords as words } from '../words/en-load.ts';

/** Below these a difference is not worth a word: m/s, degrees, share of what is left. */
const SMALL = { speed: 0.05, heel: 0.5, left: 0.005, lcg: 0.01 };

/** "Guest to Forward seat, port; Tank to Tank or battery in the bow". */
function movesText({ craft, load }: Trip, moves: readonly Move[], m: Measures): string {
  const parts = moves.map(({ who, to, station }) => {
    const label = craft.hull.stations.find(({ id }) => id === station)?.label;
    const where = label === undefined ? spotText(to, m) : commonWords.within(dataName(label));
    if ('id' in who) {
      const item = load.items.find(({ id }) => id === who.id);
      return words.goes(item ? whoIs(item) : who.id, where);
    }
    const kind = craft.store.kind;
    const name = kind === 'tank' ? craft.store.tanks[who.store]?.name : craft.store.batteries[who.store]?.name;
    return words.goes(whoIs({ kind, name }), where);
  });
  return parts.join('; ');
}

/** The advice in one sentence, and in another what the present placement costs. */
export function adviceText(trip: Trip, advice: SeatingAdvice, m: Measures): { says: string; costs: string } {
  const aim = words.why[advice.purpose];
  if (advice.moves.length === 0) return { says: words.good(aim), costs: '' };
  const by = advice.advised.lcg - advice.now.lcg;
  const shift = Math.abs(by) < SMALL.lcg ? '' : `; ${words.shift(m.show('length', Math.abs(by)), by > 0)}`;
  return {
    says: words.sits(movesText(trip, advice.moves, m), aim + shift),
    costs: costText(advice, trip.craft.store.kind === 'tank' ? 'fuel' : 'charge', m),
  };
}

function costText({ now, advised }: SeatingAdvice, store: StoreKind, m: Measures): string {
  const parts: string[] = [];
  if (advised.planingSpeed !== undefined) {
    if (now.planingSpeed === undefined) parts.push(words.costNoPlaning);
    else if (now.planingSpeed - advised.planingSpeed > SMALL.speed) {
      parts.push(words.costPlaning(m.show('speed', now.planingSpeed - advised.planingSpeed)));
    }
  }
  if (advised.topSpeed - now.topSpeed > SMALL.speed) {
    parts.push(words.costTop(m.show('speed', advised.topSpeed - now.topSpeed)));
  }
  if (now.left !== undefined && advised.left !== undefined) {
    const gain = advised.left - now.left;
    if (gain > SMALL.left * Math.max(Math.abs(advised.left), 1e-9))
      parts.push(words.costLeft(m.show('amount', gain, store)));
  }
  const heel = heelOf(now.rest) - heelOf(advised.rest);
  if (heel > SMALL.heel) parts.push(words.costHeel(m.show('angle', heel)));
  return parts.length > 0 ? words.costs(parts) : words.costsNothing;
}

function heelOf(rest: Floating | undefined): number {
  return rest?.state === 'afloat' ? Math.abs(rest.heelDeg) : 0;
}

/** Rows of the comparison: name, now, as advised. */
export function adviceRows(
  { now, advised }: SeatingAdvice,
  store: StoreKind,
  m: Measures,
): readonly (readonly [string, string, string])[] {
  const row = (name: string, figure: (of: SeatingFigures) => string) => [name, figure(now), figure(advised)] as const;
  const { rows } = words;
  return [
    row(rows.planes, ({ planingSpeed }) => (planingSpeed === undefined ? '–' : m.show('speed', planingSpeed))),
    row(rows.margin, ({ humpMargin }) => m.show('share', Math.min(humpMargin, 9.99))),
    row(rows.top, ({ topSpeed }) => m.show('speed', topSpeed)),
    row(rows.running, ({ runningTrimDeg }) => bowText(runningTrimDeg, m)),
    row(rows.rest, ({ rest }) => (rest?.state === 'afloat' ? bowText(rest.trimDeg, m) : '–')),
    row(rows.heel, ({ rest }) => (rest?.state === 'afloat' ? heelText(rest.heelDeg, m) : '–')),
    row(rows.left, ({ left }) => (left === undefined || !Number.isFinite(left) ? '–' : m.show('amount', left, store))),
  ];
}
