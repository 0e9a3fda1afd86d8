import type { Waypoint } from '../../core/route/shapes.ts';
import { sameWaypoints } from './waypoint-edits.ts';

type Waypoints = readonly Waypoint[];

/** Steps kept; a step is an array of references, so a hundred cost little even for a long track. */
const STEPS = 100;

/** Waypoints of edits still going on. Whoever is handed them on by the page must not take each frame for a step. */
const live = new WeakSet<Waypoints>();

/** Marks waypoints as those of an edit that may yet be taken back, or as done. */
export function markLive(waypoints: Waypoints, still: boolean): void {
  if (still) live.add(waypoints);
  else live.delete(waypoints);
}

/** Whether waypoints are those of an edit still going on. */
export function stillLive(waypoints: Waypoints): boolean {
  return live.has(waypoints);
}

/**
 * Undo and redo over the waypoints, whoever changed them. Map and table keep one each and stay in step, because a
 * change that leads back to the step before, or on to the one after, counts as that step.
 */
export class RouteHistory {
  #past: Waypoints[] = [];
  #present: Waypoints | undefined;
  #future: Waypoints[] = [];

  /** The waypoints as last followed. */
  get present(): Waypoints | undefined {
    return this.#present;
  }

  get canUndo(): boolean {
    return this.#past.length > 0;
  }

  get canRedo(): boolean {
    return this.#future.length > 0;
  }

  /** Takes note of the waypoints as they are now, unless they are live; the first ones are where it starts. */
  follow(waypoints: Waypoints): void {
    if (live.has(waypoints)) return;
    const now = this.#present;
    if (now === undefined) {
      this.#present = waypoints;
    } else if (sameWaypoints(now, waypoints)) {
      return;
    } else if (leadsTo(this.#past, waypoints)) {
      this.undo();
    } else if (leadsTo(this.#future, waypoints)) {
      this.redo();
    } else {
      this.#past = [...this.#past, now].slice(-STEPS);
      this.#future = [];
      this.#present = waypoints;
    }
  }

  /** The waypoints one step back, now the present ones; undefined at the start. */
  undo(): Waypoints | undefined {
    return this.#step(this.#past, this.#future);
  }

  redo(): Waypoints | undefined {
    return this.#step(this.#future, this.#past);
  }

  #step(from: Waypoints[], onto: Waypoints[]): Waypoints | undefined {
    const next = from.pop();
    if (next === undefined) return undefined;
    if (this.#present) onto.push(this.#present);
    this.#present = next;
    return next;
  }
}

function leadsTo(steps: readonly Waypoints[], waypoints: Waypoints): boolean {
  const next = steps.at(-1);
  return next !== undefined && sameWaypoints(next, waypoints);
}
