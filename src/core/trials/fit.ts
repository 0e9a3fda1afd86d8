import type { Matrix } from 'ml-matrix';
import type { Boat } from '../curve/boat.ts';
import { spreadAmong } from '../curve/form-spread.ts';
import { standardsWithout } from './contradictions.ts';
import type { FactorFound, Fit, FitLimit, Held, RunFound } from './fit-shapes.ts';
import { boatWith, type Parameters, parametersOf } from './parameters.ts';
import { type Read, readRefill, readRun } from './readings.ts';
import type { Trials } from './shapes.ts';
import { inverseOf, type Residuals, type Solved, solve } from './solve.ts';

/** A run this many deviations from what the others say of it contradicts them. */
const CONTRADICTS = 3;
/** Fewer that count cannot tell which of them is wrong. */
const LEAST_TO_JUDGE = 3;
/** At most this share is set aside; beyond it the runs disagree among themselves. */
const MOST_ASIDE = 1 / 3;
/** Student's t with this many degrees pulls little at far runs; settles the fit before any is judged. */
const ROBUST = 4;
/** A factor whose deviation shrank by less than this is not learned. */
const NOT_LEARNED = 0.9;
/** Correlation from which two factors are only known together. */
const TOGETHER = -0.6;
/** All loads within this share of each other are one load. */
const ONE_LOAD = 0.12;

/** A fit with what further questions need of it. */
export interface Fitted extends Fit {
  readonly parameters: Parameters;
  readonly reads: readonly Read[];
  /** Covariance in prior units, scaled up where the runs scatter more than their readings may. */
  readonly whitened: Matrix;
}

/**
 * Joint least squares of all runs and refills: factors of the hull, of each engine and of each propeller, held to their
 * priors, with full covariance. Readings are compared in logarithms. A run that contradicts the others is set aside and
 * named. No run at all gives the priors exactly.
 */
export function fitTrials(trials: Trials): Fitted {
  const parameters = parametersOf(trials);
  const reads = [
    ...trials.runs.map((run) => readRun(trials, run)),
    ...trials.refills.map((refill) => readRefill(trials, refill)),
  ];
  const logsAt = (values: ArrayLike<number>) => predictedLogs(trials, parameters, reads, values);
  const residualsAt: Residuals = (values) =>
    logsAt(values).map((logs, i) =>
      logs.map((log, k) => (log - reads[i]!.readings[k]!.measured) / reads[i]!.readings[k]!.deviation),
    );
  const first = logsAt(parameters.list.map(({ mean }) => mean));
  const aside = reads.map((read, i) => {
    if (read.leftOut) return 'left-out' as const;
    if (read.readings.length === 0) return 'nothing-read' as const;
    return first[i]!.every(Number.isFinite) ? undefined : ('beyond-model' as const);
  });
  const { solved, contradicting, disagree } = judged(
    parameters,
    residualsAt,
    aside.map((why) => why === undefined),
  );
  const counts = reads.map((_, i) => aside[i] === undefined && !contradicting.has(i));
  const { scatter, inflation, freeShare } = scatterOf(solved, counts);
  const whitened = inverseOf(solved.curvature).mul(inflation);
  const standards = standardsWithout(solved, counts.map(Number));
  const fitted = logsAt(solved.values);
  const factors = factorsFound(parameters, solved, whitened);
  const runs = reads.map((read, i): RunFound => {
    const setAside = aside[i] ?? (contradicting.has(i) ? 'contradicts' : undefined);
    const held = (kind: 'consumed' | 'rpm' | 'power'): Held | undefined => {
      const k = read.readings.findIndex((reading) => reading.kind === kind);
      const reading = read.readings[k];
      if (!reading) return undefined;
      const residual = (reading.measured - fitted[i]![k]!) / reading.deviation;
      return {
        measured: Math.exp(reading.measured),
        unmeasured: Math.exp(first[i]![k]!),
        fitted: Math.exp(fitted[i]![k]!),
        standard: Number.isFinite(residual) ? residual : 0,
      };
    };
    const [consumed, rpm, power] = [held('consumed'), held('rpm'), held('power')];
    return {
      id: read.id,
      kind: read.kind,
      speed: read.speed,
      speedDeviation: read.speedDeviation,
      mass: read.afloat.mass,
      lcg: read.afloat.lcg,
      apart: standards[i]!,
      ...(consumed && { consumed }),
      ...(rpm && { rpm }),
      ...(power && { power }),
      ...(setAside && { setAside }),
    };
  });
  const counted = reads.filter((_, i) => counts[i]);
  const lastDay = counted
    .flatMap(({ day }) => day ?? [])
    .sort()
    .at(-1);
  const tried = triedBy(counted);
  const missed = runs.flatMap(({ setAside, consumed }) =>
    consumed && (!setAside || setAside === 'contradicts') ? [missedBy(consumed)] : [],
  );
  return {
    factors,
    covariance: covarianceIn(parameters, whitened),
    runs,
    limits: limitsOf(
      factors,
      parameters,
      whitened,
      counted,
      disagree.map((i) => reads[i]!.id),
    ),
    scatter,
    formSpread: spreadAmong(missed, freeShare),
    counted: counted.length,
    ...(tried && { tried }),
    ...(lastDay && { lastDay }),
    parameters,
    reads,
    whitened,
  };
}

