import { windAgainstStream } from '../water/current-on-waves.ts';
import { seaLimits } from '../water/sea-speed.ts';
import type { Stream } from '../water/shapes.ts';
import type { FuelVerdict } from './fuel-verdict.ts';
import { categoryOf } from './judge-wind.ts';
import type { Prepared } from './prepare.ts';
import { verdictOf } from './reasons.ts';
import type { Run, Sailed } from './sail.ts';
import type { Reason, Verdict } from './shapes.ts';
import { windThen } from './wind-law.ts';

/** Waves met, m, and the legs on which they are met. */
interface Met {
  readonly height: number;
  readonly legs: readonly number[];
}

/** Waves too high for the boat, its plate or its crew, and waves made steep by a stream against the wind. */
export function judgeSea(prepared: Prepared, { run }: FuelVerdict): readonly Reason[] {
  const { trip, around } = prepared;
  const unknown: Reason = { code: 'sea-unknown', level: 'marginal', fixes: [{ code: 'give-value' }] };
  if (!prepared.seaTold) return [unknown];
  const { sea } = trip.conditions;
  const open = sea === undefined ? legsOf(run.sailed.filter((s) => around.fetch?.open(s.stretch.leg))) : [];
  const swell: readonly Reason[] =
    open.length > 0 ? [{ code: 'swell-unknown', level: 'marginal', legs: open, fixes: [{ code: 'give-value' }] }] : [];
  const against = sailedAgainst(run, trip.craft.hull.length);
  const raised: Met = highest(run.sailed, (s) => against.get(s)?.height ?? s.weather.waveHeight);
  return [...swell, ...heightReasons(prepared, raised), ...steepReasons(against)];
}

/** What boat, plate and crew say of waves of a significant height, m. */
export function seaLimit(prepared: Prepared, height: number): Verdict {
  return verdictOf(heightReasons(prepared, { height, legs: [] }));
}

function heightReasons({ trip }: Prepared, { height, legs }: Met): Reason[] {
  const reasons: Reason[] = [];
  const { hull } = trip.craft;
  const { fine, care } = seaLimits(hull.length);
  const where = legs.length > 0 ? { legs } : {};
  const waits = { ...where, fixes: [{ code: 'wait' as const }] };
  if (height > fine) {
    const beyond = height > care;
    reasons.push({
      code: beyond ? 'too-rough' : 'rough',
      level: beyond ? 'no-go' : 'marginal',
      measure: 'length',
      value: height,
      limit: beyond ? care : fine,
      ...waits,
    });
  }
  const { maxWave } = categoryOf(hull.plate);
  if (maxWave !== undefined && height > maxWave) {
    reasons.push({
      code: 'over-category',
      level: 'no-go',
      measure: 'length',
      value: height,
      limit: maxWave,
      name: 'sea',
      ...waits,
    });
  }
  const own = trip.policy.maxWave;
  if (own !== undefined && height > own) {
    reasons.push({ code: 'over-wave-limit', level: 'no-go', measure: 'length', value: height, limit: own, ...waits });
  }
  return reasons;
}

/** Of waves whose period nobody told: as steep as a short fetch makes them, height over length (common practice, no source). */
const STEEP = 1 / 15;
/** Length of deep-water waves, m, by the square of their period, s: g / 2 pi. */
const LENGTH = 1.56;

/** Waves over hull length that stay within what is fine for the boat even when a stream doubles them. */
const HARMLESS = 0.04;
/** Steepened further they break. */
const HIGHEST_RATIO = 2;

interface Against {
  /** What the stream makes of the waves by linear theory, m: a class of the sea-state scale is too coarse for small boats. */
  readonly height: number;
  readonly stays: boolean;
}

/** Stretches sailed where the stream runs against the wind and makes the sea worse. */
function sailedAgainst({ sailed, scenario }: Run, hullLength: number): ReadonlyMap<Sailed, Against> {
  const found = new Map<Sailed, Against>();
  if (!scenario.wind) return found;
  for (const s of sailed) {
    const wind = windThen(scenario.wind, scenario.departs + s.at);
    const height = s.weather.waveHeight;
    if (!wind || !s.stream || height < HARMLESS * hullLength) continue;
    const told = scenario.waves?.(s.stretch.leg, scenario.departs + s.at).period;
    const period = told || Math.sqrt(height / STEEP / LENGTH);
    const { flag, heightRatio } = [s.stream, ...mayRunOn(s)]
      .map((stream) => windAgainstStream(wind, stream, { height, period }))
      .reduce((a, b) => (b.share > a.share ? b : a));
    if (flag === 'none') continue;
    found.set(s, { height: height * Math.min(heightRatio, HIGHEST_RATIO), stays: flag === 'do-not-go' });
  }
  return found;
}

/** A stream that is only guessed counts nothing for the way where it helps; waves it may steepen all the same. */
function mayRunOn({ told }: Sailed): readonly Stream[] {
  return (told?.known && told.mayRun) || [];
}

function steepReasons(against: ReadonlyMap<Sailed, Against>): Reason[] {
  if (against.size === 0) return [];
  const stays = [...against].some(([, { stays: stay }]) => stay);
  const worst = [...against].filter(([, a]) => a.stays === stays).map(([s]) => s);
  return [
    {
      code: 'wind-against-stream',
      level: stays ? 'no-go' : 'marginal',
      legs: legsOf(worst),
      at: worst[0]!.stretch.from,
      fixes: [{ code: 'wait' }],
    },
  ];
}

function highest(sailed: readonly Sailed[], heightOf: (s: Sailed) => number): Met {
  const height = sailed.reduce((most, s) => Math.max(most, heightOf(s)), 0);
  const met = legsOf(sailed.filter((s) => heightOf(s) >= height * 0.99));
  const all = legsOf(sailed);
  return { height, legs: met.length < all.length ? met : [] };
}

function legsOf(sailed: readonly Sailed[]): number[] {
  return [...new Set(sailed.map(({ stretch }) => stretch.leg))];
}
