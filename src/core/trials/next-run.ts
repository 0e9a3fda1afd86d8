import { Matrix } from 'ml-matrix';
import type { Afloat } from '../curve/boat.ts';
import { formShare, TRIED_SPREAD } from '../curve/form-spread.ts';
import { marginOf } from '../curve/hump.ts';
import { steady } from '../curve/steady.ts';
import type { Load } from '../load/shapes.ts';
import { type Fitted, predictedLogs } from './fit.ts';
import { boatWith } from './parameters.ts';
import { afloatOf, type Read, readRun, setupOf } from './readings.ts';
import type { Run, Trials } from './shapes.ts';
import { rowsAt } from './solve.ts';

/** What somebody wants to know better: consumption of a setup and load at these speeds through the water, m/s. */
export interface Question {
  readonly setup: string;
  readonly load: Load;
  readonly speeds: readonly number[];
}

/** A run that could be made. */
export interface Candidate {
  readonly setup: string;
  readonly load: Load;
  readonly speed: number;
}

/** Mean relative standard deviation of the consumption asked for, before the run and after it. */
export interface Help {
  readonly candidate: Candidate;
  readonly before: number;
  readonly after: number;
}

/** How sure the fit is, and how sure it would be after further runs. */
export interface Learning {
  readonly covariance: Matrix;
  readonly tried: Fitted['tried'];
}

/** Speeds through the water for which runs are proposed, m/s. */
const SPEEDS = [1.5, 2.5, 4, 5, 6, 7, 8, 9.5, 11, 13];

/** Ranks runs by how much each would narrow what is asked, best first. Readings of consumption and revs are reckoned with. */
export function helpfulRuns(
  trials: Trials,
  fit: Fitted,
  question: Question,
  candidates: readonly Candidate[],
): readonly Help[] {
  const study = studyOf(trials, fit, [question], candidates);
  const start: Learning = { covariance: fit.whitened, tried: fit.tried };
  const before = study.spread(start);
  return candidates
    .map((candidate, i) => ({ candidate, before, after: Math.min(study.spread(study.after(start, i)), before) }))
    .sort((a, b) => a.after - b.after);
}

/** Runs of these setups and loads at speeds that the fitted boat can hold. */
export function candidateRuns(
  trials: Trials,
  fit: Fitted,
  setups: readonly string[],
  loads: readonly Load[],
): Candidate[] {
  const values = fit.factors.map(({ value }) => value);
  return setups.flatMap((id) => {
    const setup = setupOf(trials, id);
    const boat = boatWith(trials, setup, fit.parameters, values);
    return loads.flatMap((load) => {
      const afloat = afloatOf(trials, setup, load);
      return SPEEDS.filter((speed) => marginOf(boat, afloat, steady(boat, afloat, speed).drive) >= 1).map((speed) => ({
        setup: id,
        load,
        speed,
      }));
    });
  });
}

/** Questions and candidates made ready: their slopes stay, only the covariance changes from run to run. */
export interface Study {
  spread(learning: Learning): number;
  after(learning: Learning, candidate: number): Learning;
}

export function studyOf(
  trials: Trials,
  fit: Fitted,
  questions: readonly Question[],
  candidates: readonly Candidate[],
): Study {
  const values = fit.factors.map(({ value }) => value);
  const asked = questions.flatMap(({ setup, load, speeds }) =>
    speeds.map((speed) => readRun(trials, runOf({ setup, load, speed }, false))),
  );
  const offered = candidates.map((candidate) => readRun(trials, runOf(candidate, true)));
  const slopes = slopesOf(trials, fit, values, [...asked, ...offered]);
  const wanted = asked.map(({ afloat, speed }, i) => ({ line: Matrix.rowVector([...slopes[i]![0]!]), afloat, speed }));
  const lines = offered.map(({ readings }, i) => {
    const own = slopes[asked.length + i]!;
    return new Matrix(own.map((row, k) => row.map((value) => value / readings[k]!.deviation)));
  });
  const size = fit.parameters.list.length;
  return {
    spread: (learning) => {
      const spreads = wanted.map(({ line, afloat, speed }) => {
        const variance = quadratic(line, learning.covariance);
        const unmeasured = quadratic(line, Matrix.eye(size));
        const form = openForm(learning, afloat, speed);
        return Math.sqrt(Math.min(variance + form * form, Math.max(unmeasured, variance)));
      });
      return spreads.reduce((sum, spread) => sum + spread, 0) / Math.max(spreads.length, 1);
    },
    after: ({ covariance, tried }, i) => {
      const { afloat, speed } = offered[i]!;
      return { covariance: narrowed(covariance, lines[i]!), tried: widened(tried, afloat.mass, speed) };
    },
  };
}

function quadratic(line: Matrix, covariance: Matrix): number {
  return line.mmul(covariance).mmul(line.transpose()).get(0, 0);
}

/** Covariance after readings with these slopes over their deviations: C - C J' (1 + J C J')^-1 J C. */
function narrowed(covariance: Matrix, slopes: Matrix): Matrix {
  let now = covariance;
  // One reading after the other needs no inverse.
  for (let k = 0; k < slopes.rows; k++) {
    const line = Matrix.rowVector(slopes.getRow(k));
    const lifted = now.mmul(line.transpose());
    const total = 1 + line.mmul(lifted).get(0, 0);
    now = Matrix.sub(now, lifted.mmul(lifted.transpose()).mul(1 / total));
  }
  return now;
}

function openForm({ tried }: Learning, afloat: Afloat, speed: number): number {
  return tried ? formShare({ tried: TRIED_SPREAD, ...tried }, afloat.mass, speed) : 0;
}

function widened(tried: Fitted['tried'], mass: number, speed: number): NonNullable<Fitted['tried']> {
  if (!tried) return { mass: [mass, mass], speed: [speed, speed] };
  return {
    mass: [Math.min(tried.mass[0], mass), Math.max(tried.mass[1], mass)],
    speed: [Math.min(tried.speed[0], speed), Math.max(tried.speed[1], speed)],
  };
}

/** d log(reading) / d parameter in prior deviations, at the fit. */
function slopesOf(
  trials: Trials,
  fit: Fitted,
  values: readonly number[],
  reads: readonly Read[],
): readonly (readonly (readonly number[])[])[] {
  const logsAt = (at: readonly number[]) => predictedLogs(trials, fit.parameters, reads, at);
  return rowsAt(fit.parameters.list, logsAt, values).map(({ slopes }) => slopes);
}

function runOf({ setup, load, speed }: Candidate, revs: boolean): Run {
  return {
    id: '',
    setup,
    load,
    passes: [
      { over: speed, way: 'out' },
      { over: speed, way: 'back' },
    ],
    // What will be read is not known; only how it would follow the parameters counts.
    consumed: { kind: 'rate', rate: 1 },
    ...(revs && { rpm: 1 }),
  };
}