/** Logarithms of what the model says of each reading at some parameter values. */
export function predictedLogs(
  trials: Trials,
  parameters: Parameters,
  reads: readonly Read[],
  values: ArrayLike<number>,
): (readonly number[])[] {
  const boats = new Map<string, Boat>();
  return reads.map((read) => {
    let boat = boats.get(read.setup.id);
    if (!boat) {
      boat = boatWith(trials, read.setup, parameters, values);
      boats.set(read.setup.id, boat);
    }
    return read.predict(boat);
  });
}

interface Judged {
  readonly solved: Solved;
  readonly contradicting: ReadonlySet<number>;
  /** Runs that contradict each other, where it cannot be told which is wrong. */
  readonly disagree: readonly number[];
}

/** Solves, first robustly, then sets the worst contradicting run aside until none is left. */
function judged(parameters: Parameters, residualsAt: Residuals, usable: readonly boolean[]): Judged {
  const total = usable.filter(Boolean).length;
  const plain = usable.map(Number);
  let solved = solve(parameters, residualsAt, plain);
  if (total < LEAST_TO_JUDGE) {
    const standards = standardsWithout(solved, plain);
    const disagree = total > 1 ? indexesWhere(standards, (standard, i) => usable[i]! && standard > CONTRADICTS) : [];
    return { solved, contradicting: new Set(), disagree };
  }
  let weights = plain;
  for (let round = 0; round < 8; round++) {
    weights = solved.rows.map(({ residuals }, i) => (usable[i] ? robustWeight(residuals) : 0));
    solved = solve(parameters, residualsAt, weights, solved.values);
  }
  const contradicting = new Set<number>();
  for (;;) {
    const standards = standardsWithout(solved, weights);
    const worst = indexesWhere(
      standards,
      (standard, i) => usable[i]! && !contradicting.has(i) && standard > CONTRADICTS,
    ).sort((a, b) => standards[b]! - standards[a]!)[0];
    const counting = usable.map((use, i) => Number(use && !contradicting.has(i)));
    if (worst === undefined) {
      // The robust weights were for the search; what counts counts fully.
      const full = solve(parameters, residualsAt, counting, solved.values);
      const late = standardsWithout(full, counting);
      const still = indexesWhere(late, (standard, i) => counting[i]! > 0 && standard > CONTRADICTS);
      if (still.length === 0 || contradicting.size + 1 > total * MOST_ASIDE) {
        return { solved: full, contradicting, disagree: still };
      }
      contradicting.add(still.sort((a, b) => late[b]! - late[a]!)[0]!);
    } else if (contradicting.size + 1 > total * MOST_ASIDE) {
      const all = solve(parameters, residualsAt, plain);
      const standards = standardsWithout(all, plain);
      return {
        solved: all,
        contradicting: new Set(),
        disagree: indexesWhere(standards, (s, i) => usable[i]! && s > CONTRADICTS),
      };
    } else {
      contradicting.add(worst);
    }
    weights = usable.map((use, i) => (use && !contradicting.has(i) ? robustWeight(solved.rows[i]!.residuals) : 0));
    solved = solve(parameters, residualsAt, weights, solved.values);
  }
}

