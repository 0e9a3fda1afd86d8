import { normalDeviates, seededChance } from './chance.ts';
import { Level } from './level.ts';
import { probabilityWithin, WEIGHTS } from './need.ts';
import type { Run } from './sail.ts';
import { LEG_LENGTH, NO_HEADWAY, SPEED_SPREAD, spreadsOf, usableDeviation } from './spread.ts';
import type { Standing } from './standing.ts';

/** What a trip's uncertainty is made of. */
export type Doubt = 'boat' | 'load' | 'speed' | 'weather' | 'stream' | 'gauge';

export interface Risk {
  /** That the reserve stays whole, and that anything is left at the end; 0 to 1. */
  readonly reserveWhole: number;
  readonly homeAtAll: number;
  /** Share of the variance (of the logarithm of need over usable) that each brings; they add up to 1. Largest first. */
  readonly shares: readonly { readonly doubt: Doubt; readonly share: number }[];
}

/** The fast propagation: the same numbers as the plan's, with what they come from. */
export function risk({ prepared, fuel }: Standing): Risk {
  const { run, usable, reserve, need } = fuel;
  const doubts = spreadsOf(prepared, run, fuel.spread);
  const logs = need.nodes.map(Math.log);
  const headway = WEIGHTS.reduce((sum, weight, k) => sum + (logs[k]! < Infinity ? weight : 0), 0);
  const mean = WEIGHTS.reduce((sum, weight, k) => sum + (logs[k]! < Infinity ? weight * logs[k]! : 0), 0) / headway;
  const stream =
    WEIGHTS.reduce((sum, weight, k) => sum + (logs[k]! < Infinity ? weight * (logs[k]! - mean) ** 2 : 0), 0) / headway;
  const gauge = (usableDeviation(prepared) / Math.max(usable, run.need, 1e-9)) ** 2;
  const variances: Record<Doubt, number> = {
    boat: doubts.boat ** 2,
    load: doubts.load ** 2,
    speed: doubts.speed ** 2,
    weather: doubts.weather ** 2,
    stream,
    gauge,
  };
  const total = Object.values(variances).reduce((sum, value) => sum + value, 0);
  const shares = (Object.keys(variances) as Doubt[])
    .map((doubt) => ({ doubt, share: total > 0 ? variances[doubt] / total : 0 }))
    .sort((a, b) => b.share - a.share);
  const deviation = usableDeviation(prepared);
  return {
    reserveWhole: run.possible ? probabilityWithin(need, usable - reserve, deviation) : 0,
    homeAtAll: run.possible ? probabilityWithin(need, usable, deviation) : 0,
    shares,
  };
}

export interface Sampled {
  readonly samples: number;
  /** Of the samples: those that kept the reserve, and those that had anything left. */
  readonly reserveWhole: number;
  readonly homeAtAll: number;
}

export interface Sampling {
  readonly samples: number;
  readonly seed: number;
}

/**
 * The same trip played many times over: boat, load, speed made, weather of the legs, stream and gauge drawn anew each
 * time, nothing linearised. Every draw is played as it came and mirrored (antithetic variates, Hammersley and Morton
 * 1956), which halves the drawing; the standard error of a probability P stays near sqrt(P (1 - P) / samples) or below.
 */
export function sampleRisk({ prepared, fuel }: Standing, { samples, seed }: Sampling): Sampled {
  const { run, usable, reserve } = fuel;
  if (!run.possible) return { samples, reserveWhole: 0, homeAtAll: 0 };
  const normal = normalDeviates(seededChance(seed));
  const { boat, load, streamError, leg } = spreadsOf(prepared, run, fuel.spread);
  const common = Math.hypot(boat, load);
  const deviation = usableDeviation(prepared);
  const legs = run.sailed.map(({ stretch, ground, speed, use }, i) => {
    const weather = oneLeg(stretch.distance);
    // Fair or foul by the way: a stream that helps out hinders home.
    const fair = stretch.part === 'out' ? 1 : -1;
    return { ...weather, ground, speed, spent: use * ground, fair, filled: run.refills?.to[i] };
  });
  const played = [new Played(run), new Played(run)] as const;
  let [whole, home] = [0, 0];
  for (let n = 0; n < samples; n += 2) {
    const factor = Math.exp(common * normal());
    const faster = Math.exp(SPEED_SPREAD * normal());
    const stream = streamError * normal();
    let weather = normal();
    const [one, mirrored] = played;
    one.starts(factor, faster - 1);
    mirrored.starts(1 / factor, 1 / faster - 1);
    for (const { ground, speed, spent, fair, decay, byEnd, endDeviation, meanDeviation, carried, filled } of legs) {
      const end = endDeviation * normal();
      const mean = weather * carried + byEnd * end + meanDeviation * normal();
      weather = weather * decay + end;
      const worse = Math.exp(leg * mean);
      one.sails(ground + speed * one.gained + fair * stream, spent * worse, filled);
      mirrored.sails(ground + speed * mirrored.gained - fair * stream, spent / worse, filled);
    }
    const gauge = deviation * normal();
    for (let side = 0; side < 2 && n + side < samples; side++) {
      const need = played[side as 0 | 1].needed();
      const there = usable + (side === 0 ? gauge : -gauge);
      if (need <= there - reserve) whole++;
      if (need <= there) home++;
    }
  }
  return { samples, reserveWhole: whole / samples, homeAtAll: home / samples };
}

/** One playing of a trip. */
class Played {
  readonly #run: Run;
  #need = 0;
  #factor = 1;
  #level: Level | undefined;
  /** Share of speed that it makes above what was planned. */
  gained = 0;

  constructor(run: Run) {
    this.#run = run;
  }

  starts(factor: number, gained: number): void {
    const { manoeuvring, refills } = this.#run;
    this.gained = gained;
    this.#factor = factor;
    this.#need = manoeuvring * factor;
    this.#level = refills && new Level(refills.usable);
    this.#level?.draw(this.#need);
  }

  /** A stretch at a speed over ground, m/s, that spends so much times that speed, and fills up to so much at its end. */
  sails(made: number, spent: number, filled: number | undefined): void {
    if (made < NO_HEADWAY) this.#need = Infinity;
    if (this.#need === Infinity) return;
    const here = (spent / made) * this.#factor;
    this.#need += here;
    this.#level?.draw(here);
    if (filled !== undefined) this.#level?.fillTo(filled);
  }

  needed(): number {
    return this.#level && this.#need < Infinity ? this.#level.need : this.#need;
  }
}

/**
 * Weather along a leg, m, as a stationary Gaussian process that forgets over `LEG_LENGTH` (Ornstein-Uhlenbeck): how its
 * value at the end and its mean over the leg follow the value at the start, with their joint spread.
 */
function oneLeg(distance: number) {
  const length = distance / LEG_LENGTH;
  const decay = Math.exp(-length);
  const lost = 1 - decay;
  if (length < 1e-6) return { decay, carried: 1, byEnd: 0, endDeviation: 0, meanDeviation: 0 };
  const endVariance = 1 - decay * decay;
  const covariance = (lost * lost) / length;
  const meanVariance = (2 * length - 3 + 4 * decay - decay * decay) / (length * length);
  const byEnd = covariance / endVariance;
  return {
    decay,
    carried: lost / length,
    byEnd,
    endDeviation: Math.sqrt(endVariance),
    meanDeviation: Math.sqrt(Math.max(meanVariance - byEnd * covariance, 0)),
  };
}
