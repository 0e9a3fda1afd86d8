import type { Load } from '../load/shapes.ts';
import type { Fitted } from './fit.ts';
import { type Candidate, candidateRuns, type Learning, type Question, studyOf } from './next-run.ts';
import type { Trials } from './shapes.ts';

/** A load that can be put together on the day. */
export interface NamedLoad {
  readonly name: string;
  readonly load: Load;
}

export interface DayOut {
  /** Ids of the setups at hand, the one mounted first. */
  readonly setups: readonly string[];
  readonly loads: readonly NamedLoad[];
  /** On the water, s. */
  readonly time: number;
  /** What shall be known better; empty: all setups and loads of the day over all their speeds. */
  readonly questions?: readonly Question[];
}

export type SheetStep =
  | { readonly kind: 'warm-up'; readonly seconds: number }
  | { readonly kind: 'change-setup'; readonly setup: string; readonly seconds: number }
  | { readonly kind: 'change-load'; readonly load: string; readonly seconds: number }
  | {
      readonly kind: 'run';
      readonly setup: string;
      readonly load: string;
      /** Through the water, m/s; the sheet asks for this throttle, not for this exact speed. */
      readonly speed: number;
      readonly seconds: number;
    };

export interface RunSheet {
  readonly steps: readonly SheetStep[];
  /** s */
  readonly time: number;
  /** Mean relative standard deviation of what is asked, before the day and after it. */
  readonly before: number;
  readonly after: number;
}

/** Warm-up; a minute each way with the turn and the writing down; changes of people; of an engine or propeller, ashore (common practice, no source). */
const WARM_UP = 600;
const PAIR = 300;
const CHANGE_LOAD = 300;
const CHANGE_SETUP = 1500;
/** The same run more often than this narrows on paper only: what a throttle setting errs by, it errs by every time. */
const MOST_ALIKE = 2;
/** Narrowing less than this is not worth a run, relative. */
const WORTH = 0.003;

/**
 * Which runs to make in a day, and in which order: greedily the one that narrows what is asked most for its time, then
 * sorted so that people and engines change least: setups last, speeds rising within a load.
 */
export function runSheet(trials: Trials, fit: Fitted, day: DayOut): RunSheet {
  const loads = day.loads.map(({ load }) => load);
  const candidates = candidateRuns(trials, fit, day.setups, loads);
  const questions = day.questions ?? allOf(candidates);
  const study = studyOf(trials, fit, questions, candidates);
  let learning: Learning = { covariance: fit.whitened, tried: fit.tried };
  const before = study.spread(learning);
  let now = before;
  let left = day.time - WARM_UP;
  const chosen: number[] = [];
  const used = { setups: new Set([day.setups[0]]), loads: new Set<string>() };
  for (;;) {
    let best: { index: number; gain: number; cost: number; learning: Learning; spread: number } | undefined;
    candidates.forEach((candidate, index) => {
      const cost = costOf(candidate, loads, used);
      const alike = chosen.filter((other) => other === index).length;
      if (cost > left || alike >= MOST_ALIKE) return;
      const next = study.after(learning, index);
      const spread = study.spread(next);
      // The same run again only tells more where chance was large; once each first.
      const gain = (now - spread) / cost / (1 + alike);
      if (now - spread > WORTH * now && (!best || gain > best.gain))
        best = { index, gain, cost, learning: next, spread };
    });
    if (!best) break;
    const candidate = candidates[best.index]!;
    left -= best.cost;
    used.setups.add(candidate.setup);
    used.loads.add(keyOf(candidate, loads));
    learning = best.learning;
    now = best.spread;
    chosen.push(best.index);
  }
  const steps = ordered(
    chosen.map((index) => candidates[index]!),
    day,
  );
  return { steps, time: steps.reduce((sum, { seconds }) => sum + seconds, 0), before, after: now };
}

function costOf(
  candidate: Candidate,
  loads: readonly Load[],
  used: { readonly setups: ReadonlySet<string | undefined>; readonly loads: ReadonlySet<string> },
): number {
  let cost = PAIR;
  if (!used.setups.has(candidate.setup)) cost += CHANGE_SETUP;
  if (!used.loads.has(keyOf(candidate, loads))) cost += CHANGE_LOAD;
  return cost;
}

function keyOf({ setup, load }: Candidate, loads: readonly Load[]): string {
  return `${setup} ${loads.indexOf(load)}`;
}

function ordered(chosen: readonly Candidate[], { setups, loads }: DayOut): SheetStep[] {
  if (chosen.length === 0) return [];
  const steps: SheetStep[] = [{ kind: 'warm-up', seconds: WARM_UP }];
  for (const setup of setups) {
    const own = chosen.filter((candidate) => candidate.setup === setup);
    if (own.length === 0) continue;
    if (setup !== setups[0]) steps.push({ kind: 'change-setup', setup, seconds: CHANGE_SETUP });
    for (const { name, load } of loads) {
      const here = own.filter((candidate) => candidate.load === load).sort((a, b) => a.speed - b.speed);
      if (here.length === 0) continue;
      steps.push({ kind: 'change-load', load: name, seconds: CHANGE_LOAD });
      for (const { speed } of here) steps.push({ kind: 'run', setup, load: name, speed, seconds: PAIR });
    }
  }
  return steps;
}

/** Every setup and load over the speeds it can hold. */
function allOf(candidates: readonly Candidate[]): Question[] {
  const questions = new Map<string, Question & { speeds: number[] }>();
  const loads: Load[] = [];
  for (const { setup, load, speed } of candidates) {
    if (!loads.includes(load)) loads.push(load);
    const key = `${setup} ${loads.indexOf(load)}`;
    const question = questions.get(key) ?? { setup, load, speeds: [] };
    question.speeds.push(speed);
    questions.set(key, question);
  }
  return [...questions.values()];
}