function robustWeight(residuals: readonly number[]): number {
  const square = residuals.reduce((sum, residual) => sum + residual * residual, 0);
  return (ROBUST + residuals.length) / (ROBUST + square);
}

function indexesWhere(values: readonly number[], test: (value: number, index: number) => boolean): number[] {
  return values.flatMap((value, i) => (test(value, i) ? [i] : []));
}

/**
 * Root mean square of the residuals that count, over the degrees of freedom the fit leaves; the covariance grows with
 * it where it is more than chance explains (95 %, chi-square by the Wilson-Hilferty approximation).
 */
/** Logarithm of measured over fitted. A run set aside is no more than one that just contradicts: it may be a slip. */
function missedBy({ measured, fitted, standard }: Held): number {
  return Math.log(measured / fitted) / Math.max(Math.abs(standard) / CONTRADICTS, 1);
}

interface Scatter {
  readonly scatter: number;
  readonly inflation: number;
  /** Of the readings, what they have left once the parameters are settled. */
  readonly freeShare: number;
}

function scatterOf({ rows, curvature }: Solved, counts: readonly boolean[]): Scatter {
  let sum = 0;
  let readings = 0;
  rows.forEach(({ residuals }, i) => {
    if (!counts[i]) return;
    for (const residual of residuals) sum += residual * residual;
    readings += residuals.length;
  });
  if (readings === 0) return { scatter: 0, inflation: 1, freeShare: 0 };
  // Parameters that the readings, not the priors, settle.
  const settled = curvature.rows - inverseOf(curvature).trace();
  const freeShare = Math.max(1 - settled / readings, 0);
  const free = Math.max(readings - settled, 1);
  const limit = free * (1 - 2 / (9 * free) + 1.645 * Math.sqrt(2 / (9 * free))) ** 3;
  return { scatter: Math.sqrt(sum / free), inflation: sum > limit ? sum / free : 1, freeShare };
}

function factorsFound({ list }: Parameters, { values, atBound }: Solved, whitened: Matrix): FactorFound[] {
  return list.map(({ factor, of, mean, deviation }, i) => ({
    factor,
    of,
    value: values[i]!,
    deviation: deviation * Math.sqrt(whitened.get(i, i)),
    priorValue: mean,
    priorDeviation: deviation,
    atBound: atBound[i]!,
  }));
}

function covarianceIn({ list }: Parameters, whitened: Matrix): number[][] {
  return list.map((row, i) => list.map((column, j) => whitened.get(i, j) * row.deviation * column.deviation));
}

function triedBy(counted: readonly Read[]): Fit['tried'] {
  if (counted.length === 0) return undefined;
  const masses = counted.map(({ afloat }) => afloat.mass);
  const speeds = counted.map(({ speed }) => speed);
  return {
    mass: [Math.min(...masses), Math.max(...masses)],
    speed: [Math.min(...speeds), Math.max(...speeds)],
  };
}

function limitsOf(
  factors: readonly FactorFound[],
  { list }: Parameters,
  whitened: Matrix,
  counted: readonly Read[],
  disagree: readonly string[],
): FitLimit[] {
  const limits: FitLimit[] = [];
  if (disagree.length > 0) limits.push({ code: 'runs-disagree', runs: disagree });
  if (counted.length > 0 && !counted.some(({ readings }) => readings.some(({ kind }) => kind === 'consumed'))) {
    limits.push({ code: 'no-consumption' });
  }
  const masses = counted.map(({ afloat }) => afloat.mass);
  if (masses.length > 1 && Math.max(...masses) < (1 + ONE_LOAD) * Math.min(...masses))
    limits.push({ code: 'one-load' });
  if (counted.length > 0) {
    for (let i = 0; i < list.length; i++) {
      for (let j = i + 1; j < list.length; j++) {
        const correlation = whitened.get(i, j) / Math.sqrt(whitened.get(i, i) * whitened.get(j, j));
        if (correlation < TOGETHER && list[i]!.of !== list[j]!.of) {
          limits.push({ code: 'only-together', factors: [list[i]!.factor, list[j]!.factor] });
        }
      }
    }
  }
  for (const { factor, deviation, priorDeviation, atBound } of factors) {
    if (atBound) limits.push({ code: 'at-bound', factor });
    else if (deviation > NOT_LEARNED * priorDeviation) limits.push({ code: 'not-learned', factor });
  }
  return limits;
}
