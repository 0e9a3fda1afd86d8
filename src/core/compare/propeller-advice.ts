import type { Afloat, Boat } from '../curve/boat.ts';
import { PLANING_FROUDE, speedAtFroude } from '../curve/hump.ts';
import type { Band } from '../curve/shapes.ts';
import { INCH } from '../units/convert.ts';
import { type FullThrottle, fullThrottle, pitched, revsOf } from './full-throttle.ts';

/** Revs at full throttle that the engine's maker wants, rpm. */
export interface RevWindow {
  readonly low: number;
  readonly high: number;
}

/** Rated revs and what makers usually allow below and above (common practice, no source: 5000-6000 about 5500). */
export function usualWindow(ratedRpm: number): RevWindow {
  return { low: Math.round((ratedRpm * 0.91) / 50) * 50, high: Math.round((ratedRpm * 1.09) / 50) * 50 };
}

/** Revs that an inch of pitch is said to change (forum practice, for propellers of about twice the pitch). */
const PRACTICE_PER_INCH = { low: 200, high: 300 };

/** Error of a rev counter and of reading it, as a share; one standard deviation (common practice, no source). */
const READING = 0.01;
const Z90 = 1.2816;
/** How far from the pitch now anybody looks, m. */
const REACH = 4 * INCH;
const STEP = INCH / 2;

export interface Pitch {
  /** m, and against the one now. */
  readonly pitch: number;
  readonly change: number;
  /** At full throttle, from what was measured where it was. */
  readonly rpm: number;
  readonly topSpeed: number;
  readonly inWindow: boolean;
  /** Full throttle gets the boat onto the plane. */
  readonly planes: boolean;
}

export interface PropellerAdvice {
  readonly window: RevWindow;
  /** By the model, for this load. */
  readonly predicted: FullThrottle;
  readonly measured: number | undefined;
  /** What counts: measured, or predicted. */
  readonly rpm: Band;
  /** `maybe-`: the band reaches into the range. */
  readonly finding: 'in-window' | 'too-low' | 'too-high' | 'maybe-low' | 'maybe-high';
  /** Full throttle does not get a planing hull over the hump: weight and power come before the propeller. */
  readonly stuck: boolean;
  /** By our propeller model, about the pitch now, rpm per inch of pitch less. */
  readonly perInch: number;
  /** Pitch change that brings revs to the window's upper half, m; by the model, by practice, undefined: none wanted. */
  readonly change: { readonly model: number; readonly practice: readonly [number, number] } | undefined;
  readonly pitches: readonly Pitch[];
}

/**
 * Whether the propeller lets the engine turn as it should at full throttle with this load, and what another pitch
 * would do. Measured revs, rpm, go before predicted ones; the model then only says how pitch changes them.
 */
export function propellerAdvice(boat: Boat, afloat: Afloat, range: RevWindow, measured?: number): PropellerAdvice {
  const predicted = fullThrottle(boat, afloat);
  const now = predicted.rpm.median;
  const scale = measured === undefined ? 1 : measured / now;
  const rpm =
    measured === undefined
      ? predicted.rpm
      : { low: measured * (1 - Z90 * READING), median: measured, high: measured * (1 + Z90 * READING) };
  const { pitch } = boat.craft.drive.propeller;
  const onPlane = speedAtFroude(boat, afloat, PLANING_FROUDE);
  const pitches: Pitch[] = [];
  for (let change = -REACH; change <= REACH + 1e-9; change += STEP) {
    // Flatter than half of it is another kind of propeller.
    if (pitch + change < 0.5 * pitch) continue;
    const { speed, rpm: turned } = revsOf(pitched(boat, change), afloat);
    const there = scale * turned;
    const inWindow = there >= range.low && there <= range.high;
    pitches.push({ pitch: pitch + change, change, rpm: there, topSpeed: speed, inWindow, planes: speed >= onPlane });
  }
  const perInch = scale * slopePerInch(boat, afloat);
  const finding = findingOf(rpm, range);
  // The upper half: a heavier load or a dirty bottom still stays inside.
  const aim = (range.low + 3 * range.high) / 4;
  const missing = aim - rpm.median;
  const wanted = finding !== 'in-window';
  return {
    window: range,
    predicted,
    measured,
    rpm,
    finding,
    stuck: boat.craft.hull.form !== 'displacement' && predicted.speed < onPlane,
    perInch,
    change: wanted
      ? {
          model: modelChange(pitches, aim) ?? (-missing / perInch) * INCH,
          practice: [(-missing / PRACTICE_PER_INCH.high) * INCH, (-missing / PRACTICE_PER_INCH.low) * INCH],
        }
      : undefined,
    pitches,
  };
}

function findingOf({ low, median, high }: Band, range: RevWindow): PropellerAdvice['finding'] {
  if (median < range.low) return high < range.low ? 'too-low' : 'maybe-low';
  if (median > range.high) return low > range.high ? 'too-high' : 'maybe-high';
  return 'in-window';
}

/** Revs for an inch less, from half an inch to both sides. */
function slopePerInch(boat: Boat, afloat: Afloat): number {
  const finer = revsOf(pitched(boat, -INCH / 2), afloat).rpm;
  const coarser = revsOf(pitched(boat, INCH / 2), afloat).rpm;
  return finer - coarser;
}

/** Between the two tried pitches that enclose the aim. */
function modelChange(pitches: readonly Pitch[], aim: number): number | undefined {
  for (let i = 1; i < pitches.length; i++) {
    const [a, b] = [pitches[i - 1]!, pitches[i]!];
    if (a.rpm >= aim && b.rpm <= aim && a.rpm > b.rpm) {
      return a.change + ((b.change - a.change) * (a.rpm - aim)) / (a.rpm - b.rpm);
    }
  }
  return undefined;
}
