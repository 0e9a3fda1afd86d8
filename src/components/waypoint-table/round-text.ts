import type { RoundRoute } from '../../core/route/take-round-route.ts';
import type { Problem } from '../../core/units/result.ts';
import type { Measures } from '../units/measures.ts';
import { roundWords as words } from './round-words.ts';

/** What came of taking a route round, in a few sentences. */
export function roundText({ added, rounded, refused }: RoundRoute, clearance: number, measures: Measures): string {
  const off = measures.show('length', clearance);
  const said: string[] = [];
  if (added > 0) {
    const legs = rounded.map(({ leg }) => leg + 1);
    said.push(words.taken(legs, added, off));
  } else if (refused.length === 0) said.push(words.already(off));
  const narrow = rounded.filter(({ track }) => !track.clear && track.shoals.length === 0);
  if (narrow.length > 0) {
    said.push(words.narrow(measures.show('length', Math.min(...narrow.map(({ track }) => track.kept)))));
  }
  const shoals = [...new Set(rounded.flatMap(({ track }) => track.shoals))];
  if (shoals.length > 0) said.push(words.shoals(shoals));
  for (const { leg, problems } of refused) {
    said.push(...problems.map((problem) => words.refused(leg + 1, problemText(problem))));
  }
  return [...new Set(said)].join(' ');
}

function problemText({ code, path }: Problem): string {
  const waypoint = Number(/^waypoints\.(\d+)$/.exec(path)?.[1] ?? Number.NaN) + 1;
  const why = words.why[code as keyof typeof words.why];
  return why ? why(waypoint) : words.why['no-way']();
}
