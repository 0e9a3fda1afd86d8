import type { ReactiveController, ReactiveControllerHost } from 'lit';
import type { Curve } from '../../core/curve/shapes.ts';
import type { WatersFile } from '../../core/route/shapes.ts';
import { prepareWaters, type Waters } from '../../core/route/waters.ts';
import { quickPlan } from '../../core/trip/quick-plan.ts';
import type { Plan, TippingValue, Trip } from '../../core/trip/shapes.ts';
import type { Problem, Result } from '../../core/units/result.ts';
import type { Measured } from './fitter.ts';

type Fitter = typeof import('./fitter.ts');
type SlowFigures = typeof import('./slow-figures.ts');

/** Rest after the last change before the slower figures (payload, tipping values) are worked out, ms. */
const REST = 140;
/** Work between two breaths of the page, ms. */
const SLICE = 8;

/**
 * Makes plans: the verdict at once, the slower figures and the curve when the hand rests. Between the two the last slow
 * figures stand and `settled` is false.
 */
export class PlanMaker implements ReactiveController {
  readonly #host: ReactiveControllerHost;
  readonly #told: (plan: Plan | undefined) => void;
  #waters: Waters | undefined;
  #watersFile: WatersFile | undefined;
  #timer: ReturnType<typeof setTimeout> | undefined;
  #trip: Trip | undefined;
  #entered: Trip | undefined;
  #fetching = false;
  #curveFor: unknown[] = [];
  plan: Plan | undefined;
  curve: Curve | undefined;
  problems: readonly Problem[] = [];
  settled = true;
  /** How far the departure may shift: known some time after the rest of the plan. */
  shifts: readonly TippingValue[] = [];
  #shifting: Generator<void, readonly TippingValue[]> | undefined;
  /** What the trials that the trip carries say of its boat. */
  measured: Measured | undefined;
  /** The trials could not be worked out: the plan is that of an unmeasured boat. */
  trialsFailed = false;
  #fitter: Fitter | undefined;
  /** What works out the slower figures could not be loaded: the plan does without. */
  slowFailed = false;
  #slow: SlowFigures | undefined;
  #made = 0;
  #connected = false;
  #curveShown = false;

  /** `told` hears of each settled plan, or of its absence. */
  constructor(host: ReactiveControllerHost, told: (plan: Plan | undefined) => void) {
    this.#host = host;
    this.#told = told;
    host.addController(this);
  }

  /** The trip as it was planned, with what its trials say; and the waters it was planned on. */
  get trip(): Trip | undefined {
    return this.#trip;
  }

  get waters(): Waters | undefined {
    return this.#waters;
  }

