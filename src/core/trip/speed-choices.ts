import type { Waters } from '../route/waters.ts';
import { fuelVerdict } from './fuel-verdict.ts';
import { heldProbability } from './held.ts';
import { judgeLight } from './judge-light.ts';
import { prepare } from './prepare.ts';
import type { Amount, Trip, Verdict } from './shapes.ts';

/** The whole trip at one speed through the water, zone limits and waves kept. Amounts kg or J, times s. */
export interface SpeedChoice {
  /** m/s */
  readonly speed: number;
  readonly time: number;
  readonly need: Amount;
  readonly left: Amount;
  /** What fuel or charge allows; the rest of the plan is not judged here. */
  readonly fuel: Verdict;
  /** That the drive holds it on every stretch: the least probability of all. */
  readonly held: number;
  /** Home in daylight, as far as a date tells. */
  readonly lit: boolean;
  /** Largest throttle and revs on the way. */
  readonly throttle: number;
  readonly rpm: number;
}

export interface SpeedChoices {
  /** Slowest first; only speeds the likely boat can hold. */
  readonly choices: readonly SpeedChoice[];
  /**
   * Least fuel or charge; earliest home with the reserve whole; and with the lowest revs that is home with it in time and
   * in daylight: noise follows revs, and no more is known of it. Indexes into `choices`.
   */
  readonly thriftiest: number | undefined;
  readonly earliest: number | undefined;
  readonly lowestRevs: number | undefined;
}

/** Steps of the search up to a speed, m/s: finer where a step is much of the speed. And its ends. */
const STEPS = [
  { to: 2.5, step: 0.1 },
  { to: 4, step: 0.25 },
  { to: Infinity, step: 0.5 },
] as const;
const SLOWEST = 1;
const FASTEST = 16;
/** A boat that most of its kind cannot hold is no choice. */
const HELD = 0.5;

/** The trade of time against fuel or charge left, over one speed for the whole trip. */
export function speedChoices(trip: Trip, waters: Waters | undefined): SpeedChoices {
  const prepared = prepare(trip, waters);
  const choices: SpeedChoice[] = [];
  for (const speed of tried()) {
    const stretches = prepared.stretches.map((stretch) => ({ ...stretch, speed }));
    const fuel = fuelVerdict({ ...prepared, stretches });
    const { run, verdict, usable } = fuel;
    if (!run.possible) continue;
    const boat = prepared.boatAt(run.scenario.batteryTemperatureC);
    const held = Math.min(...run.sailed.map((s) => heldProbability(boat, s)));
    if (held < HELD) continue;
    choices.push({
      speed,
      time: run.time,
      need: run.need,
      left: usable - run.need,
      fuel: verdict,
      held,
      lit: judgeLight(prepared, fuel).every(({ level }) => level !== 'no-go'),
      throttle: Math.max(...run.sailed.map((s) => s.steady.drive.throttle)),
      rpm: Math.max(...run.sailed.map((s) => s.steady.drive.rpm)),
    });
  }
  const allowed = trip.policy.timeAllowed ?? Infinity;
  const sound = (choice: SpeedChoice): boolean => choice.fuel !== 'no-go' && choice.time <= allowed && choice.lit;
  return {
    choices,
    thriftiest: best(choices, (choice) => (choice.time <= allowed ? -choice.need : undefined)),
    earliest: best(choices, (choice) => (sound(choice) ? -choice.time : undefined)),
    lowestRevs: best(choices, (choice) => (sound(choice) ? -choice.rpm : undefined)),
  };
}

function tried(): readonly number[] {
  const speeds: number[] = [];
  for (let speed = SLOWEST; speed <= FASTEST; ) {
    speeds.push(speed);
    const { step } = STEPS.find(({ to }) => speed < to)!;
    speed = Math.round((speed + step) * 100) / 100;
  }
  return speeds;
}

function best(choices: readonly SpeedChoice[], score: (choice: SpeedChoice) => number | undefined): number | undefined {
  let found: number | undefined;
  let most = -Infinity;
  choices.forEach((choice, i) => {
    const own = score(choice);
    if (own !== undefined && own > most) {
      most = own;
      found = i;
    }
  });
  return found;
}
