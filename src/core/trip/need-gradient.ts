import type { Afloat } from '../curve/boat.ts';
import { SPREADS } from '../curve/factors.ts';
import { type Steady, writeGradient } from '../curve/steady.ts';
import type { Tweak } from './afloat-in.ts';
import type { Prepared } from './prepare.ts';
import { MANOEUVRE_SPEED } from './remembered.ts';
import type { Run } from './sail.ts';

/** d need / d factor (see `FACTORS`) of a run. */
export function needGradient(prepared: Prepared, run: Run, tweak: Tweak): Float64Array {
  const boat = prepared.boatAt(run.scenario.batteryTemperatureC);
  const { remembered } = prepared;
  const gradient = new Float64Array(SPREADS);
  const own = new Float64Array(SPREADS);
  const add = (afloat: Afloat, speed: number, now: Steady, time: number): void => {
    writeGradient(boat, now, remembered.slope(boat, afloat, speed, now.hull), own);
    for (let k = 0; k < own.length; k++) gradient[k] = gradient[k]! + own[k]! * time * tweak.use;
  };
  add(run.atStart, MANOEUVRE_SPEED, run.slow, prepared.manoeuvring);
  for (const s of run.sailed) if (s.possible) add(s.afloat, s.speed, s.steady, s.time);
  return gradient;
}
