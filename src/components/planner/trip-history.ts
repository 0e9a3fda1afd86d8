import type { Draft } from './first-trip.ts';

/** Steps kept; a step is a few references into trips that share most of their parts. */
const STEPS = 100;
/** Changes of the same part this close together are one step, such as the digits of a figure; ms. */
const TOGETHER = 1200;

interface Step {
  readonly draft: Draft;
  /** Another trip took the place of this one. */
  readonly whole: boolean;
}

/**
 * Undo and redo over the whole trip. Map and waypoint table have their own over the route; a change that leads back to
 * the step before, or on to the one after, counts as that step, so that all of them stay in step.
 */
export class TripHistory {
  #past: Step[] = [];
  #future: Step[] = [];
  /** Where an edit began that may yet be taken back. */
  #began: Draft | undefined;
  #last: { readonly part: string; readonly at: number } | undefined;

  get canUndo(): boolean {
    return this.#past.length > 0;
  }

  get canRedo(): boolean {
    return this.#future.length > 0;
  }

  /** Takes note of a change at a time in ms; `live`: it goes on, as under a finger. */
  changed(
    from: Draft,
    to: Draft,
    { at, live = false, whole = false }: { at: number; live?: boolean; whole?: boolean },
  ) {
    if (live) {
      this.#began ??= from;
      return;
    }
    const before = this.#began ?? from;
    this.#began = undefined;
    if (sameTrip(before, to)) return;
    const part = partOf(before, to);
    const back = this.#past.at(-1);
    const on = this.#future.at(-1);
    if (!whole && back && sameTrip(back.draft, to)) {
      this.#step(this.#past, this.#future, before);
    } else if (!whole && on && sameTrip(on.draft, to)) {
      this.#step(this.#future, this.#past, before);
    } else {
      const goesOn = !whole && back && this.#last?.part === part && at - this.#last.at < TOGETHER;
      if (!goesOn) this.#past = [...this.#past, { draft: before, whole }].slice(-STEPS);
      this.#future = [];
      this.#last = whole ? undefined : { part, at };
      return;
    }
    this.#last = undefined;
  }

  /** The trip one step back, and whether it is another one; undefined at the start. */
  undo(now: Draft): Step | undefined {
    return this.#step(this.#past, this.#future, now);
  }

  redo(now: Draft): Step | undefined {
    return this.#step(this.#future, this.#past, now);
  }

  #step(from: Step[], onto: Step[], now: Draft): Step | undefined {
    const next = from.pop();
    if (!next) return undefined;
    this.#last = undefined;
    this.#began = undefined;
    onto.push({ draft: now, whole: next.whole });
    return next;
  }
}

/** Which part of the trip differs; several at once are one name. */
function partOf({ trip: a }: Draft, { trip: b }: Draft): string {
  const parts = ['name', 'craft', 'load', 'route', 'conditions', 'policy', 'trials'] as const;
  return parts.filter((part) => a[part] !== b[part]).join(' ');
}

/** Whether two drafts are the same trip to the last figure. */
export function sameTrip(a: Draft, b: Draft): boolean {
  return a.trip === b.trip || JSON.stringify(a.trip) === JSON.stringify(b.trip);
}
