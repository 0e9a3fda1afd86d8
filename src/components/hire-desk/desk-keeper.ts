import type { ReactiveController, ReactiveControllerHost } from 'lit';
import { readFuelNote, readHire, readMorning } from '../../core/files/desk-file.ts';
import { readFleet } from '../../core/files/fleet-file.ts';
import type { Fleet, FuelNote, Hire, Morning } from '../../core/hire/shapes.ts';
import type { Result } from '../../core/units/result.ts';
import { DEMO_FLEET } from '../reserve-check/demo-fleet.ts';
import { whenHeld } from '../store/open-store.ts';
import { whyUnkept } from '../store/why-unkept.ts';
import type { UnitSystem } from '../units/measures.ts';
import { DatabasePlace } from './database-place.ts';
import type { DeskPlace, Kept, NoteOf, Replacement } from './desk-place.ts';
import { MemoryPlace } from './memory-place.ts';

/** What the desk keeps, checked. */
export interface Desk {
  readonly fleet: Fleet;
  /** The invented fleet, since the desk has not brought its own. */
  readonly demo: boolean;
  readonly morning: Morning | undefined;
  readonly units: UnitSystem;
  readonly hires: readonly Hire[];
  readonly notes: readonly FuelNote[];
  /** Entries that no door lets through; they stay where they are. */
  readonly unreadable: number;
}

const CHANNEL = 'homeleg-desk';
const NOTHING: Desk = {
  fleet: DEMO_FLEET,
  demo: true,
  morning: undefined,
  units: 'metric',
  hires: [],
  notes: [],
  unreadable: 0,
};

/** What a desk keeps, the same in every tab; where the browser keeps nothing it is kept while the page is open. */
export class DeskKeeper implements ReactiveController {
  readonly #host: ReactiveControllerHost;
  #place: DeskPlace = new DatabasePlace();
  #channel: BroadcastChannel | undefined;
  desk: Desk = NOTHING;
  loaded = false;
  /** Nothing outlives the page: storage is blocked or full, or a newer version of the page keeps what the desk has. */
  inMemory: 'unkept' | 'newer' | undefined;
  /** An older page in another tab keeps this one from looking what there is. */
  held = false;
  #unhear: (() => void) | undefined;

  constructor(host: ReactiveControllerHost) {
    this.#host = host;
    host.addController(this);
  }

  hostConnected(): void {
    if (typeof BroadcastChannel === 'function') {
      this.#channel = new BroadcastChannel(CHANNEL);
      this.#channel.addEventListener('message', () => void this.#read());
    }
    this.#unhear = whenHeld((held) => {
      this.held = held;
      this.#host.requestUpdate();
    });
    // What another tab said while this one was frozen or put away is not heard again.
    window.addEventListener('pageshow', this.#again);
    document.addEventListener('resume', this.#again);
    void this.#read();
  }

  hostDisconnected(): void {
    this.#unhear?.();
    window.removeEventListener('pageshow', this.#again);
    document.removeEventListener('resume', this.#again);
    this.#channel?.close();
    this.#channel = undefined;
  }

  readonly #again = (event: Event): void => {
    // Every page is shown once; only one that was put away comes back.
    if (event.type === 'resume' || (event as PageTransitionEvent).persisted) void this.#read();
  };

  setFleet(fleet: Fleet | undefined): Promise<void> {
    return this.#do((place) => (fleet ? place.put('fleet', fleet) : place.remove('fleet')));
  }

  setMorning(morning: Morning): Promise<void> {
    return this.#do((place) => place.put('morning', morning));
  }

  setUnits(units: UnitSystem): Promise<void> {
    return this.#do((place) => place.put('units', units));
  }

  addHire(hire: Hire): Promise<void> {
    return this.#do((place) => place.addHire(hire));
  }

  removeHire(id: string): Promise<void> {
    return this.#do((place) => place.removeHire(id));
  }

  /** Changes a hire as it is kept now, which another tab may have changed; undefined where that was refused. */
  async changeHire(id: string, change: (hire: Hire) => Hire | undefined, note?: NoteOf): Promise<Hire | undefined> {
    let changed: Hire | undefined;
    await this.#do(async (place) => {
      const safe = (kept: unknown) => {
        const read = readHire(kept);
        return read.ok ? change(read.value) : undefined;
      };
      changed = await place.changeHire(id, safe, note);
    });
    return changed;
  }

  clearHires(): Promise<void> {
    return this.#do((place) => place.clearHires());
  }

  replace(by: Replacement): Promise<void> {
    return this.#do((place) => place.replace(by));
  }

  async #do(step: (place: DeskPlace) => Promise<void>): Promise<void> {
    try {
      await step(this.#place);
    } catch (error) {
      await this.#intoMemory(error);
      await step(this.#place);
    }
    this.#channel?.postMessage('changed');
    await this.#read();
  }

  async #read(): Promise<void> {
    try {
      this.#show(await this.#place.all());
    } catch (error) {
      await this.#intoMemory(error);
      this.#show(await this.#place.all());
    }
  }

  /** Goes on with all that is known here. */
  async #intoMemory(error: unknown): Promise<void> {
    // Two steps may have failed at once.
    if (this.inMemory) return;
    this.inMemory = whyUnkept(error) === 'newer' ? 'newer' : 'unkept';
    const memory = new MemoryPlace();
    this.#place = memory;
    const { fleet, demo, morning, units, hires, notes } = this.desk;
    await memory.replace({ singles: { fleet: demo ? undefined : fleet, morning, units }, hires, notes });
  }

  #show(kept: Kept): void {
    this.desk = deskOf(kept);
    this.loaded = true;
    this.#host.requestUpdate();
  }
}

/** What passes the doors. */
export function deskOf({ singles, hires, notes }: Kept): Desk {
  let unreadable = 0;
  const through = <T>(read: Result<T>): T | undefined => {
    if (read.ok) return read.value;
    unreadable++;
    return undefined;
  };
  const single = <T>(value: unknown, door: (value: unknown) => Result<T>) =>
    value === undefined ? undefined : through(door(value));
  const fleet = single(singles.fleet, readFleet);
  const known = <T>(values: readonly unknown[], door: (value: unknown) => Result<T>): readonly T[] =>
    values.map((value) => through(door(value))).filter((value) => value !== undefined);
  const { units } = singles;
  return {
    fleet: fleet ?? DEMO_FLEET,
    demo: fleet === undefined,
    morning: single(singles.morning, readMorning),
    units: units === 'nautical' || units === 'imperial' ? units : 'metric',
    hires: known(hires, readHire),
    notes: known(notes, readFuelNote),
    unreadable,
  };
}
