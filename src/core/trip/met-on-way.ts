import type { Weather } from '../curve/steady.ts';
import type { Stretch } from '../route/split-legs.ts';
import { headwind } from '../water/headwind.ts';
import type { Stream } from '../water/shapes.ts';
import type { StreamFound } from '../water/streams.ts';
import type { Way } from './around.ts';
import type { Scenario } from './scenario.ts';
import { windThen } from './wind-law.ts';

/** Wind, waves and tow of a stretch, `at` s after departure. */
export function weatherOn(stretch: Stretch, scenario: Scenario, at: number): Weather {
  const { tow } = scenario;
  const towing = tow && (scenario.oneWay || stretch.part === 'home');
  return {
    headwind: windOn(stretch, scenario, at),
    waveHeight: wavesOn(stretch, scenario, at),
    tow: towing ? tow : undefined,
  };
}

/** Significant height of the waves on a stretch, m. */
function wavesOn({ leg }: Stretch, { waves, waveHeight, departs }: Scenario, at: number): number {
  return waves ? waves(leg, departs + at).height : waveHeight;
}

/** Wind from ahead along a way, m/s; where a forecast tells none, what the scenario takes for that. */
export function windOn(way: Pick<Way, 'part' | 'trackDeg'>, scenario: Scenario, at: number): number {
  const home = scenario.oneWay || way.part === 'home';
  if (scenario.headwindHome !== undefined && home) return scenario.headwindHome;
  const { wind, eased, departs, untold } = scenario;
  if (!wind) return 0;
  const now = windThen(wind, departs + at);
  if (!now) return untold.headwind;
  const ahead = headwind(now, way.trackDeg);
  const before = eased && windThen(eased, departs + at);
  return before ? Math.max(ahead, headwind(before, way.trackDeg)) : ahead;
}

/** The stream on a way, undefined for slack water; where streams by tide tell none, what the scenario takes against it. */
export function streamOn(way: Way, scenario: Scenario, at: number): Stream | undefined {
  return streamMet(way, scenario, streamFoundOn(way, scenario, at));
}

/** What streams by tide tell of a way; undefined where the stream is told otherwise or not at all. */
export function streamFoundOn(way: Way, { stream, departs }: Scenario, at: number): StreamFound | undefined {
  return typeof stream === 'function' ? stream(way, departs + at) : undefined;
}

/** `streamOn` with what streams by tide tell. */
export function streamMet(way: Way, scenario: Scenario, found: StreamFound | undefined): Stream | undefined {
  if (scenario.foulHome !== undefined && (scenario.oneWay || way.part === 'home')) {
    return { setDeg: (way.trackDeg + 180) % 360, rate: scenario.foulHome };
  }
  const { stream, untold } = scenario;
  if (found) return found.known ? found.stream : { setDeg: (way.trackDeg + 180) % 360, rate: untold.foul };
  return typeof stream === 'function' ? undefined : stream;
}