  hostConnected(): void {
    this.#connected = true;
    // An element moved in its page goes on where it was taken out.
    if (!this.settled && this.#entered) this.make(this.#entered, this.#watersFile);
    else this.#shift();
  }

  hostDisconnected(): void {
    this.#connected = false;
    clearTimeout(this.#timer);
  }

  make(entered: Trip, file: WatersFile | undefined): void {
    this.#entered = entered;
    if (file !== this.#watersFile) {
      this.#watersFile = file;
      this.#waters = file && prepareWaters(file);
    }
    if (entered.trials && !this.#fitter && !this.trialsFailed) {
      // What was tried decides the answer, so there is none before it is worked out.
      void this.#fetchFitter();
      return;
    }
    this.#trip = this.#measure(entered);
    this.#take();
    this.settled = false;
    this.#shifting = undefined;
    clearTimeout(this.#timer);
    const made = ++this.#made;
    this.#timer = setTimeout(() => void this.#goOn(made), REST);
  }

  /** Somebody comes near the curve: from here on it goes with the trip. */
  async showCurve(): Promise<void> {
    this.#curveShown = true;
    // Until the slower figures are due; they bring it along.
    if (!this.settled) return;
    await this.#loadSlow();
    if (this.settled && this.#connected) this.#renewCurve();
  }

  async #loadSlow(): Promise<void> {
    try {
      this.#slow ??= await import('./slow-figures.ts');
      this.slowFailed = false;
    } catch {
      this.slowFailed = true;
    }
  }

  /** The curve and the slower figures of the trip that was made last. */
  async #goOn(made: number): Promise<void> {
    await this.#loadSlow();
    const trip = this.#trip;
    // Meanwhile another change may have come, or the element may have gone.
    if (made !== this.#made || !trip || !this.#connected) return;
    if (!this.#slow) {
      this.#settle(quickPlan(trip, this.#waters));
      return;
    }
    this.#renewCurve();
    const steps = this.#slow.planInSteps(trip, this.#waters);
    this.#timer = setTimeout(() => this.#step(steps));
  }

  /** The slower figures a few milliseconds at a time; another change stops them. */
  #step(steps: Generator<void, Result<Plan>>): void {
    const until = performance.now() + SLICE;
    do {
      const step = steps.next();
      if (step.done) {
        this.#settle(step.value);
        return;
      }
    } while (performance.now() < until);
    this.#timer = setTimeout(() => this.#step(steps));
  }

  #settle(result: Result<Plan>): void {
    this.problems = result.ok ? [] : result.problems;
    this.plan = result.ok ? result.value : undefined;
    this.settled = true;
    // Somebody may have come near it since the slower figures were begun.
    this.#renewCurve();
    this.shifts = [];
    this.#shifting = this.plan && this.#trip && this.#slow?.departuresInSteps(this.#trip, this.#waters, this.plan);
    this.#host.requestUpdate();
    this.#told(this.plan);
    this.#timer = setTimeout(() => this.#shift());
  }

  /** A quick plan for another hour between two breaths of the page, until it is known how far the departure may shift. */
  #shift(): void {
    const step = this.#shifting?.next();
    if (!step) return;
    if (!step.done) {
      this.#timer = setTimeout(() => this.#shift());
      return;
    }
    this.#shifting = undefined;
    this.shifts = step.value;
    if (this.shifts.length > 0) this.#host.requestUpdate();
  }

  /** Another trip with what its trials say of its boat; undefined while what works that out is on its way. */
  measuredTrip(entered: Trip): Trip | undefined {
    if (!entered.trials || this.trialsFailed) return entered;
    if (!this.#fitter) {
      void this.#fetchFitter();
      return undefined;
    }
    return this.#fitter.measuredTrip(entered, new Date().toISOString().slice(0, 10)).trip;
  }

  /** Whether trials can be worked out at once. */
  get measures(): boolean {
    return this.#fitter !== undefined || this.trialsFailed;
  }

  #measure(entered: Trip): Trip {
    const today = new Date().toISOString().slice(0, 10);
    const { trip, measured } = this.#fitter?.measuredTrip(entered, today) ?? { trip: entered, measured: undefined };
    this.measured = measured;
    return trip;
  }

  async #fetchFitter(): Promise<void> {
    if (this.#fetching) return;
    this.#fetching = true;
    try {
      [this.#fitter] = await Promise.all([import('./fitter.ts'), import('../measured-note/measured-note.ts')]);
    } catch {
      this.trialsFailed = true;
    }
    this.#fetching = false;
    if (this.#entered) this.make(this.#entered, this.#watersFile);
    this.#host.requestUpdate();
  }

  #take(): void {
    if (!this.#trip) return;
    const before = this.plan;
    const result = quickPlan(this.#trip, this.#waters);
    this.problems = result.ok ? [] : result.problems;
    if (!result.ok) {
      this.plan = undefined;
      return;
    }
    const { store, full } = result.value;
    // What another boat may carry says nothing about this one.
    const sameStore = before?.store === store && before.full === full;
    this.plan = sameStore
      ? {
          ...result.value,
          payload: before.payload,
          tipping: before.tipping,
          fillNeeded: before.fillNeeded,
          turnBackSlow: before.turnBackSlow,
        }
      : result.value;
  }

  /** The curve does not depend on the route, so a dragged waypoint leaves it alone. */
  #renewCurve(): void {
    const trip = this.#trip;
    if (!this.#curveShown || !trip || !this.#slow) return;
    const { water, batteryTemperatureC } = trip.conditions;
    const now = [trip.craft, trip.load, water, batteryTemperatureC];
    if (now.every((part, i) => part === this.#curveFor[i])) return;
    this.#curveFor = now;
    this.curve = this.#slow.tripCurve(trip);
    this.#host.requestUpdate();
  }
}
