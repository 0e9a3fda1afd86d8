import type { Problem } from '../../core/units/result.ts';
import { spoken } from './spoken.ts';

/** What keeps a trip from being planned, or a file from being read; the core's own message in English. */
export const problemWords = spoken('problemWords', {
  'route-too-short': 'Draw a route with at least two points',
  'route-no-length': 'The route has no length',
  'no-such-stream-place': (waypoint: number) =>
    `The leg from waypoint ${waypoint} takes the stream of a place that is not listed`,
  told: ({ message }: Problem) => message,
});

/** What a door found wrong, in the page's language. */
export function problemText(problem: Problem): string {
  const { code, path } = problem;
  if (code === 'route-too-short' || code === 'route-no-length') return problemWords[code];
  if (code === 'no-such-stream-place') return problemWords[code](Number(path.split('.')[2]) + 1);
  return problemWords.told(problem);
}

/** The same, with the place in the file. */
export function problemAt(problem: Problem): string {
  const text = problemText(problem);
  return problem.path === '' || text.includes(problem.path) ? text : `${text} (${problem.path})`;
}
